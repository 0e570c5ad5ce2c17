import type { Model } from "../model/model";
import type { Packed } from "../model/packed";
import { greatestSums, SubsetSum } from "../model/subsetSum";
import type { Work } from "../model/work";

/** Bins that are filled anew together, and how often one of them is chosen because it has room. */
const GROUP = 6;
const ROOMY = 0.1;
/** At most this many loose pieces take part in one exchange. */
const LOOSE = 20;
/** How far chance may reorder the pieces, heaviest first else. */
const SHUFFLE = 0.5;
/** Exchanges between two pauses. */
const PAUSE = 50;
/** Gives up when this many exchanges in a row have not made the loose pieces lighter. */
const PATIENCE = 10_000;

/** Bins filled anew, in the order they were given, and the pieces left over. */
interface Filled {
  items: number[][];
  room: number[];
  rest: number[];
}

/**
 * Presses loose pieces into bins that have room left: a bin with room, a few other bins and the loose pieces are put
 * together, and each bin is filled anew to the brim, heavy pieces first; the exchange stands when what stays loose weighs
 * no more than before. Room gathers in fewer bins this way until another piece fits. Changes `packed`.
 *
 * @param goal ends when the loose pieces weigh no more than this
 * @returns the weight of the loose pieces
 */
export function* squeeze(
  model: Model,
  packed: Packed,
  goal: number,
  random: () => number,
  work: Work,
): Generator<void, number> {
  const { weights } = model;
  const { bins } = packed;
  const most = greatestSums(model, work);
  const capacity = bins.map(({ kind }) => most[kind]!);
  const sums = new SubsetSum(work);
  const weightOf = (items: readonly number[]): number => items.reduce((sum, item) => sum + weights[item]!, 0);
  const room = bins.map(({ items }, b) => capacity[b]! - weightOf(items));
  const roomy = [...bins.keys()].filter((b) => room[b]! > 0);
  let weight = weightOf(packed.loose);
  for (let turn = 1, idle = 0; weight > goal && roomy.length > 0 && idle < PATIENCE; turn++, idle++) {
    if (turn % PAUSE === 0) {
      yield;
      if (work.over()) break;
    }
    const at = Math.floor(random() * roomy.length);
    if (room[roomy[at]!] === 0) {
      roomy[at] = roomy.at(-1)!;
      roomy.pop();
      continue;
    }
    const group = chooseGroup(bins.length, roomy[at]!, roomy, random).sort((a, b) => capacity[a]! - capacity[b]!);
    const some = takeSome(packed.loose, random);
    const before = group.reduce((sum, b) => sum + room[b]!, 0);
    const filled = fillAnew([...group.flatMap((b) => bins[b]!.items), ...some], group, before);
    packed.loose.push(...(filled ? filled.rest : some));
    if (!filled) continue;
    group.forEach((b, k) => {
      bins[b]!.items = filled.items[k]!;
      if (room[b] === 0 && filled.room[k]! > 0) roomy.push(b);
      room[b] = filled.room[k]!;
    });
    const gain = before - filled.room.reduce((sum, left) => sum + left, 0);
    weight -= gain;
    if (gain > 0) idle = 0;
  }
  return weight;

  /** Fills the bins of the group one after another; undefined when they have more than `mostRoom` left then. */
  function fillAnew(pieces: readonly number[], group: readonly number[], mostRoom: number): Filled | undefined {
    let rest = byWeight(pieces);
    let left = mostRoom;
    const items: number[][] = [];
    const rooms: number[] = [];
    for (const b of group) {
      const { sum, chosen } = sums.fullest(
        rest.map((item) => weights[item]!),
        capacity[b]!,
      );
      left -= capacity[b]! - sum;
      if (left < 0) return undefined;
      items.push(rest.filter((_, k) => chosen[k]));
      rooms.push(capacity[b]! - sum);
      rest = rest.filter((_, k) => !chosen[k]);
    }
    return { items, room: rooms, rest };
  }

  function byWeight(pieces: readonly number[]): number[] {
    const keyed = pieces.map((item) => ({ item, key: weights[item]! * (1 - SHUFFLE * random()) }));
    work.add(20 * keyed.length);
    return keyed.sort((a, b) => b.key - a.key).map(({ item }) => item);
  }
}

/** Numbers of a few different bins out of `count`, `first` among them. */
function chooseGroup(count: number, first: number, roomy: readonly number[], random: () => number): number[] {
  const group = [first];
  while (group.length < Math.min(GROUP, count)) {
    const other = random() < ROOMY ? roomy[Math.floor(random() * roomy.length)]! : Math.floor(random() * count);
    if (!group.includes(other)) group.push(other);
  }
  return group;
}

/** Takes some loose pieces out of the list, all when there are few. */
function takeSome(loose: number[], random: () => number): number[] {
  if (loose.length <= LOOSE) return loose.splice(0);
  return Array.from({ length: LOOSE }, () => {
    const at = Math.floor(random() * loose.length);
    const item = loose[at]!;
    loose[at] = loose.at(-1)!;
    loose.pop();
    return item;
  });
}
