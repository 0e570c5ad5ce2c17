import type { Cut } from "../model/counts";
import { dive, packRest, PACES } from "./dive";
import type { DiveTools } from "./dive";
import { fillExactly } from "./exactFill";
import { generate } from "../linear/generate";
import { Master, suitsProgram } from "../linear/master";
import { binCounts, piecesLeft } from "../model/model";
import type { FillCount, Model } from "../model/model";
import { seededRandom } from "../model/random";
import type { Work } from "../model/work";
import { squeezeSteps } from "./squeezeInto";

/** Bins are filled exactly first only where this many pieces or more go into one on average … */
const FILL_PIECES = 2.8;
/** … and this much for each step of a bin's capacity [steps] is less than the linear program takes … */
const FILL_STEPS = 40;
/** … and a rest larger than this is not worth a dive. */
const FILL_TAIL = 150;

export interface Reached {
  plan?: FillCount[];
  /** True when it is proven that there is no plan. */
  impossible: boolean;
  /** The strongest inequality met. */
  cut?: Cut;
}

/** Are pieces short enough for the bins that filling bins exactly may work, and are there few enough bins? */
export function suitsFilling(model: Model, counts: readonly number[]): boolean {
  const pieces = piecesLeft(model.demands);
  const bins = counts.reduce((sum, count) => sum + count, 0);
  const filling = counts.reduce((sum, count, k) => sum + count * FILL_STEPS * model.bins[k]!.capacity, 0);
  return pieces > FILL_TAIL && pieces >= FILL_PIECES * bins && filling <= squeezeSteps(model);
}

/** Fills bins exactly and dives for the rest; answers a plan within `counts` if that works out. */
export function* fillAndDive(
  model: Model,
  counts: readonly number[],
  tools: DiveTools,
): Generator<void, FillCount[] | undefined> {
  const filled = fillExactly(model, counts, tools.random, tools.work);
  yield;
  if (piecesLeft(filled.left) > FILL_TAIL) return undefined;
  const rest = yield* packRest(model, filled.left, filled.counts, [], filled.plan, tools);
  return rest && [...filled.plan, ...rest];
}

/**
 * Do all pieces fit into these bins?
 *
 * @param counts bins of each kind
 * @param known a plan whose fills may be of use
 * @param tries dives at most
 */
export function* reach(
  model: Model,
  counts: readonly number[],
  known: readonly FillCount[],
  tries: number,
  seed: number,
  work: Work,
): Generator<void, Reached> {
  const random = seededRandom(seed);
  let plan: FillCount[] | undefined;
  const offer = (found: FillCount[]): void => {
    if (binCounts(model, found).every((count, k) => count <= counts[k]!)) plan ??= found;
  };
  const tools: DiveTools = { random, work, offer };
  for (let n = 0; n < tries && suitsFilling(model, counts) && !plan && !work.over(); n++) {
    const found = yield* fillAndDive(model, counts, tools);
    if (found) offer(found);
  }
  if (plan || !suitsProgram(model)) return { plan, impossible: false };

  const master = new Master(model, work, random);
  master.start([known], counts, random);
  const aim = counts[0]!;
  const { end, cut, lower } = yield* generate(master, model.demands, counts, { enough: aim, most: aim }, work);
  if (lower > aim + 1e-9) return { impossible: true, cut };
  if (end === "stopped") return { impossible: false, cut };
  const root = master.simplex.save();
  for (let n = 0; n < tries && !plan && !work.over(); n++) {
    if (n > 0) master.simplex.restore(root);
    const found = yield* dive(master, counts, n === 0 ? 0 : 0.4, PACES[n] ?? Infinity, n, [], tools);
    if (found) offer(found);
  }
  return { plan, impossible: false, cut };
}
