import { planCost, restOf } from "../model/model";
import type { Model } from "../model/model";
import { firstFit } from "../greedy/firstFit";
import { takePairs } from "./pairs";
import type { Packing, Standing } from "../model/packing";
import { Search } from "./search";
import type { Work } from "../model/work";

/** Packs everything at the least cost it can find and proves how low the cost can be at all. */
export function* pack(model: Model, seed: number, work: Work): Generator<Standing, Packing> {
  if (model.bins.length > 1) return yield* new Search(model, seed, work).run();
  const { pairs, left } = takePairs(model, work);
  const rest = restOf(model, left);
  const settled = planCost(model, pairs);
  const greedy = firstFit(model, work);
  const whole = (part: Packing): Packing => {
    const plan = [...pairs, ...rest.outward(part.plan)];
    const cost = settled + part.cost;
    const best = cost <= planCost(model, greedy) ? { plan, cost } : { plan: greedy, cost: planCost(model, greedy) };
    return {
      ...best,
      bound: settled + part.bound,
      pairs,
      branches: part.branches,
      cuts: part.cuts.map((cut) => ({ ...cut, prices: rest.spread(cut.prices) })),
    };
  };
  const steps = new Search(rest.model, seed, work).run();
  for (;;) {
    const step = steps.next();
    if (step.done) return whole(step.value);
    yield { cost: settled + step.value.cost, bound: settled + step.value.bound };
  }
}
