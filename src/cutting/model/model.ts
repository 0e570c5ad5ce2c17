/**
 * The problem as the solver sees it: whole weights into bins. A piece weighs its length plus one kerf, a stick holds
 * its length plus one kerf, so the cut that the last piece does not need costs nothing.
 */

/** Sticks of one length and cost. `limit` is how many there are (Infinity: as many as needed). */
export interface Bin {
  capacity: number;
  cost: number;
  limit: number;
}

/** Weights strictly decreasing. `bins[0]` is the main bin: unlimited, and every weight fits it. */
export interface Model {
  weights: Int32Array;
  demands: Int32Array;
  bins: readonly Bin[];
}

/** One way to fill a bin: `copies[k]` pieces of weight number `items[k]`. */
export interface BinFill {
  bin: number;
  items: number[];
  copies: number[];
}

/** A fill and how many bins are filled this way. */
export interface FillCount {
  fill: BinFill;
  count: number;
}

/** How many bins of each kind a plan takes. */
export function binCounts(model: Model, plan: readonly FillCount[]): number[] {
  const counts = model.bins.map(() => 0);
  for (const { fill, count } of plan) counts[fill.bin] = (counts[fill.bin] ?? 0) + count;
  return counts;
}

/** What a plan costs. */
export function planCost(model: Model, plan: readonly FillCount[]): number {
  return plan.reduce((sum, { fill, count }) => sum + count * (model.bins[fill.bin]?.cost ?? 0), 0);
}

/** Weight in a fill. */
export function fillWeight(model: Model, fill: BinFill): number {
  return fill.items.reduce((sum, item, k) => sum + (model.weights[item] ?? 0) * (fill.copies[k] ?? 0), 0);
}

/** The fill cut down to what is still wanted; undefined when nothing is. */
export function trimFill(fill: BinFill, left: Int32Array): BinFill | undefined {
  const items: number[] = [];
  const copies: number[] = [];
  fill.items.forEach((item, k) => {
    const count = Math.min(fill.copies[k] ?? 0, left[item] ?? 0);
    if (count > 0) {
      items.push(item);
      copies.push(count);
    }
  });
  return items.length ? { bin: fill.bin, items, copies } : undefined;
}

/** Takes `count` fills out of what is still wanted. */
export function takeFill(fill: BinFill, count: number, left: Int32Array): void {
  fill.items.forEach((item, k) => {
    left[item] = (left[item] ?? 0) - count * (fill.copies[k] ?? 0);
  });
}

/** How many pieces are still wanted. */
export function piecesLeft(left: Int32Array): number {
  let sum = 0;
  for (const count of left) sum += count;
  return sum;
}

/** The problem of what is left, and the way back to the items of the whole one. */
export interface Rest {
  model: Model;
  /** A plan of the rest in the items of the whole. */
  outward(plan: readonly FillCount[]): FillCount[];
  /** Prices of the rest as prices of the whole: what is not left is worth nothing. */
  spread(prices: Float64Array): Float64Array;
  /** A fill of the whole in the items of the rest; undefined when it holds more than is left. */
  inward(fill: BinFill): BinFill | undefined;
}

/** Makes what is left a problem of its own. */
export function restOf(whole: Model, left: Int32Array): Rest {
  const items = [...left.keys()].filter((item) => left[item]! > 0);
  const numberOf = new Map(items.map((item, k) => [item, k]));
  return {
    model: {
      weights: Int32Array.from(items, (item) => whole.weights[item]!),
      demands: Int32Array.from(items, (item) => left[item]!),
      bins: whole.bins,
    },
    outward: (plan) =>
      plan.map(({ fill, count }) => ({ fill: { ...fill, items: fill.items.map((item) => items[item]!) }, count })),
    spread: (prices) => {
      const all = new Float64Array(whole.weights.length);
      items.forEach((item, k) => (all[item] = prices[k]!));
      return all;
    },
    inward: (fill) =>
      fill.items.every((item, k) => left[item]! >= fill.copies[k]!)
        ? { ...fill, items: fill.items.map((item) => numberOf.get(item)!) }
        : undefined,
  };
}
