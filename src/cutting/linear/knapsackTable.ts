import type { Work } from "../model/work";

/** Whole prices and upper bounds for the weights of a knapsack, all three by weight number. */
export interface Goods {
  weights: Int32Array;
  prices: Float64Array;
  bounds: Int32Array;
}

/** A choice of pieces: item numbers, copies of each, and what they are worth together. */
export interface PieceChoice {
  worth: number;
  items: number[];
  copies: number[];
}

/** The best choice, and better and better ones met on the way (each worth more than `above`). */
export interface KnapsackAnswer {
  /** Exact greatest worth when it is more than `above`; else `above`. */
  best: number;
  choices: PieceChoice[];
}

/** Several copies of one item, taken together or not at all. */
interface Bundle {
  item: number;
  copies: number;
  weight: number;
  price: number;
}

/** Greatest worth for every capacity from 0 up to the largest, by dynamic programming, and how it came about. */
export interface WorthTable {
  best: Float64Array;
  choice(capacity: number): PieceChoice;
}

/** One table answers for all the capacities. */
export function tableKnapsack(
  goods: Goods,
  capacities: readonly number[],
  above: readonly number[],
  work: Work,
): KnapsackAnswer[] {
  const table = worthTable(goods, Math.max(...capacities), work);
  return capacities.map((capacity, k) => {
    const best = table.best[capacity]!;
    return best > above[k]! ? { best, choices: [table.choice(capacity)] } : { best: above[k]!, choices: [] };
  });
}

/** Fills the table: each item in bundles of 1, 2, 4 … copies, so that every number up to its bound can be had. */
export function worthTable(goods: Goods, capacity: number, work: Work): WorthTable {
  const bundles = bundlesOf(goods, capacity);
  const best = new Float64Array(capacity + 1);
  const width = (capacity >> 3) + 1;
  const used = new Uint8Array(bundles.length * width);
  bundles.forEach(({ weight, price }, b) => {
    const offset = b * width;
    for (let room = capacity, below = capacity - weight; below >= 0; room--, below--) {
      const worth = best[below]! + price;
      if (worth > best[room]!) {
        best[room] = worth;
        used[offset + (room >> 3)]! |= 1 << (room & 7);
      }
    }
  });
  work.add(2 * bundles.length * capacity);
  return {
    best,
    choice(room) {
      const worth = best[room]!;
      const copies = new Map<number, number>();
      for (let b = bundles.length - 1; b >= 0; b--) {
        if (!(used[b * width + (room >> 3)]! & (1 << (room & 7)))) continue;
        const bundle = bundles[b]!;
        copies.set(bundle.item, (copies.get(bundle.item) ?? 0) + bundle.copies);
        room -= bundle.weight;
      }
      return { worth, items: [...copies.keys()], copies: [...copies.values()] };
    },
  };
}

function bundlesOf({ weights, prices, bounds }: Goods, capacity: number): Bundle[] {
  const bundles: Bundle[] = [];
  for (let item = 0; item < weights.length; item++) {
    const weight = weights[item]!;
    if (prices[item]! <= 0) continue;
    let left = Math.min(bounds[item]!, Math.floor(capacity / weight));
    for (let copies = 1; left > 0; copies *= 2) {
      const some = Math.min(copies, left);
      bundles.push({ item, copies: some, weight: some * weight, price: some * prices[item]! });
      left -= some;
    }
  }
  return bundles;
}
