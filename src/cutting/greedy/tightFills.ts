import type { BinFill, Model } from "../model/model";
import type { Work } from "../model/work";

/** Fills that are made for each item. */
const EACH = 4;

/** Two or three pieces by item, and the room they leave of a bin. */
interface Tight {
  items: number[];
  room: number;
}

/**
 * Fills of two and three pieces that leave the least of a main bin, a few for each item as the heaviest in it: good first
 * columns of the linear program where few pieces go into a bin.
 */
export function tightFills(model: Model, random: () => number, work: Work): BinFill[] {
  const { weights, bins } = model;
  const { capacity } = bins[0]!;
  const fitting = heaviestFitting(weights, capacity);
  work.add(capacity);
  return [...weights.keys()].flatMap((first) => {
    const best: Tight[] = [];
    for (let second = firstBeside(model, first, fitting); second < weights.length; second++) {
      const { items, room } = withThird(model, first, second, fitting);
      keepBest(best, { items, room: room + 0.5 * random() });
    }
    work.add(20 * (weights.length - first));
    return best.map(({ items }) => fillOf(items));
  });
}

/** By room, the first of the items (heaviest first) that weighs no more; as many as there are when none does. */
function heaviestFitting(weights: Int32Array, most: number): Int32Array {
  const fitting = new Int32Array(most + 1);
  for (let room = 0, item = weights.length; room <= most; room++) {
    while (item > 0 && weights[item - 1]! <= room) item--;
    fitting[room] = item;
  }
  return fitting;
}

/** The first item that can lie beside one and is no heavier. */
function firstBeside({ weights, demands, bins }: Model, first: number, fitting: Int32Array): number {
  const second = Math.max(first, fitting[bins[0]!.capacity - weights[first]!]!);
  return second === first && demands[first]! < 2 ? first + 1 : second;
}

/** Two items and the heaviest third that fits beside them and is no heavier. */
function withThird({ weights, demands, bins }: Model, first: number, second: number, fitting: Int32Array): Tight {
  const room = bins[0]!.capacity - weights[first]! - weights[second]!;
  let third = Math.max(second, fitting[room]!);
  if (third === second && demands[second]! < (first === second ? 3 : 2)) third++;
  return third < weights.length
    ? { items: [first, second, third], room: room - weights[third]! }
    : { items: [first, second], room };
}

/** Puts one among the best few, the tightest first. */
function keepBest(best: Tight[], one: Tight): void {
  if (best.length === EACH && best.at(-1)!.room <= one.room) return;
  let place = best.length;
  while (place > 0 && best[place - 1]!.room > one.room) place--;
  best.splice(place, 0, one);
  if (best.length > EACH) best.pop();
}

function fillOf(pieces: readonly number[]): BinFill {
  const items = [...new Set(pieces)];
  return { bin: 0, items, copies: items.map((item) => pieces.filter((other) => other === item).length) };
}
