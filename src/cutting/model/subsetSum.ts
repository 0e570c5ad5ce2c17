import type { Model } from "./model";
import type { Work } from "./work";

/** Finds choices of weights that come as close to a room as any, with a table of bits that is used again and again. */
export class SubsetSum {
  private rows = new Uint32Array(0);

  constructor(private readonly work: Work) {}

  /**
   * A choice of `weights` with the greatest sum up to `room`; of several such, one that does without the last weights.
   * Row k of the table has bit s set when some of the first k weights add up to s.
   */
  fullest(weights: readonly number[], room: number): { sum: number; chosen: boolean[] } {
    const words = (room >> 5) + 1;
    if (this.rows.length < words * (weights.length + 1)) this.rows = new Uint32Array(2 * words * (weights.length + 1));
    const { rows } = this;
    rows.fill(0, 0, words);
    rows[0] = 1;
    let count = 0;
    while (count < weights.length && !has(rows, count * words, room)) {
      addWeight(rows, count * words, (count + 1) * words, words, weights[count]!);
      count++;
    }
    this.work.add(2 * count * (words + 20));
    let sum = room;
    while (!has(rows, count * words, sum)) sum--;
    const chosen = new Array<boolean>(weights.length).fill(false);
    for (let k = count - 1, rest = sum; rest > 0; k--) {
      if (has(rows, k * words, rest)) continue;
      chosen[k] = true;
      rest -= weights[k]!;
    }
    return { sum, chosen };
  }
}

/** The greatest sum of pieces that each kind of bin can hold. */
export function greatestSums({ weights, demands, bins }: Model, work: Work): number[] {
  const most = Math.max(...bins.map((bin) => bin.capacity));
  const words = (most >> 5) + 1;
  let sums = new Uint32Array(words);
  let next = new Uint32Array(words);
  sums[0] = 1;
  weights.forEach((weight, item) => {
    // In bundles of 1, 2, 4 … copies, so that every number up to the demand can be had.
    let left = Math.min(demands[item]!, Math.floor(most / weight));
    for (let copies = 1; left > 0; copies *= 2) {
      addWeight(sums, 0, 0, words, weight * Math.min(copies, left), next);
      work.add(2 * words + 20);
      [sums, next] = [next, sums];
      left -= copies;
    }
  });
  return bins.map(({ capacity }) => {
    let sum = capacity;
    while (!has(sums, 0, sum)) sum--;
    return sum;
  });
}

/** Writes the sums of `from` at `at`, and each of them with `weight` more, to `to` at `next`. */
function addWeight(
  from: Uint32Array,
  at: number,
  next: number,
  words: number,
  weight: number,
  to: Uint32Array = from,
): void {
  const skip = weight >> 5;
  const up = weight & 31;
  for (let w = 0; w < Math.min(skip, words); w++) to[next + w] = from[at + w]!;
  for (let w = skip; w < words; w++) {
    let moved = from[at + w - skip]! << up;
    if (up > 0 && w > skip) moved |= from[at + w - skip - 1]! >>> (32 - up);
    to[next + w] = from[at + w]! | moved;
  }
}

function has(rows: Uint32Array, at: number, sum: number): boolean {
  return ((rows[at + (sum >> 5)]! >>> (sum & 31)) & 1) === 1;
}
