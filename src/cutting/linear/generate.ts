import type { Cut } from "../model/counts";
import { knapsack } from "./knapsack";
import type { Goods, KnapsackAnswer } from "./knapsackTable";
import { tableKnapsack } from "./knapsackTable";
import { isLarge, type Master } from "./master";
import type { Work } from "../model/work";

/** Whole prices per main bin. The bound loses at most (pieces / SCALE) bins by rounding the prices down. */
export const SCALE = 2 ** 26;
/** Fills without common pieces that are added at a time: one for so many rows of the linear program, and the most. */
const ROWS_EACH = 8;
const MOST_DISJOINT = 20;
/** The figures of the linear program are trusted this far [bins]. */
export const BIN_TOLERANCE = 1e-3;

export interface Goal {
  /** Stop as soon as the linear program needs no more main bins than this; -Infinity: go on to its optimum. */
  enough: number;
  /** Give up as soon as more main bins than this are proven necessary. */
  most: number;
}

export interface Generated {
  end: "enough" | "hopeless" | "optimal" | "stopped";
  /** The strongest inequality met, and how many main bins it proves for these pieces and bins. */
  cut?: Cut;
  lower: number;
}

/**
 * Column generation: solve the linear program over the fills known, price all fills with a knapsack, add the ones worth
 * more than their bin, again.
 *
 * @param left pieces still wanted (bounds the fills)
 * @param counts bins still there, by kind
 */
export function* generate(
  master: Master,
  left: Int32Array,
  counts: readonly number[],
  goal: Goal,
  work: Work,
): Generator<void, Generated> {
  const { simplex } = master;
  const bounds = left.map((count) => Math.max(0, count));
  let cut: Cut | undefined;
  let lower = -Infinity;
  for (;;) {
    if (!simplex.primal()) return { end: "stopped", cut, lower };
    const value = simplex.value();
    const enough = goal.enough === -Infinity ? goal.enough : Math.max(goal.enough, Math.ceil(lower - 1e-9));
    if (value <= enough + BIN_TOLERANCE) return { end: "enough", cut, lower };
    const { prices, answers } = priceFills(master, bounds, work);
    const worths = answers.map((answer) => answer.best);
    const demand = prices.reduce((sum, price, item) => sum + price * bounds[item]!, 0);
    const proven = worths.reduce((rest, worth, k) => (k === 0 ? rest : rest - worth * counts[k]!), demand) / worths[0]!;
    if (proven > lower) {
      lower = proven;
      cut = { prices, worths, demand };
    }
    if (lower > goal.most + 1e-9) return { end: "hopeless", cut, lower };
    let added = 0;
    answers.forEach((answer, bin) => {
      for (const { items, copies } of answer.choices.slice(-4)) {
        if (master.addFill({ bin, items, copies }) !== undefined) added++;
      }
    });
    if (added === 0) return { end: "optimal", cut, lower };
    if (!isLarge(master.model)) addDisjoint(master, prices, bounds, work);
    yield;
    if (work.over()) return { end: "stopped", cut, lower };
  }
}

/** Whole prices of the weights now, and for each kind of bin the fills worth more than the bin. */
function priceFills(
  master: Master,
  bounds: Int32Array,
  work: Work,
): { prices: Float64Array; answers: KnapsackAnswer[] } {
  const { model, simplex } = master;
  const items = model.weights.length;
  const prices = Float64Array.from(bounds, (_, item) => Math.floor(Math.max(0, simplex.prices[item]!) * SCALE));
  const goods: Goods = { weights: model.weights, prices, bounds };
  const above = model.bins.map((_, k) =>
    k === 0 ? SCALE : Math.ceil(Math.max(0, simplex.prices[items + k - 1]!) * SCALE),
  );
  const capacities = model.bins.map((bin) => bin.capacity);
  const tableSteps = 2 * items * Math.max(...capacities);
  const answers =
    model.bins.length * 50_000 > tableSteps
      ? tableKnapsack(goods, capacities, above, work)
      : capacities.map((capacity, k) => knapsack(goods, capacity, above[k]!, work));
  return { prices, answers };
}

/** More fills of the main bin that are worth more than it, each without the items of those before. */
function addDisjoint(master: Master, prices: Float64Array, bounds: Int32Array, work: Work): void {
  const { weights, bins } = master.model;
  const left = Int32Array.from(bounds);
  const most = Math.min(MOST_DISJOINT, weights.length / ROWS_EACH);
  for (let n = 0; n < most; n++) {
    const best = knapsack({ weights, prices, bounds: left }, bins[0]!.capacity, SCALE, work).choices.at(-1);
    if (!best) return;
    master.addFill({ bin: 0, items: best.items, copies: best.copies });
    for (const item of best.items) left[item] = 0;
  }
}
