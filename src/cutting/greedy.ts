import { fillWeight, piecesLeft, takeFill } from "./model";
import type { Fill, FillCount, Model } from "./model";

/**
 * First-fit decreasing: longest piece first, into the first bin with room; a new bin is an offcut while there are any
 * that fit (shortest first), then a main bin. Returns a whole plan for what is left.
 *
 * @param left pieces wanted of each weight
 * @param available bins left of each kind
 */
export function firstFit(model: Model, left: Int32Array, available: readonly number[]): FillCount[] {
  return placeDecreasing(model, left, available, false);
}

/** Best-fit decreasing: like first-fit, but into the fullest bin with room. */
export function bestFit(model: Model, left: Int32Array, available: readonly number[]): FillCount[] {
  return placeDecreasing(model, left, available, true);
}

interface OpenBin {
  fill: Fill;
  room: number;
}

function placeDecreasing(model: Model, left: Int32Array, available: readonly number[], fullest: boolean): FillCount[] {
  const bins = [...available];
  const kinds = model.bins.map((_, bin) => bin).slice(1);
  kinds.sort((a, b) => model.bins[a]!.capacity - model.bins[b]!.capacity || a - b);
  kinds.push(0);
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
        const bin = kinds.find((kind) => bins[kind]! > 0 && model.bins[kind]!.capacity >= weight) ?? 0;
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
    const fill: Fill = { bin: 0, items: [], copies: [] };
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

/** Room left in a fill. */
export function roomIn(model: Model, fill: Fill): number {
  return model.bins[fill.bin]!.capacity - fillWeight(model, fill);
}
