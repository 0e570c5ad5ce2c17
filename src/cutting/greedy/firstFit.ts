import { binFor, thriftyOrder } from "./binOrder";
import { piecesLeft } from "../model/model";
import type { BinFill, FillCount, Model } from "../model/model";
import type { Work } from "../model/work";

/** Rooms of bins in a row; finds the first one with enough room by a tree of the greatest rooms. */
class RoomTree {
  private readonly size: number;
  private readonly greatest: Int32Array;

  constructor(places: number) {
    this.size = 2 ** Math.ceil(Math.log2(Math.max(1, places)));
    this.greatest = new Int32Array(2 * this.size);
  }

  set(place: number, room: number): void {
    let node = this.size + place;
    this.greatest[node] = room;
    for (node >>= 1; node > 0; node >>= 1) {
      this.greatest[node] = Math.max(this.greatest[2 * node]!, this.greatest[2 * node + 1]!);
    }
  }

  /** The first place with this much room and how much it is; undefined when there is none. */
  first(least: number): { place: number; room: number } | undefined {
    if (this.greatest[1]! < least) return undefined;
    let node = 1;
    while (node < this.size) node = this.greatest[2 * node]! >= least ? 2 * node : 2 * node + 1;
    return { place: node - this.size, room: this.greatest[node]! };
  }
}

/** First-fit decreasing: each piece, heaviest first, into the first opened bin that holds it. Answers a whole plan. */
export function firstFit(model: Model, work: Work): FillCount[] {
  const order = thriftyOrder(model);
  const free = model.bins.map((bin) => bin.limit);
  const tree = new RoomTree(piecesLeft(model.demands));
  const opened: BinFill[] = [];
  model.weights.forEach((weight, item) => {
    for (let n = model.demands[item]!; n > 0;) {
      const { place, room } = tree.first(weight) ?? open(weight);
      const copies = Math.min(n, Math.floor(room / weight));
      opened[place]!.items.push(item);
      opened[place]!.copies.push(copies);
      tree.set(place, room - copies * weight);
      n -= copies;
      work.add(60);
    }
  });
  return alikeTogether(opened);

  function open(weight: number): { place: number; room: number } {
    const bin = binFor(model, free, order, weight);
    free[bin]!--;
    return { place: opened.push({ bin, items: [], copies: [] }) - 1, room: model.bins[bin]!.capacity };
  }
}

/** Neighbors filled alike are one line of the plan. */
function alikeTogether(fills: readonly BinFill[]): FillCount[] {
  const plan: FillCount[] = [];
  for (const fill of fills) {
    const last = plan.at(-1);
    if (last && isAlike(last.fill, fill)) last.count++;
    else plan.push({ fill, count: 1 });
  }
  return plan;
}

const isAlike = (a: BinFill, b: BinFill): boolean =>
  a.bin === b.bin &&
  a.items.length === b.items.length &&
  a.items.every((item, k) => item === b.items[k] && a.copies[k] === b.copies[k]);
