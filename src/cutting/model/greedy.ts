import { piecesLeft, takeFill } from "./model";
import type { BinFill, FillCount, Model } from "./model";

interface OpenBin {
  fill: BinFill;
  room: number;
}

/** "first": into the first bin with room (first-fit decreasing). "fullest": into the fullest (best-fit decreasing). */
export type Choose = "first" | "fullest";

/** Order in which bins are opened: free ones first, the shortest that fits; then the cheapest for what they hold. */
export function thriftyOrder({ bins }: Model): number[] {
  const rate = (k: number): number => bins[k]!.cost / bins[k]!.capacity;
  return bins.map((_, k) => k).sort((a, b) => rate(a) - rate(b) || bins[a]!.capacity - bins[b]!.capacity || a - b);
}

/** First-fit and best-fit decreasing. */
export function greedyPlans(model: Model): FillCount[][] {
  const limits = model.bins.map((bin) => bin.limit);
  const order = thriftyOrder(model);
  return (["first", "fullest"] as const).map((choose) => placeDecreasing(model, model.demands, limits, order, choose));
}

/** Order in which bins are opened when all but the main one are there to be used. */
export function mainLast({ bins }: Model): number[] {
  const others = bins.map((_, k) => k).slice(1);
  return [...others.sort((a, b) => bins[a]!.capacity - bins[b]!.capacity || a - b), 0];
}

/**
 * Places what is left, heaviest first. Returns a whole plan.
 *
 * @param left pieces wanted of each weight
 * @param available bins left of each kind
 * @param order kinds of bins in the order they are opened
 */
export function placeDecreasing(
  model: Model,
  left: Int32Array,
  available: readonly number[],
  order: readonly number[],
  choose: Choose,
): FillCount[] {
  const bins = [...available];
  const fullest = choose === "fullest";
  const open: OpenBin[] = [];
  for (let item = 0; item < left.length; item++) {
    const weight = model.weights[item]!;
    for (let n = left[item]!, from = 0; n > 0; n--) {
      let place = -1;
      for (let k = fullest ? 0 : from; k < open.length; k++) {
        if (open[k]!.room < weight || (place >= 0 && open[k]!.room >= open[place]!.room)) continue;
        place = k;
        if (!fullest) break;
      }
      if (place < 0) {
        const bin = order.find((kind) => bins[kind]! > 0 && model.bins[kind]!.capacity >= weight) ?? 0;
        bins[bin] = bins[bin]! - 1;
        place = open.push({ fill: { bin, items: [], copies: [] }, room: model.bins[bin]!.capacity }) - 1;
      }
      from = place;
      const { fill } = open[place]!;
      open[place]!.room -= weight;
      if (fill.items.at(-1) === item) fill.copies[fill.copies.length - 1]! += 1;
      else {
        fill.items.push(item);
        fill.copies.push(1);
      }
    }
  }
  return open.map(({ fill }) => ({ fill, count: 1 }));
}

/**
 * A cover made stick by stick: each main bin takes pieces in the order of `score` (highest first) and is repeated as
 * often as the pieces allow. Good first columns for the linear program.
 */
export function scoredCover(model: Model, score: (item: number) => number): FillCount[] {
  const left = Int32Array.from(model.demands);
  const plan: FillCount[] = [];
  while (piecesLeft(left) > 0) {
    const order = [...left.keys()].filter((item) => left[item]! > 0).map((item) => ({ item, score: score(item) }));
    order.sort((a, b) => b.score - a.score || a.item - b.item);
    const fill: BinFill = { bin: 0, items: [], copies: [] };
    let room = model.bins[0]!.capacity;
    for (const { item } of order) {
      const copies = Math.min(left[item]!, Math.floor(room / model.weights[item]!));
      if (copies === 0) continue;
      fill.items.push(item);
      fill.copies.push(copies);
      room -= copies * model.weights[item]!;
    }
    const count = Math.min(...fill.items.map((item, k) => Math.floor(left[item]! / fill.copies[k]!)));
    takeFill(fill, count, left);
    plan.push({ fill, count });
  }
  return plan;
}
