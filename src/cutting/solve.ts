import { canonical } from "./kinds";
import { pack } from "./pack";
import type { CutPlan, CutProgress } from "./plan";
import type { CutRequest } from "./request";
import { toModel } from "./toModel";
import { toPlan } from "./toPlan";
import { verifyPlan } from "./verify";
import { Work } from "./work";
import type { WorkLimits } from "./work";

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
  const search = pack(translated.model, request.seed ?? 1, work);
  let step = search.next();
  while (!step.done) {
    yield { cost: step.value.cost, bound: step.value.bound, share: work.share, doing: "fewest sticks" };
    step = search.next();
  }
  const packing = step.value;
  const plan = toPlan(order, translated, packing, {
    stopped: work.stopped ?? "proven",
    steps: work.spent,
    longestProven: false,
  });
  const problems = verifyPlan(request, plan);
  if (problems.length > 0) throw new Error(`The cutting plan failed its own check: ${problems.join("; ")}.`);
  return plan;
}
