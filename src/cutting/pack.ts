import { leastCounts } from "./counts";
import type { BinCounts, Cut } from "./counts";
import { dive, packRest } from "./dive";
import type { DiveTools } from "./dive";
import { downsize } from "./downsize";
import { fillExactly } from "./exactFill";
import { generate } from "./generate";
import { placeDecreasing, thriftyOrder } from "./greedy";
import { Master } from "./master";
import { piecesLeft, planCost } from "./model";
import type { FillCount, Model } from "./model";
import { seededRandom } from "./random";
import type { Work } from "./work";

export interface Packing {
  plan: FillCount[];
  cost: number;
  /** Proven least cost. */
  bound: number;
  cuts: Cut[];
}

/** Dives before everything starts again with fresh columns: some starts never get there, the next one at once. */
const DIVES_PER_START = 6;

/** Bins are filled exactly only where this many pieces or more go into one on average … */
const FILL_PIECES = 2.8;
/** … and this often before the linear program of the whole; a larger rest is not worth a dive. */
const FILL_TRIES = 6;
const FILL_TAIL = 250;

/** Packs everything at the least cost it can find and proves how low the cost can be at all. */
export function* pack(model: Model, seed: number, work: Work): Generator<Packing, Packing> {
  const limits = model.bins.map((bin) => bin.limit);
  const order = thriftyOrder(model);
  const greedy = (["first", "fullest"] as const).map((choose) =>
    placeDecreasing(model, model.demands, limits, order, choose),
  );
  const cuts: Cut[] = [volumeCut(model)];
  const best: Packing = { plan: greedy[0]!, cost: planCost(model, greedy[0]!), bound: 0, cuts };
  const offer = (found: FillCount[]): void => {
    const plan = downsize(model, found);
    const cost = planCost(model, plan);
    if (cost < best.cost) {
      best.plan = plan;
      best.cost = cost;
    }
  };
  greedy.forEach(offer);

  const tried = new Set<string>();
  for (let start = 0; !work.over(); start++) {
    const random = seededRandom(seed + start);
    const tools = { random, work, offer };
    let aim = leastCounts(model.bins, cuts)!;
    best.bound = Math.max(best.bound, aim.cost);
    if (best.cost <= best.bound) break;
    if (start === 0) yield* quiet(fillAndDive(model, aim.counts, tools, best), best);
    if (best.cost <= best.bound) break;
    const master = new Master(model, work, random);
    master.start([...greedy, best.plan], aim.counts, 5, random);
    for (;;) {
      const proof = yield* prove(master, aim, cuts, tried, best, work);
      if (!proof) break;
      aim = proof;
      if (best.cost <= best.bound || work.over()) break;
      const root = master.simplex.save();
      for (let n = 0; n < DIVES_PER_START && aim.cost < best.cost && !work.over(); n++) {
        const loose = n >= 2 && best.cost > aim.cost + model.bins[0]!.cost;
        const counts = loose ? [aim.counts[0]! + 1, ...aim.counts.slice(1)] : aim.counts;
        if (n > 0) master.simplex.restore(root);
        const found = yield* quiet(dive(master, counts, n === 0 && start === 0 ? 0 : 0.4, [], tools), best);
        if (found) offer(found);
      }
      if (best.cost <= best.bound || work.over()) break;
      tried.add(aim.counts.join());
      const next = leastCounts(model.bins, cuts, tried);
      if (!next || next.cost >= best.cost) {
        tried.clear();
        break;
      }
      aim = next;
    }
    if (best.cost <= best.bound) break;
  }
  return best;
}

/** Tries for bins filled exactly, where the pieces are short enough for that. */
function* fillAndDive(model: Model, counts: readonly number[], tools: DiveTools, best: Packing): Generator<void, void> {
  const { random, work } = tools;
  const bins = counts.reduce((sum, count) => sum + count, 0);
  if (piecesLeft(model.demands) < FILL_PIECES * bins) return;
  for (let n = 0; n < FILL_TRIES && !work.over(); n++) {
    const filled = fillExactly(model, counts, random, work);
    yield;
    if (piecesLeft(filled.left) > FILL_TAIL) continue;
    const rest = yield* packRest(model, filled.left, filled.counts, [], filled.plan, tools);
    if (rest) tools.offer([...filled.plan, ...rest]);
    if (best.cost <= best.bound) return;
  }
}

/** Solves the linear program for these counts; when they cannot do, adds the cut and goes on with the next counts. */
function* prove(
  master: Master,
  first: BinCounts,
  cuts: Cut[],
  tried: ReadonlySet<string>,
  best: Packing,
  work: Work,
): Generator<Packing, BinCounts | undefined> {
  const { model, simplex } = master;
  let aim: BinCounts | undefined = first;
  for (;;) {
    master.setCounts(aim.counts);
    simplex.refreshX();
    if (!simplex.dual()) return undefined;
    const mains = aim.counts[0]!;
    const goal = { enough: mains, most: Infinity };
    const { end, cut, lower } = yield* quiet(generate(master, model.demands, aim.counts, goal, work), best);
    if (cut && lower > mains) cuts.push(cut);
    else if (end !== "enough" && end !== "optimal") return undefined;
    else return aim;
    best.bound = Math.max(best.bound, leastCounts(model.bins, cuts)!.cost);
    aim = leastCounts(model.bins, cuts, tried);
    if (!aim || aim.cost >= best.cost) return undefined;
  }
}

/** Hands the best so far out at every pause of an inner search. */
function* quiet<T>(inner: Generator<void, T>, best: Packing): Generator<Packing, T> {
  for (;;) {
    const step = inner.next();
    if (step.done) return step.value;
    yield best;
  }
}

/** The simplest proof: no bin holds more than its capacity. */
function volumeCut(model: Model): Cut {
  const prices = Float64Array.from(model.weights);
  const demand = prices.reduce((sum, weight, item) => sum + weight * model.demands[item]!, 0);
  return { prices, worths: model.bins.map((bin) => bin.capacity), demand };
}
