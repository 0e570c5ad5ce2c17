import { leastCounts } from "../model/counts";
import type { BinCounts } from "../model/counts";
import { generate } from "../linear/generate";
import type { Master } from "../linear/master";
import { quiet } from "../model/packing";
import type { Packing, Standing } from "../model/packing";
import type { Work } from "../model/work";

/**
 * Solves the linear program for these counts; when they cannot do, adds the cut and goes on with the next counts. Answers
 * the counts that may do; undefined when none cheaper than the best plan may, or the work is used up.
 *
 * @param thorough go on to the optimum of the linear program
 * @param tried counts that were tried without success
 */
export function* prove(
  master: Master,
  first: BinCounts,
  thorough: boolean,
  tried: ReadonlySet<string>,
  best: Packing,
  work: Work,
): Generator<Standing, BinCounts | undefined> {
  const { model, simplex } = master;
  const { cuts } = best;
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
    best.bound = Math.max(best.bound, leastCounts(model.bins, cuts, work)!.bound);
    aim = leastCounts(model.bins, cuts, work, tried);
    if (!aim || aim.cost >= best.cost) return undefined;
  }
}
