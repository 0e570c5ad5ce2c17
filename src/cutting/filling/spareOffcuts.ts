import type { Cut } from "../model/counts";
import { binCounts } from "../model/model";
import type { FillCount, Model } from "../model/model";
import { seededRandom } from "../model/random";
import { reach } from "./reach";
import { squeezeInto, squeezeSteps, suitsSqueezing } from "./squeezeInto";
import type { Work } from "../model/work";

/** Steps for each offcut that might be spared, for squeezing and for diving. */
const STEPS_EACH = 2e7;

/**
 * An offcut is cut only when that saves something: tries to do without each free bin in use, largest first, in the same
 * number of other bins.
 */
export function* spareOffcuts(
  model: Model,
  found: readonly FillCount[],
  cuts: readonly Cut[],
  seed: number,
  work: Work,
): Generator<void, FillCount[]> {
  let plan = [...found];
  const random = seededRandom(seed);
  const squeezable = suitsSqueezing(model);
  const large = squeezeSteps(model) > STEPS_EACH;
  let tooLarge = false;
  const free = model.bins.map((_, k) => k).filter((k) => k > 0 && model.bins[k]!.cost === 0);
  free.sort((a, b) => model.bins[b]!.capacity - model.bins[a]!.capacity || a - b);
  for (const bin of free) {
    for (;;) {
      const counts = binCounts(model, plan);
      if (counts[bin] === 0 || work.over()) break;
      counts[bin]!--;
      const needed = cuts.some((cut) => counts.reduce((sum, count, k) => sum + count * cut.worths[k]!, 0) < cut.demand);
      if (needed) break;
      const squeezed = squeezable
        ? yield* work.within(STEPS_EACH, squeezeInto(model, counts, plan, random, work))
        : undefined;
      const spared = squeezed ?? (squeezable && large ? undefined : yield* dived(counts));
      if (!spared) break;
      plan = spared;
    }
    if (tooLarge) break;
  }
  return plan;

  function* dived(counts: readonly number[]): Generator<void, FillCount[] | undefined> {
    const before = work.spent;
    const { plan: found } = yield* work.within(STEPS_EACH, reach(model, counts, plan, 1, seed, work));
    tooLarge = !found && work.spent - before >= STEPS_EACH;
    return found;
  }
}
