import { fewerPatterns } from "./rests/fewerPatterns";
import { canonical } from "./model/kinds";
import { volumeCut } from "./model/counts";
import { pack } from "./filling/pack";
import type { Packing, Standing } from "./model/packing";
import type { CutPlan, CutProgress } from "./checking/plan";
import { longestRemnant } from "./rests/remnants";
import type { CutRequest } from "./model/request";
import { spareOffcuts } from "./filling/spareOffcuts";
import { toModel } from "./model/toModel";
import { toPlan } from "./checking/toPlan";
import { verifyPlan } from "./checking/verify";
import { Work } from "./model/work";
import type { WorkLimits } from "./model/work";

/** Once the least cost is proven, better remnants may take this many steps, or this much of the steps so far. */
const POLISH_STEPS = 2e8;
const POLISH_SHARE = 4;
/** Steps for the fewest patterns. */
const PATTERN_STEPS = 3e7;

/**
 * Plans the cutting of pieces from sticks: the least cost (the fewest sticks when they have no prices), then the longest
 * remnant, then the fewest patterns; with a proof of how far from the least it can be. The order of rows changes nothing;
 * the same request, seed and step limit give the same plan on every machine.
 *
 * @param limits how long it may take; default about 0.4 s of steps and no clock
 * @throws InputError naming the argument, the limit and the value
 * @example planCuts({ pieces: [{ length: 40, quantity: 3 }], stocks: [{ length: 120 }] }).sticks //=> 1
 */
export function planCuts(request: CutRequest, limits: WorkLimits = {}): CutPlan {
  const steps = planCutsInSteps(request, limits);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same in small steps, for a worker that reports progress and can be canceled between them. */
export function* planCutsInSteps(request: CutRequest, limits: WorkLimits = {}): Generator<CutProgress, CutPlan> {
  const order = canonical(request);
  const translated = toModel(order);
  const work = new Work(limits);
  const { model } = translated;
  const seed = request.seed ?? 1;

  const search = pack(model, seed, work);
  let step = search.next();
  for (; !step.done; step = search.next()) yield progress(step.value, work, "fewest sticks");
  const packing = step.value;

  let longestProven = false;
  if (packing.cost === packing.bound) {
    const cuts = packing.pairs.length > 0 ? [volumeCut(model)] : packing.cuts;
    const steps = Math.min(work.left, Math.max(POLISH_STEPS, POLISH_SHARE * work.spent));
    const saved = work.within(steps, spareOffcuts(model, packing.plan, cuts, seed, work));
    packing.plan = yield* reporting(saved, packing, work, "fewest offcuts");
    const search = work.within(steps, longestRemnant(model, packing.plan, cuts, seed, work));
    if (translated.kindOf[0] !== -1 || !packing.plan.some(({ fill }) => fill.bin === 0)) {
      const longest = yield* reporting(search, packing, work, "longest remnant");
      packing.plan = longest.plan;
      longestProven = longest.proven;
    }
  }
  const merging = work.within(PATTERN_STEPS, fewerPatterns(model, packing.plan, work));
  packing.plan = yield* reporting(merging, packing, work, "fewest patterns");

  const plan = toPlan(order, translated, packing, {
    stopped: packing.cost === packing.bound ? "proven" : (work.stopped ?? "work limit"),
    steps: work.spent,
    longestProven,
  });
  const problems = verifyPlan(request, plan);
  if (problems.length > 0) throw new Error(`The cutting plan failed its own check: ${problems.join("; ")}.`);
  return plan;
}

/** Hands out progress at every pause of an inner search. */
function* reporting<T>(
  inner: Generator<void, T>,
  packing: Packing,
  work: Work,
  doing: CutProgress["doing"],
): Generator<CutProgress, T> {
  for (;;) {
    const step = inner.next();
    if (step.done) return step.value;
    yield progress(packing, work, doing);
  }
}

function progress({ cost, bound }: Standing, work: Work, doing: CutProgress["doing"]): CutProgress {
  return { cost, bound, share: work.share, doing };
}
