import type { FillCount, Model } from "../model/model";
import { NumberSet } from "../greedy/numberSet";
import type { Work } from "../model/work";

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
export function takePairs({ weights, demands, bins }: Model, work: Work, small = 0): Paired {
  const left = Int32Array.from(demands);
  const pairs: FillCount[] = [];
  const capacity = bins[0]!.capacity;
  const there = new NumberSet(weights.length);
  weights.forEach((_, item) => there.add(item));
  let lightest = weights.length - 1;
  const take = (item: number): void => {
    left[item]!--;
    if (left[item] === 0) there.remove(item);
  };
  const giveBack = (item: number): void => {
    left[item]!++;
    there.add(item);
    lightest = Math.max(lightest, item);
  };
  for (let found = true; found;) {
    found = false;
    work.add(weights.length);
    for (let i = 0; i < left.length && weights[i]! >= small; i++) {
      while (left[i]! > 0) {
        take(i);
        while (lightest > 0 && left[lightest] === 0) lightest--;
        const room = capacity - weights[i]!;
        const j = there.next(firstWithin(weights, room));
        work.add(60);
        if (j >= 0 && weights[j] !== room && twoLightest(weights, left, lightest) <= room) {
          giveBack(i);
          break;
        }
        if (j >= 0) take(j);
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

/** The first item that weighs no more than `room`; as many as there are when none does. */
function firstWithin(weights: Int32Array, room: number): number {
  let [from, to] = [0, weights.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (weights[middle]! > room) from = middle + 1;
    else to = middle;
  }
  return from;
}

/** What the two lightest pieces weigh that are left; no lighter item than `last` is. */
function twoLightest(weights: Int32Array, left: Int32Array, last: number): number {
  let sum = 0;
  let pieces = 0;
  for (let item = last; item >= 0 && pieces < 2; item--) {
    const some = Math.min(left[item]!, 2 - pieces);
    sum += some * weights[item]!;
    pieces += some;
  }
  return pieces < 2 ? Infinity : sum;
}
