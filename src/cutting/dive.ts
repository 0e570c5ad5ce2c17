import { BIN_TOLERANCE, generate } from "./generate";
import { mainLast, placeDecreasing } from "./greedy";
import type { Master } from "./master";
import { piecesLeft, takeFill, trimFill } from "./model";
import type { Fill, FillCount } from "./model";
import type { Work } from "./work";

export interface DiveResult {
  plan: FillCount[];
  /** Main bins in the plan. */
  mains: number;
}

/**
 * One dive: settle the whole parts of the linear program, then some of its fullest fractions, solve what is left, again
 * until nothing is left. Ends early when what is left is proven to need too many bins; the rest is then filled by
 * best-fit. The master must stand at its optimum for the whole demand; the dive leaves it changed.
 *
 * @param counts bins to be used at most, by kind; the first is the aim for main bins
 * @param noise how far chance may reorder the choices (0 for none)
 */
export function* dive(
  master: Master,
  counts: readonly number[],
  noise: number,
  random: () => number,
  work: Work,
): Generator<void, DiveResult> {
  const { model, simplex } = master;
  const left = Int32Array.from(model.demands);
  const available = [...counts];
  const order = mainLast(model);
  const plan: FillCount[] = [];
  let best: DiveResult | undefined;

  const finish = (): DiveResult => {
    const rest = placeDecreasing(model, left, [Infinity, ...available.slice(1)], order, "fullest");
    work.add(piecesLeft(left) * (rest.length + 10));
    const mains = rest.reduce((sum, { fill, count }) => sum + (fill.bin === 0 ? count : 0), counts[0]! - available[0]!);
    if (!best || mains < best.mains) best = { plan: [...plan, ...rest], mains };
    return best;
  };
  const settle = (place: number, amount: number): void => {
    const fill = master.fills[simplex.basis[place]!]!;
    const count = Math.min(amount, available[fill.bin]!);
    if (count < 1) return;
    simplex.settle(place, count);
    available[fill.bin]! -= takeRepeated(fill, count, left, plan);
  };

  for (;;) {
    for (let place = 0; place < simplex.rows; place++) {
      const whole = simplex.basis[place]! >= 0 ? Math.floor(simplex.x[place]! + 1e-4) : 0;
      if (whole >= 1) settle(place, whole);
    }
    if (finish().mains <= counts[0]! || work.over()) break;
    const places = fractions(master, noise, random);
    if (places.length === 0) break;
    for (const place of places) settle(place, 1);
    if (available[0]! < 0 || !simplex.dual()) break;
    const aim = available[0]!;
    const { end } = yield* generate(master, left, available, { enough: aim, most: aim }, work);
    if (end === "hopeless" || end === "stopped" || simplex.value() > aim + BIN_TOLERANCE) break;
  }
  return finish();
}

/** Takes up to `count` such fills, trimmed as pieces run out; answers how many bins that took. */
function takeRepeated(fill: Fill, count: number, left: Int32Array, plan: FillCount[]): number {
  let bins = 0;
  while (bins < count) {
    const trimmed = trimFill(fill, left);
    if (!trimmed) break;
    const repeats = trimmed.items.map((item, k) => Math.floor(left[item]! / trimmed.copies[k]!));
    const some = Math.min(count - bins, ...repeats);
    takeFill(trimmed, some, left);
    plan.push({ fill: trimmed, count: some });
    bins += some;
  }
  return bins;
}

/** Basis places of the fractions to round up next, largest first. */
function fractions(master: Master, noise: number, random: () => number): number[] {
  const { simplex } = master;
  const found: { place: number; score: number }[] = [];
  let sum = 0;
  for (let place = 0; place < simplex.rows; place++) {
    const x = simplex.x[place]!;
    if (simplex.basis[place]! < 0 || x < 1e-4) continue;
    sum += x;
    found.push({ place, score: x + noise * random() });
  }
  found.sort((a, b) => b.score - a.score || a.place - b.place);
  return found.slice(0, Math.max(1, Math.floor(sum / 8))).map(({ place }) => place);
}
