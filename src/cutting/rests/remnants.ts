import { bisectRoom } from "./bisectRoom";
import { volumeCut } from "../model/counts";
import type { Cut } from "../model/counts";
import { leastRoom } from "../linear/leastRoom";
import { binCounts, fillWeight, restOf } from "../model/model";
import type { FillCount, Model } from "../model/model";
import { takePairs } from "../filling/pairs";
import type { RoomSearch } from "./roomSearch";
import { suitsSqueezing } from "../filling/squeezeInto";
import { squeezeRoom } from "./squeezeRoom";
import type { Work } from "../model/work";

export interface RemnantSearch {
  plan: FillCount[];
  /** True when no plan with the same bins leaves a larger remnant on its largest bought bin. */
  proven: boolean;
}

/**
 * Looks for a plan with the same bins that leaves one bought bin as empty as it can be. With one kind of bin, pieces too
 * heavy to lie in the emptied bin are paired off first.
 */
export function* longestRemnant(
  model: Model,
  found: readonly FillCount[],
  cuts: readonly Cut[],
  seed: number,
  work: Work,
): Generator<void, RemnantSearch> {
  const counts = binCounts(model, found);
  const bin = largestBought(model, counts);
  if (bin === undefined) return { plan: [...found], proven: false };
  const enough = Math.min(...found.filter(({ fill }) => fill.bin === bin).map(({ fill }) => fillWeight(model, fill)));
  const { pairs, left } = model.bins.length === 1 ? takePairs(model, work, enough) : { pairs: [], left: model.demands };
  const others = counts.map((count, k) => (k === bin ? count - 1 : count));
  for (const { count } of pairs) others[bin]! -= count;
  // The heavy pieces alone need all the bins: none of them can hold less than the lightest does now.
  if (others[bin]! < 0) return { plan: [...found], proven: true };

  const rest = restOf(model, left);
  const valid = pairs.length > 0 ? [volumeCut(rest.model, work)] : [volumeCut(rest.model, work), ...cuts];
  const lightest = rest.model.weights.at(-1)!;
  const search: RoomSearch = {
    model: rest.model,
    others,
    bin,
    known: found.flatMap(({ fill, count }) => {
      const inward = rest.inward(fill);
      return inward ? { fill: inward, count } : [];
    }),
    plan: undefined,
    enough,
    // An empty bin could be left out, and the plan would cost less than is possible.
    least: Math.max(lightest, ...valid.map((cut) => leastRoom(rest.model, cut, others, enough, work))),
  };
  if (suitsSqueezing(rest.model)) yield* squeezeRoom(search, pairs.length === 0, seed, work);
  const proven = yield* bisectRoom(search, seed, work);
  return { plan: search.plan ? [...pairs, ...rest.outward(search.plan)] : [...found], proven };
}

function largestBought(model: Model, counts: readonly number[]): number | undefined {
  const bought = counts.map((_, k) => k).filter((k) => counts[k]! > 0 && model.bins[k]!.cost > 0);
  return bought.sort((a, b) => model.bins[b]!.capacity - model.bins[a]!.capacity || a - b)[0];
}
