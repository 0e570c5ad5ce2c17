import type { Cut } from "./counts";
import type { FillCount } from "./model";

/** How far the search is. */
export interface Standing {
  cost: number;
  /** Proven least cost. */
  bound: number;
}

/** The best plan so far and what proves the bound. */
export interface Packing extends Standing {
  plan: FillCount[];
  /** Bins that some best plan has; the cuts are about the other pieces. */
  pairs: FillCount[];
  /** Prices by item of the whole model. */
  cuts: Cut[];
}

/** Hands the best so far out at every pause of an inner search. */
export function* quiet<T>(inner: Generator<void, T>, best: Standing): Generator<Standing, T> {
  for (;;) {
    const step = inner.next();
    if (step.done) return step.value;
    yield best;
  }
}
