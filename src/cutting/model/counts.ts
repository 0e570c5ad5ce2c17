import type { Bin, Model } from "./model";
import { greatestSums } from "./subsetSum";
import type { Work } from "./work";

/**
 * What whole prices prove: if no bin of kind k can hold pieces worth more than `worths[k]`, every plan has
 * Σ worths[k] · (bins of kind k) ≥ `demand`, the worth of all pieces together.
 */
export interface Cut {
  prices: Float64Array;
  worths: number[];
  demand: number;
}

/** The simplest proof: no bin holds more than the greatest sum of pieces up to its capacity. */
export function volumeCut(model: Model, work: Work): Cut {
  const prices = Float64Array.from(model.weights);
  const demand = prices.reduce((sum, weight, item) => sum + weight * model.demands[item]!, 0);
  return { prices, worths: greatestSums(model, work), demand };
}

/** The cuts without those that nothing is lost without; `enough` says whether some are enough. */
export function neededCuts<T extends Cut>(cuts: readonly T[], enough: (some: readonly T[]) => boolean): T[] {
  let needed = [...cuts];
  for (const cut of cuts) {
    const without = needed.filter((other) => other !== cut);
    if (enough(without)) needed = without;
  }
  return needed;
}

export interface BinCounts {
  cost: number;
  counts: number[];
  /** No numbers of bins that satisfy the cuts cost less: `cost`, unless there were too many to look at them all. */
  bound: number;
}

/** Numbers of bins that are looked at. */
const MOST_VISITS = 100_000;

/**
 * Cheapest whole numbers of bins that satisfy every cut, in exact integer arithmetic: a lower bound for the cost of
 * every plan. `skip` leaves out count vectors (written with commas) that were tried without success. Where there are very
 * many the rest of them is bounded by fractions of bins.
 */
export function leastCounts(
  bins: readonly Bin[],
  cuts: readonly Cut[],
  work: Work,
  skip?: ReadonlySet<string>,
): BinCounts | undefined {
  const counts = bins.map((bin, k) => (k > 0 && bin.cost === 0 ? bin.limit : 0));
  const open = bins.map((_, k) => k).filter((k) => k > 0 && bins[k]!.cost > 0 && bins[k]!.limit > 0);
  const needs = cuts.map((cut) => cut.demand - counts.reduce((sum, count, k) => sum + count * cut.worths[k]!, 0));
  let best: Omit<BinCounts, "bound"> | undefined;
  let unseen = Infinity;
  let visits = 0;

  const visit = (depth: number, cost: number): void => {
    visits++;
    if (depth === open.length) {
      const mains = Math.max(0, ...cuts.map((cut, c) => (needs[c]! > 0 ? Math.ceil(needs[c]! / cut.worths[0]!) : 0)));
      const total = cost + mains * bins[0]!.cost;
      counts[0] = mains;
      if ((!best || total < best.cost) && !skip?.has(counts.join())) best = { cost: total, counts: [...counts] };
      return;
    }
    const kind = open[depth]!;
    const { limit, cost: each } = bins[kind]!;
    const take = (some: number): void => {
      counts[kind]! += some;
      cuts.forEach((cut, c) => (needs[c]! -= some * cut.worths[kind]!));
    };
    const leastWith = (some: number): number => {
      visits++;
      take(some);
      const least = cost + some * each + leastMore(bins, cuts, needs, open, depth + 1);
      take(-some);
      return least;
    };
    /** Goes on with so many of the kind unless that is known to be too dear. */
    const consider = (some: number): boolean => {
      const least = wholeCost(leastWith(some));
      if (best && least >= best.cost) return false;
      if (best && visits > MOST_VISITS) {
        unseen = Math.min(unseen, least);
        return false;
      }
      take(some);
      visit(depth + 1, cost + some * each);
      take(-some);
      return true;
    };
    // The least cost is a convex function of the number of the kind: from its lowest place to both sides.
    const enough = cuts.map((cut, c) => (needs[c]! > 0 ? Math.ceil(needs[c]! / cut.worths[kind]!) : 0));
    const most = Math.min(limit, Math.max(0, ...enough), Number.MAX_SAFE_INTEGER);
    const start = lowest(leastWith, most);
    for (let some = start; some <= most && consider(some); some++);
    for (let some = start - 1; some >= 0 && consider(some); some--);
  };
  visit(0, 0);
  work.add(10 * visits * (cuts.length + 1) * (open.length + 1));
  return best && { ...best, bound: Math.min(best.cost, unseen) };
}

/** Where a convex function of 0 to `most` is lowest; the first place of several. */
function lowest(of: (place: number) => number, most: number): number {
  let [from, to] = [0, most];
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    if (of(middle) <= of(middle + 1)) to = middle;
    else from = middle + 1;
  }
  return from;
}

/** The least whole number that is not below a cost but for rounding of the machine. */
const wholeCost = (cost: number): number => Math.ceil(cost * (1 - 1e-12) - 1e-9);

/** A cost that is still to come at least, when fractions of bins could be had. */
function leastMore(
  bins: readonly Bin[],
  cuts: readonly Cut[],
  needs: readonly number[],
  open: readonly number[],
  depth: number,
): number {
  let most = 0;
  cuts.forEach((cut, c) => {
    if (needs[c]! <= 0) return;
    let ratio = bins[0]!.cost / cut.worths[0]!;
    for (let k = depth; k < open.length; k++) ratio = Math.min(ratio, bins[open[k]!]!.cost / cut.worths[open[k]!]!);
    most = Math.max(most, needs[c]! * ratio);
  });
  return most;
}
