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
export interface Fill {
  bin: number;
  items: number[];
  copies: number[];
}

/** A fill and how many bins are filled this way. */
export interface FillCount {
  fill: Fill;
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
export function fillWeight(model: Model, fill: Fill): number {
  return fill.items.reduce((sum, item, k) => sum + (model.weights[item] ?? 0) * (fill.copies[k] ?? 0), 0);
}

/** The fill cut down to what is still wanted; undefined when nothing is. */
export function trimFill(fill: Fill, left: Int32Array): Fill | undefined {
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
export function takeFill(fill: Fill, count: number, left: Int32Array): void {
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
