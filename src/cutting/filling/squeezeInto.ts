import { fillBins } from "./fillBins";
import { piecesLeft } from "../model/model";
import type { FillCount, Model } from "../model/model";
import { planOf, refit } from "../model/packed";
import { squeeze } from "./squeeze";
import { greatestSums } from "../model/subsetSum";
import type { Work } from "../model/work";

/** Squeezing is good where this many pieces or more go into a main bin; with fewer there are too few ways to fill one. */
const SQUEEZE_PIECES = 3.1;

/** What solving the linear program takes, roughly, for each row to the third power [steps]; and the most for one squeeze. */
const PROGRAM_STEPS = 30;
const MOST_STEPS = 1e8;

/** Steps one squeeze is worth: about what the linear program takes, which settles small problems in no time. */
export function squeezeSteps({ weights, bins }: Model): number {
  return Math.min(MOST_STEPS, PROGRAM_STEPS * (weights.length + bins.length) ** 3);
}

/** What filling one bin from a sample of the pieces takes for each word of the table of sums [steps]. */
const FILL_STEPS = 50;

/**
 * Are pieces so short for the main bin that bins can be squeezed full, and are there so few bins that to fill them takes
 * less than the linear program?
 */
export function suitsSqueezing(model: Model): boolean {
  const { weights, demands, bins } = model;
  const total = weights.reduce((sum, weight, item) => sum + weight * demands[item]!, 0);
  const { capacity } = bins[0]!;
  const filling = (total / capacity) * FILL_STEPS * (capacity / 32 + 20);
  return capacity * piecesLeft(demands) >= SQUEEZE_PIECES * total && filling <= squeezeSteps(model);
}

/**
 * Squeezes all pieces into these bins; answers the plan if that works out. The largest bin takes no part: the loose
 * pieces have to become as light as what it holds, which comes about bit by bit, unlike the last piece finding a place.
 *
 * @param counts bins of each kind
 * @param from a plan to start from; without one, bins are filled afresh
 */
export function* squeezeInto(
  model: Model,
  counts: readonly number[],
  from: readonly FillCount[] | undefined,
  random: () => number,
  work: Work,
): Generator<void, FillCount[] | undefined> {
  const kinds = counts.map((_, k) => k).filter((k) => counts[k]! > 0);
  const last = kinds.sort((a, b) => model.bins[b]!.capacity - model.bins[a]!.capacity || a - b)[0];
  if (last === undefined) return undefined;
  const others = counts.map((count, k) => (k === last ? count - 1 : count));
  const packed = from ? refit(model, from, others) : fillBins(model, others, random, work);
  const most = greatestSums(model, work)[last]!;
  const loose = yield* work.within(squeezeSteps(model), squeeze(model, packed, most, random, work));
  return loose <= most ? planOf([...packed.bins, { kind: last, items: packed.loose }]) : undefined;
}
