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
      const fitting = thatFit(model, left, room, work);
      const candidates = kind === 0 ? sample(fitting, random) : heavyFirst(model, fitting, random, work);
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

/** Pieces that fit, of each weight a few. */
function thatFit({ weights }: Model, left: Int32Array, room: number, work: Work): number[] {
  const found: number[] = [];
  left.forEach((count, item) => {
    const copies = Math.min(count, Math.floor(room / weights[item]!), COPIES);
    for (let n = 0; n < copies; n++) found.push(item);
  });
  work.add(10 * left.length + 10 * found.length);
  return found;
}

/** Some of the pieces, by chance alone. */
function sample(pieces: number[], random: () => number): number[] {
  const some = Math.min(SAMPLE, pieces.length);
  for (let n = 0; n < some; n++) {
    const at = n + Math.floor(random() * (pieces.length - n));
    [pieces[n], pieces[at]] = [pieces[at]!, pieces[n]!];
  }
  return pieces.slice(0, some);
}

/** Heaviest first but for chance. */
function heavyFirst({ weights }: Model, pieces: readonly number[], random: () => number, work: Work): number[] {
  const keyed = pieces.map((item) => ({ item, key: weights[item]! * (1 - SHUFFLE * random()) }));
  work.add(60 * keyed.length);
  return keyed.sort((a, b) => b.key - a.key).map(({ item }) => item);
}
