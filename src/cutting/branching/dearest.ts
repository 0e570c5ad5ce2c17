import type { Bundle } from "./rules";
import type { Work } from "../model/work";

/** Sticks worth more than `above`, each worth more than the one before, and what the last is worth; exact in whole numbers. */
export interface Dearest {
  best: number;
  sticks: number[][];
}

/**
 * The bundles that are worth the most together on one stick that they fill but for `spare`. What the rest of a stick could
 * be worth at most, were there no foes, is looked up in a table.
 *
 * @param foes for each bundle those before it that it may not lie with
 */
export function dearestStick(
  bundles: readonly Bundle[],
  foes: readonly (readonly number[])[],
  prices: Float64Array,
  { capacity, spare, above }: { capacity: number; spare: number; above: number },
  work: Work,
): Dearest {
  const worths = bundles.map(({ pieces }) => pieces.reduce((sum, piece) => sum + prices[piece]!, 0));
  const width = capacity + 1;
  const count = bundles.length;
  const table = new Float64Array((count + 1) * width).fill(-Infinity, count * width + spare + 1);
  for (let k = count - 1; k >= 0; k--) {
    const [here, after] = [k * width, (k + 1) * width];
    const weight = Math.min(bundles[k]!.weight, width);
    table.copyWithin(here, after, after + weight);
    for (let room = weight; room < width; room++) {
      const taken = table[after + room - weight]! + worths[k]!;
      const left = table[after + room]!;
      table[here + room] = taken > left ? taken : left;
    }
  }
  const taken = new Uint8Array(count);
  const sticks: number[][] = [];
  let best = above;
  let visits = 0;
  const visit = (k: number, room: number, worth: number): void => {
    visits++;
    if (worth + table[k * width + room]! <= best) return;
    if (k === count) {
      best = worth;
      sticks.push(bundles.flatMap(({ pieces }, place) => (taken[place] ? pieces : [])));
      return;
    }
    const { weight } = bundles[k]!;
    if (weight <= room && !foes[k]!.some((foe) => taken[foe])) {
      taken[k] = 1;
      visit(k + 1, room - weight, worth + worths[k]!);
      taken[k] = 0;
    }
    visit(k + 1, room, worth);
  };
  visit(0, capacity, 0);
  work.add(2 * count * width + 10 * visits);
  return { best, sticks };
}
