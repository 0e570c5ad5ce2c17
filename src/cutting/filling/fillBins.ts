import type { Model } from "../model/model";
import type { OpenBin, Packed } from "../model/packed";
import { SubsetSum } from "../model/subsetSum";
import type { Work } from "../model/work";

/** Pieces that a main bin is filled from, beside its heaviest. */
const SAMPLE = 24;
/** How far chance may reorder the pieces of the other bins, heaviest first else. */
const SHUFFLE = 0.3;
/** Copies of one piece that are considered for one bin. */
const COPIES = 3;

/**
 * Fills bin after bin as full as can be, small ones first: a main bin with the heaviest piece left and others by chance,
 * the rest from all pieces, heavy ones preferred, because light ones are of use everywhere. Bins stay empty once the work
 * is used up.
 *
 * @param counts bins of each kind
 */
export function fillBins(model: Model, counts: readonly number[], random: () => number, work: Work): Packed {
  const { weights } = model;
  const left = Int32Array.from(model.demands);
  const sums = new SubsetSum(work);
  const bins: OpenBin[] = [];
  const kinds = counts.map((_, k) => k).sort((a, b) => model.bins[a]!.capacity - model.bins[b]!.capacity || a - b);
  for (const kind of kinds) {
    for (let n = 0; n < counts[kind]!; n++) {
      if (work.over()) {
        bins.push({ kind, items: [] });
        continue;
      }
      const items = kind === 0 ? heaviest(left) : [];
      const room = model.bins[kind]!.capacity - items.reduce((sum, item) => sum + weights[item]!, 0);
      const candidates = order(model, left, room, kind === 0 ? 1 : SHUFFLE, random, work);
      if (kind === 0) candidates.splice(SAMPLE);
      const { chosen } = sums.fullest(
        candidates.map((item) => weights[item]!),
        room,
      );
      candidates.forEach((item, k) => {
        if (!chosen[k]) return;
        items.push(item);
        left[item]!--;
      });
      bins.push({ kind, items });
    }
  }
  return { bins, loose: [...left.keys()].flatMap((item) => new Array<number>(left[item]!).fill(item)) };
}

/** Takes out the heaviest piece there is. */
function heaviest(left: Int32Array): number[] {
  const item = left.findIndex((count) => count > 0);
  if (item < 0) return [];
  left[item]!--;
  return [item];
}

/** Pieces that fit, heaviest first but for chance; `shuffle` 1: by chance alone. */
function order(
  { weights }: Model,
  left: Int32Array,
  room: number,
  shuffle: number,
  random: () => number,
  work: Work,
): number[] {
  const found: { item: number; key: number }[] = [];
  left.forEach((count, item) => {
    const copies = Math.min(count, Math.floor(room / weights[item]!), COPIES);
    for (let n = 0; n < copies; n++) {
      found.push({ item, key: shuffle === 1 ? random() : weights[item]! * (1 - shuffle * random()) });
    }
  });
  work.add(10 * left.length + 30 * found.length);
  return found.sort((a, b) => b.key - a.key).map(({ item }) => item);
}
