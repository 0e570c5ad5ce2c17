import { takeFill } from "../model/model";
import type { BinFill, FillCount, Model } from "../model/model";
import type { Work } from "../model/work";

/** The pieces set aside fill about this many main bins. */
const ASIDE_BINS = 20;
const ASIDE_PIECES = 120;
/** A bin may waste this share of the room that is to spare in all. */
const SPARE_SHARE = 0.25;

/** Some bins filled to the brim, and what is left to place: pieces and bins. */
export interface Filled {
  plan: FillCount[];
  left: Int32Array;
  counts: number[];
}

/**
 * Where there is hardly any room to spare: sets a random sample of the pieces aside and fills bin after bin exactly with
 * the others, heaviest first, the rest of the bin by subset sums in random order. What is left is a small problem with
 * pieces of every weight, so that it still works out.
 *
 * @param counts bins to be used, by kind
 */
export function fillExactly(model: Model, counts: readonly number[], random: () => number, work: Work): Filled {
  const { left, aside } = setAside(model, random);
  const available = [...counts];
  const plan: FillCount[] = [];
  let spare = counts.reduce((sum, count, k) => sum + count * model.bins[k]!.capacity, 0);
  model.weights.forEach((weight, item) => (spare -= weight * model.demands[item]!));
  const kinds = model.bins.map((_, k) => k).sort((a, b) => model.bins[a]!.capacity - model.bins[b]!.capacity || a - b);
  for (const bin of kinds) {
    while (available[bin]! > 0 && !work.over()) {
      const found = fullBin(model, bin, left, random, work);
      if (!found || found.waste > SPARE_SHARE * spare) break;
      takeFill(found.fill, 1, left);
      spare -= found.waste;
      available[bin]!--;
      plan.push({ fill: found.fill, count: 1 });
    }
  }
  return { plan, left: left.map((count, item) => count + aside[item]!), counts: available };
}

function setAside(model: Model, random: () => number): { left: Int32Array; aside: Int32Array } {
  const left = Int32Array.from(model.demands);
  const aside = new Int32Array(left.length);
  const pieces: number[] = [];
  left.forEach((count, item) => {
    for (let n = 0; n < count; n++) pieces.push(item);
  });
  let room = ASIDE_BINS * model.bins[0]!.capacity;
  for (let n = 0; n < ASIDE_PIECES && room > 0 && pieces.length > 0; n++) {
    const at = Math.floor(random() * pieces.length);
    const item = pieces[at]!;
    pieces[at] = pieces[pieces.length - 1]!;
    pieces.pop();
    aside[item]!++;
    left[item]!--;
    room -= model.weights[item]!;
  }
  return { left, aside };
}

/** The heaviest piece that fits, and pieces that fill the bin behind it as far as chance has it. */
function fullBin(
  model: Model,
  bin: number,
  left: Int32Array,
  random: () => number,
  work: Work,
): { fill: BinFill; waste: number } | undefined {
  const { capacity } = model.bins[bin]!;
  const first = left.findIndex((count, item) => count > 0 && model.weights[item]! <= capacity);
  if (first < 0) return undefined;
  const room = capacity - model.weights[first]!;
  const candidates: number[] = [];
  for (let item = first; item < left.length; item++) {
    const most = Math.min(left[item]! - (item === first ? 1 : 0), Math.floor(room / model.weights[item]!), 3);
    for (let n = 0; n < most; n++) candidates.push(item);
  }
  const { sum, items } = subsetSum(
    candidates,
    candidates.map((item) => model.weights[item]!),
    room,
    random,
    work,
  );
  const copies = new Map<number, number>();
  for (const item of [first, ...items]) copies.set(item, (copies.get(item) ?? 0) + 1);
  return { fill: { bin, items: [...copies.keys()], copies: [...copies.values()] }, waste: room - sum };
}

/** The largest sum up to `room` of a choice of weights; candidates come in random order until `room` is met. */
function subsetSum(
  candidates: number[],
  weights: number[],
  room: number,
  random: () => number,
  work: Work,
): { sum: number; items: number[] } {
  // reachedBy[s] is the candidate that made sum s reachable first; sums found later never rely on one another.
  const reachedBy = new Int32Array(room + 1).fill(-1);
  let count = candidates.length;
  let top = 0;
  for (let n = 0; n < count && reachedBy[room]! < 0; n++) {
    const pick = n + Math.floor(random() * (count - n));
    [candidates[n], candidates[pick]] = [candidates[pick]!, candidates[n]!];
    [weights[n], weights[pick]] = [weights[pick]!, weights[n]!];
    const weight = weights[n]!;
    top = Math.min(room, top + weight);
    for (let s = top; s >= weight; s--) {
      if (reachedBy[s]! < 0 && (s === weight || reachedBy[s - weight]! >= 0)) reachedBy[s] = n;
    }
    work.add(2 * Math.max(0, top - weight));
  }
  count = room;
  while (count > 0 && reachedBy[count]! < 0) count--;
  const items: number[] = [];
  for (let s = count; s > 0; s -= weights[reachedBy[s]!]!) items.push(candidates[reachedBy[s]!]!);
  return { sum: count, items };
}
