import type { FillCount, Model } from "../model/model";

/** Bins that some best plan has, and what is left to plan. */
export interface Paired {
  /** Fills of one or two pieces, by item of the whole model, in the order they were found. */
  pairs: FillCount[];
  /** How many pieces of each weight are left. */
  left: Int32Array;
}

/**
 * Takes out bins that need no search. With one kind of bin, a piece i and the largest piece j that fits beside it may
 * share a bin alone if they fill it exactly, or if no two other pieces fit beside i: whatever lies beside i in a best
 * plan can change places with j. Where nothing fits beside i, it stays alone. Each bin taken out may allow the next.
 *
 * @param small only pieces of at least this weight are paired off, which holds when one bin is smaller than that
 */
export function takePairs({ weights, demands, bins }: Model, small = 0): Paired {
  const left = Int32Array.from(demands);
  const pairs: FillCount[] = [];
  const capacity = bins[0]!.capacity;
  for (let found = true; found;) {
    found = false;
    for (let i = 0; i < left.length && weights[i]! >= small; i++) {
      while (left[i]! > 0) {
        left[i]!--;
        const room = capacity - weights[i]!;
        const j = weights.findIndex((weight, item) => left[item]! > 0 && weight <= room);
        if (j >= 0 && weights[j] !== room && twoLightest(weights, left) <= room) {
          left[i]!++;
          break;
        }
        if (j >= 0) left[j]!--;
        const items = j < 0 || j === i ? [i] : [i, j];
        const fill = { bin: 0, items, copies: j === i ? [2] : items.map(() => 1) };
        const last = pairs.at(-1);
        if (last?.fill.items.join() === items.join() && last.fill.copies[0] === fill.copies[0]) last.count++;
        else pairs.push({ fill, count: 1 });
        found = true;
      }
    }
  }
  return { pairs, left };
}

function twoLightest(weights: Int32Array, left: Int32Array): number {
  let sum = 0;
  let pieces = 0;
  for (let item = left.length - 1; item >= 0 && pieces < 2; item--) {
    const some = Math.min(left[item]!, 2 - pieces);
    sum += some * weights[item]!;
    pieces += some;
  }
  return pieces < 2 ? Infinity : sum;
}
