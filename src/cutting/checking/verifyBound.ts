/** The part of the check that is about the bound; like verify.ts it shares no code with the solver. */
import type { CutPlan } from "./plan";
import type { CutRequest } from "../model/request";
import { areSound, canSatisfy, kindsOf, mostWorth, wantedIn, worthOfAll } from "./verifyCounts";
import { checkPairs } from "./verifyPairs";

/**
 * The bound. If no stick of kind k can hold pieces priced more than `worth[k]` together, then any plan with `n[k]` sticks
 * of each kind has Σ worth[k]·n[k] ≥ the price of all pieces. So it is enough to see that no numbers of sticks cheaper
 * than the bound satisfy every price list at once.
 */
export function checkBound(request: CutRequest, plan: CutPlan): string[] {
  const wanted = wantedIn(request);
  const { pairs, prices } = plan.certificate;
  if (!areSound(prices, wanted)) return ["the certificate does not price every length in whole numbers"];
  const kinds = kindsOf(plan, wanted, request.kerf ?? 0);
  // A missing stick counts more than all others together: first as few of them as possible, then the cost.
  const pieces = wanted.demands.reduce((sum, demand) => sum + demand, 0);
  const missing = Math.max(...kinds.map((kind) => kind.cost)) * pieces + 1;
  kinds.push({ room: Math.max(...kinds.map((kind) => kind.room)), cost: missing, limit: Infinity });
  const settled = checkPairs(wanted, kinds, pairs);
  if (settled === undefined) return ["the certificate takes out pairs that need not be in a best plan"];
  const claims = prices.map((list) => {
    const table = mostWorth(wanted, list, Math.max(...kinds.map((kind) => kind.room)));
    return { worths: kinds.map((kind) => table[kind.room]!), need: worthOfAll(list, wanted.demands) };
  });
  return canSatisfy(kinds, claims, plan.missingSticks * missing + plan.bound - settled - 1)
    ? [`the certificate does not prove the bound ${plan.bound}`]
    : [];
}
