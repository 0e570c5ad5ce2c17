import { leastCounts } from "./counts";
import type { BinCounts, Cut } from "./counts";
import { dive, PACES } from "./dive";
import { downsize } from "./downsize";
import { generate } from "./generate";
import { placeDecreasing, thriftyOrder } from "./greedy";
import { Master } from "./master";
import { piecesLeft, planCost, restOf } from "./model";
import type { FillCount, Model, Rest } from "./model";
import { takePairs } from "./pairs";
import { seededRandom } from "./random";
import { fillAndDive, suitsFilling } from "./reach";
import type { Work } from "./work";

/** How far the search is. */
export interface Standing {
  cost: number;
  /** Proven least cost. */
  bound: number;
}

export interface Packing extends Standing {
  plan: FillCount[];
  /** Bins that some best plan has; the cuts are about the other pieces. */
  pairs: FillCount[];
  /** Prices by item of the whole model. */
  cuts: Cut[];
}

/** Dives before everything starts again with fresh columns: some starts never get there, the next one at once. */
const DIVES_PER_START = 6;

/** Fillings before the linear program of the whole is tried. */
const FILL_TRIES = 6;

/** Packs everything at the least cost it can find and proves how low the cost can be at all. */
export function* pack(model: Model, seed: number, work: Work): Generator<Standing, Packing> {
  if (model.bins.length > 1) return yield* search(model, seed, work);
  const { pairs, left } = takePairs(model);
  const rest = restOf(model, left);
  work.add(20 * piecesLeft(model.demands) * model.weights.length);
  const settled = planCost(model, pairs);
  const greedy = greedyPlans(model)[0]!;
  const whole = (part: Packing): Packing => {
    const plan = [...pairs, ...rest.outward(part.plan)];
    const cost = settled + part.cost;
    const best = cost <= planCost(model, greedy) ? { plan, cost } : { plan: greedy, cost: planCost(model, greedy) };
    return { ...best, bound: settled + part.bound, pairs, cuts: part.cuts.map((cut) => spread(cut, rest, model)) };
  };
  const steps = search(rest.model, seed, work);
  for (;;) {
    const step = steps.next();
    if (step.done) return whole(step.value);
    yield { cost: settled + step.value.cost, bound: settled + step.value.bound };
  }
}

/** The cut with a price for every item of the whole model. */
function spread(cut: Cut, rest: Rest, model: Model): Cut {
  const prices = new Float64Array(model.weights.length);
  rest.items.forEach((item, k) => (prices[item] = cut.prices[k]!));
  return { ...cut, prices };
}

/** First-fit and best-fit decreasing. */
function greedyPlans(model: Model): FillCount[][] {
  const limits = model.bins.map((bin) => bin.limit);
  const order = thriftyOrder(model);
  return (["first", "fullest"] as const).map((choose) => placeDecreasing(model, model.demands, limits, order, choose));
}

function* search(model: Model, seed: number, work: Work): Generator<Standing, Packing> {
  const greedy = greedyPlans(model);
  const cuts: Cut[] = [volumeCut(model)];
  const best: Packing = {
    plan: greedy[0]!,
    cost: planCost(model, greedy[0]!),
    bound: leastCounts(model.bins, cuts)!.cost,
    pairs: [],
    cuts,
  };
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
    for (let n = 0; n < FILL_TRIES && start === 0 && suitsFilling(model, aim.counts) && best.cost > aim.cost; n++) {
      const filled = yield* quiet(fillAndDive(model, aim.counts, tools), best);
      if (filled) offer(filled);
    }
    if (best.cost <= best.bound) break;
    const master = new Master(model, work, random);
    master.start([...greedy, best.plan], aim.counts, 5, random);
    for (;;) {
      const proof = yield* prove(master, aim, start > 0, cuts, tried, best, work);
      if (!proof) break;
      aim = proof;
      if (best.cost <= best.bound || work.over()) break;
      const root = master.simplex.save();
      for (let n = 0; n < DIVES_PER_START && aim.cost < best.cost && !work.over(); n++) {
        const loose = n >= 2 && best.cost > aim.cost + model.bins[0]!.cost;
        const counts = loose ? [aim.counts[0]! + 1, ...aim.counts.slice(1)] : aim.counts;
        if (n > 0) master.simplex.restore(root);
        const found = yield* quiet(
          dive(master, counts, n === 0 && start === 0 ? 0 : 0.4, PACES[n] ?? Infinity, n, [], tools),
          best,
        );
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

/**
 * Solves the linear program for these counts; when they cannot do, adds the cut and goes on with the next counts. */
function* prove(
  master: Master,
  first: BinCounts,
  thorough: boolean,
  cuts: Cut[],
  tried: ReadonlySet<string>,
  best: Packing,
  work: Work,
): Generator<Standing, BinCounts | undefined> {
  const { model, simplex } = master;
  let aim: BinCounts | undefined = first;
  for (;;) {
    master.setCounts(aim.counts);
    simplex.refreshX();
    if (!simplex.dual()) return undefined;
    const mains = aim.counts[0]!;
    const goal = { enough: thorough ? -Infinity : mains, most: Infinity };
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
function* quiet<T>(inner: Generator<void, T>, best: Standing): Generator<Standing, T> {
  for (;;) {
    const step = inner.next();
    if (step.done) return step.value;
    yield best;
  }
}

/** The simplest proof: no bin holds more than its capacity. */
export function volumeCut(model: Model): Cut {
  const prices = Float64Array.from(model.weights);
  const demand = prices.reduce((sum, weight, item) => sum + weight * model.demands[item]!, 0);
  return { prices, worths: model.bins.map((bin) => bin.capacity), demand };
}
