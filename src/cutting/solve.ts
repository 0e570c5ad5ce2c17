import { isAhead, putOffSearch } from "./ahead";
import { toPlan } from "./checking/toPlan";
import { verifyPlan } from "./checking/verify";
import type { CutPlan, CutProgress } from "./checking/plan";
import { pack } from "./filling/pack";
import { spareOffcuts } from "./filling/spareOffcuts";
import { bestFit } from "./greedy/bestFit";
import { thriftyOrder } from "./greedy/binOrder";
import { leastCounts, neededCuts, volumeCut, type Cut } from "./model/counts";
import { canonical, MOST_PIECES, type Canonical } from "./model/kinds";
import { piecesLeft, planCost, type Model } from "./model/model";
import type { Branch, Packing, Standing } from "./model/packing";
import type { CutRequest } from "./model/request";
import { toModel, type Translated } from "./model/toModel";
import { DEFAULT_STEPS, Work, type WorkLimits } from "./model/work";
import { freeze } from "./freeze";
import { Memory } from "./memory";
import { fewerPatterns } from "./rests/fewerPatterns";
import { LongestRest, type RestProof } from "./rests/longestRest";

/** Once the least cost is proven, better remnants may take this many steps, or this much of the steps so far. */
const POLISH_STEPS = 2e8;
const POLISH_SHARE = 4;
/** Steps for the fewest patterns. */
const PATTERN_STEPS = 3e7;

/** Most pieces that are counted without a plan. */
const MOST_COUNTED = 1e9;

/** Numbers that are kept of packings and of plans, about 8 bytes each. */
const MOST_KEPT = 2e6;
const packings = new Memory<Packing>(MOST_KEPT);
const plans = new Memory<CutPlan>(MOST_KEPT);

/**
 * Plans the cutting of pieces from sticks: the least cost (the fewest sticks when they have no prices), then the longest
 * remnant, then the fewest patterns; with a proof of how far from the least it can be. The order of rows changes nothing;
 * the same request, seed and step limit give the same plan on every machine. Asked again, the same object is handed out;
 * it cannot be changed.
 *
 * @param limits how long it may take; default about 0.4 s of steps and no clock
 * @throws InputError naming the argument, the limit and the value
 * @example planCuts({ pieces: [{ length: 40, quantity: 3 }], stocks: [{ length: 120 }] }).sticks //=> 1
 */
export function planCuts(request: CutRequest, limits: WorkLimits = {}): CutPlan {
  return finish(planCutsInSteps(request, isAhead() ? makeshift(request, limits) : limits));
}

/** No work at all for a plan that is put off; it is planned as asked later. */
function makeshift(request: CutRequest, limits: WorkLimits): WorkLimits {
  if (isKnown(request, limits)) return limits;
  putOffSearch(planCutsInSteps(request, limits));
  return { ...limits, steps: 0 };
}

/** True where a plan that is asked for now would be a makeshift, since its search is put off. */
export const isMakeshift = (request: CutRequest, limits: WorkLimits = {}): boolean =>
  isAhead() && !isKnown(request, limits);

const isKnown = (request: CutRequest, { steps = DEFAULT_STEPS }: WorkLimits): boolean =>
  plans.find(planKey(canonical(request), request), steps) !== undefined;

const planKey = (order: Canonical, request: CutRequest): string =>
  `${keyOf(order, request)} keep ${order.minimumOffcut}`;

/** The same in small steps, for a worker that reports progress and can be canceled between them. */
export function* planCutsInSteps(request: CutRequest, limits: WorkLimits = {}): Generator<CutProgress, CutPlan> {
  const order = canonical(request);
  const asked = planKey(order, request);
  const limit = limits.steps ?? DEFAULT_STEPS;
  const known = plans.find(asked, limit);
  if (known) return known.value;

  const translated = toModel(order);
  const { packing, work } = yield* packed(order, translated, request, limits);
  packing.cuts = neededCuts(packing.cuts, (some) => provesBound(translated.model, packing, some, work));
  const rest = yield* polish(translated, packing, request.seed ?? 1, work);
  const plan = toPlan(order, translated, packing, {
    stopped: packing.cost === packing.bound ? "proven" : (work.stopped ?? "work limit"),
    steps: work.spent,
    rest,
  });
  const problems = verifyPlan(request, plan);
  if (problems.length > 0) throw new Error(`The cutting plan failed its own check: ${problems.join("; ")}.`);
  if (work.repeatable) plans.keep(asked, { ...work.outcome, value: freeze(plan), size: sizeOf(packing) });
  return plan;
}

/**
 * The least cost alone, without a thought for rests and patterns: what it is and how much is proven. More pieces than a
 * plan takes are counted by best fit.
 *
 * @throws InputError naming the argument, the limit and the value
 */
export function leastCost(request: CutRequest, limits: WorkLimits = {}): Standing {
  const order = canonical(request, MOST_COUNTED);
  const translated = toModel(order);
  if (piecesLeft(translated.model.demands) > MOST_PIECES) return countedByBestFit(translated.model);
  if (isAhead() && !packings.find(keyOf(order, request), limits.steps ?? DEFAULT_STEPS)) {
    putOffSearch(packed(order, translated, request, limits));
    return countedByBestFit(translated.model);
  }
  const { packing } = finish(packed(order, translated, request, limits));
  return { cost: packing.cost, bound: packing.bound };
}

function countedByBestFit(model: Model): Standing {
  const work = new Work();
  const limits = model.bins.map((bin) => bin.limit);
  const plan = bestFit(model, model.demands, limits, thriftyOrder(model), work);
  return { cost: planCost(model, plan), bound: leastCounts(model.bins, [volumeCut(model, work)], work)!.bound };
}

/** Packs everything at the least cost, or remembers how; the packing is the caller's to change. */
function* packed(
  order: Canonical,
  { model }: Translated,
  request: CutRequest,
  limits: WorkLimits,
): Generator<CutProgress, { packing: Packing; work: Work }> {
  const asked = keyOf(order, request);
  const known = packings.find(asked, limits.steps ?? DEFAULT_STEPS);
  if (known) return { packing: { ...known.value }, work: new Work(limits, known.spent) };
  const work = new Work(limits);
  const search = pack(model, request.seed ?? 1, work);
  let step = search.next();
  for (; !step.done; step = search.next()) yield progress(step.value, work, "fewest sticks");
  const packing = step.value;
  yield progress(packing, work, "fewest sticks");
  if (work.repeatable) packings.keep(asked, { ...work.outcome, value: { ...packing }, size: sizeOf(packing) });
  return { packing, work };
}

/** Longer rests and fewer patterns at the same cost; answers what proves that no rest can be longer. */
function* polish(
  translated: Translated,
  packing: Packing,
  seed: number,
  work: Work,
): Generator<CutProgress, RestProof | undefined> {
  const { model, kindOf } = translated;
  let proof: RestProof | undefined;
  if (packing.cost === packing.bound) {
    const cuts = packing.pairs.length > 0 ? [volumeCut(model, work)] : packing.cuts;
    const steps = Math.max(POLISH_STEPS, POLISH_SHARE * work.spent);
    const saved = work.within(steps, spareOffcuts(model, packing.plan, cuts, seed, work));
    packing.plan = yield* reporting(saved, packing, work, "fewest offcuts");
    if (kindOf[0] !== -1 || !packing.plan.some(({ fill }) => fill.bin === 0)) {
      const longest = new LongestRest(model, translated, packing.plan, cuts, work);
      yield* reporting(work.within(steps, longest.run(seed)), packing, work, "longest remnant");
      packing.plan = longest.plan;
      proof = longest.proof();
    }
  }
  const merging = work.within(PATTERN_STEPS, fewerPatterns(model, translated, packing.plan, work));
  packing.plan = yield* reporting(merging, packing, work, "fewest patterns");
  return proof;
}

/** Do these cuts alone prove what the packing says is proven? Pairs and what they cost stand beside them. */
function provesBound(model: Model, { bound, pairs }: Packing, cuts: readonly Cut[], work: Work): boolean {
  return leastCounts(model.bins, cuts, work)!.bound >= bound - planCost(model, pairs);
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

/** Everything the search for the least cost depends on, but for its limits. */
const keyOf = ({ lengths, demands, kinds, kerf }: Canonical, { seed = 1 }: CutRequest): string =>
  [
    lengths.map((length, k) => `${length}x${demands[k]!}`).join(),
    kinds.map(({ length, cost, quantity }) => `${length}@${cost}x${quantity}`).join(),
    `kerf ${kerf} seed ${seed}`,
  ].join(" of ");

const sizeOf = ({ plan, cuts, branches }: Packing): number =>
  (branches ? sizeOfBranches(branches) : 0) +
  plan.reduce((sum, { fill }) => sum + 10 + 4 * fill.items.length, 0) +
  cuts.reduce((sum, { prices }) => sum + prices.length, 0);

const sizeOfBranches = (branch: Branch): number =>
  "prices" in branch ? branch.prices.length : 4 + sizeOfBranches(branch.together) + sizeOfBranches(branch.apart);

function finish<T>(search: Generator<unknown, T>): T {
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}
