/** The part of the check that is about the bound; like verify.ts it shares no code with the solver. */
import type { CutPlan } from "./plan";
import type { CutRequest } from "../model/request";
import { excludeSticks } from "./verifyBranches";
import type { Branch } from "../model/packing";
import {
  areSound,
  canSatisfy,
  kindsOf,
  mostWorth,
  wantedIn,
  worthByWeight,
  worthOfAll,
  type Claim,
  type Kind,
  type Wanted,
} from "./verifyCounts";
import { checkPairs } from "./verifyPairs";

/**
 * The bound. If no stick of kind k can hold pieces priced more than `worth[k]` together, then any plan with `n[k]` sticks
 * of each kind has Σ worth[k]·n[k] ≥ the price of all pieces. So it is enough to see that no numbers of sticks cheaper
 * than the bound satisfy every price list at once.
 */
export function checkBound(request: CutRequest, plan: CutPlan): string[] {
  const wanted = wantedIn(request);
  const { pairs, prices, branches } = plan.certificate;
  if (!areSound(prices, wanted)) return ["the certificate does not price every length in whole numbers"];
  const kinds = kindsOf(plan, wanted, request.kerf ?? 0);
  // A missing stick counts more than all others together: first as few of them as possible, then the cost.
  const pieces = wanted.demands.reduce((sum, demand) => sum + demand, 0);
  const missing = Math.max(...kinds.map((kind) => kind.cost)) * pieces + 1;
  kinds.push({ room: Math.max(...kinds.map((kind) => kind.room)), cost: missing, limit: Infinity });
  const settled = checkPairs(wanted, kinds, pairs);
  if (settled === undefined) return ["the certificate takes out pairs that need not be in a best plan"];
  if (branches) return checkBranches(plan, kinds, wanted, settled, branches);
  const budget = plan.missingSticks * missing + plan.bound - settled - 1;
  const claim = (list: readonly number[], worths: number[]): Claim => {
    return { worths, need: worthOfAll(list, wanted.demands) };
  };
  // Often the weight alone tells it; tables are large where lengths are many.
  const rough = prices.map((list) =>
    claim(
      list,
      kinds.map(({ room }) => worthByWeight(wanted, list, room)),
    ),
  );
  if (!canSatisfy(kinds, rough, budget)) return [];
  const claims = prices.map((list) => {
    const table = mostWorth(wanted, list, Math.max(...kinds.map((kind) => kind.room)));
    return claim(
      list,
      kinds.map(({ room }) => table[room]!),
    );
  });
  return canSatisfy(kinds, claims, budget) ? [`the certificate does not prove the bound ${plan.bound}`] : [];
}

/** Where one kind of stick is as good as any other: the branches exclude all numbers of sticks that cost less than the bound. */
function checkBranches(
  plan: CutPlan,
  kinds: readonly Kind[],
  { weights, demands }: Wanted,
  settled: number,
  branches: Branch,
): string[] {
  const main = kinds.find((kind) => kind.limit === Infinity);
  const unjustified = ["the certificate counts cases where there are several kinds of stick"];
  if (!main || plan.missingSticks > 0) return unjustified;
  if (kinds.some((kind) => kind.room > main.room || kind.cost < main.cost)) return unjustified;
  const fewer = Math.ceil((plan.bound - settled) / main.cost) - 1;
  const pieces = weights.flatMap((weight, k) => new Array<number>(demands[k]!).fill(weight));
  if (excludeSticks(pieces, main.room, fewer, branches)) return [];
  return [`the cases of the certificate do not prove the bound ${plan.bound}`];
}
