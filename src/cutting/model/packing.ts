import type { Cut } from "./counts";
import type { FillCount } from "./model";

/** How far the search is. */
export interface Standing {
  cost: number;
  /** Proven least cost. */
  bound: number;
}

/**
 * What proves that so many sticks will not do: either prices, by piece, or two pieces and the same for either case, that
 * they lie on one stick and that they do not. Pieces are numbered one by one, longest first.
 */
export type Branch = { prices: number[] } | { pieces: number[]; together: Branch; apart: Branch };

/** The best plan so far and what proves the bound. */
export interface Packing extends Standing {
  plan: FillCount[];
  /** Bins that some best plan has; the cuts are about the other pieces. */
  pairs: FillCount[];
  /** Prices by item of the whole model. */
  cuts: Cut[];
  /** That one bin less will not do for the other pieces, where the cuts do not prove it. */
  branches?: Branch;
}

/** Hands the best so far out at every pause of an inner search. */
export function* quiet<T>(inner: Generator<void, T>, best: Standing): Generator<Standing, T> {
  for (;;) {
    const step = inner.next();
    if (step.done) return step.value;
    yield best;
  }
}
