import type { Cut } from "./counts";
import { worthTable } from "./knapsackTable";
import { binCounts, fillWeight } from "./model";
import type { FillCount, Model } from "./model";
import { reach } from "./reach";
import type { Work } from "./work";

const TRIES = 3;

export interface RemnantSearch {
  plan: FillCount[];
  /** True when no plan with the same bins leaves a larger remnant on its largest bought bin. */
  proven: boolean;
}

/**
 * Looks for a plan with the same bins that leaves one bought bin as empty as it can be: one bin is replaced by a small
 * one, and the smallest that will do is sought by bisection. Whole prices prove from below how small it can be at all.
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
  const others = counts.map((count, k) => (k === bin ? count - 1 : count));
  const lightest = (plan: readonly FillCount[]): number =>
    Math.min(...plan.filter(({ fill }) => fill.bin === bin).map(({ fill }) => fillWeight(model, fill)));
  let plan = [...found];
  let enough = lightest(plan);
  let least = Math.max(...cuts.map((cut) => leastRoom(model, cut, others, bin, work)));
  let proven = true;
  let probe = least;
  while (least < enough && !work.over()) {
    const small = { capacity: probe, cost: 0, limit: 1 };
    const extended: Model = { ...model, bins: [...model.bins, small] };
    const answer = yield* reach(extended, [...others, 1], plan, TRIES, seed, work);
    if (answer.plan) {
      // The small bin, last in the extended model, is a part of one of the others.
      plan = answer.plan.map(({ fill, count }) => ({
        fill: fill.bin === model.bins.length ? { ...fill, bin } : fill,
        count,
      }));
      enough = Math.min(probe, lightest(plan));
    } else {
      const bound = answer.cut ? leastRoom(model, answer.cut, others, bin, work) : 0;
      if (!answer.impossible) proven = false;
      least = Math.max(bound, probe + 1);
    }
    probe = answer.impossible ? least : Math.floor((least + enough) / 2);
  }
  return { plan, proven: proven && least >= enough };
}

function largestBought(model: Model, counts: readonly number[]): number | undefined {
  const bought = counts.map((_, k) => k).filter((k) => counts[k]! > 0 && model.bins[k]!.cost > 0);
  return bought.sort((a, b) => model.bins[b]!.capacity - model.bins[a]!.capacity || a - b)[0];
}

/** The smallest room that, beside the other bins, can be worth what the pieces still lack at these prices. */
function leastRoom(model: Model, cut: Cut, others: readonly number[], bin: number, work: Work): number {
  const { weights, demands } = model;
  const need = others.reduce((sum, count, k) => sum - count * cut.worths[k]!, cut.demand);
  if (need <= 0) return 1;
  const capacity = model.bins[bin]!.capacity;
  const { best } = worthTable({ weights, prices: cut.prices, bounds: demands }, capacity, work);
  const room = best.findIndex((worth) => worth >= need);
  return room < 0 ? capacity : room;
}
