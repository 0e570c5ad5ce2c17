/** The part of the check that is about the longest rest; like verify.ts it shares no code with the solver. */
import type { CutPlan } from "./plan";
import type { CutRequest } from "../model/request";
import { areSound, canSatisfy, kindsOf, mostWorth, wantedIn, worthOfAll } from "./verifyCounts";
import { checkPairs } from "./verifyPairs";

/**
 * The longest rest. A plan with a longer one has a stick of some kind that holds pieces only as far as leaves more than the
 * longest rest stated. So it is enough to see, for each kind, that beside one such stick no numbers of sticks for what the
 * plan costs, and no more at no cost than the plan takes, satisfy every price list at once.
 */
export function checkRest(request: CutRequest, plan: CutPlan): string[] {
  if (!plan.longestProven) return [];
  if (!plan.proven || plan.missingSticks > 0) return ["the longest rest is said to be proven where the cost is not"];
  const unproven = ["the certificate does not prove the longest rest"];
  const wanted = wantedIn(request);
  const { pairs, prices } = plan.certificate.rest;
  if (!areSound(prices, wanted)) return ["the certificate does not price every length in whole numbers"];
  const kinds = kindsOf(plan, wanted, request.kerf ?? 0);
  const longest = Math.max(0, ...plan.patterns.map(({ remnant }) => remnant));
  /** By kind: what pieces may take, cuts and all, of a stick with a longer rest. */
  const rooms = plan.stocks.map((stock) => stock.length - longest - 1);
  const settled = checkPairs(wanted, kinds, pairs, Math.max(...rooms));
  if (settled === undefined) return ["the certificate takes out pairs that need not be beside a longer rest"];
  const claims = prices.map((list) => {
    const table = mostWorth(wanted, list, Math.max(...kinds.map((kind) => kind.room)));
    return { table, worths: kinds.map((kind) => table[kind.room]!), need: worthOfAll(list, wanted.demands) };
  });
  const lightest = Math.min(...wanted.weights.filter((_, k) => wanted.demands[k]! > 0));
  const free = kinds.reduce((sum, { cost }, k) => (cost === 0 ? sum + plan.used[k]! : sum), 0);
  const possible = kinds.some(({ cost }, kind) => {
    const room = rooms[kind]!;
    const freeBeside = free - (cost === 0 ? 1 : 0);
    if (room < lightest || freeBeside < 0) return false;
    const beside = kinds.map((other, k) => (k === kind ? { ...other, limit: other.limit - 1 } : other));
    const needs = claims.map(({ table, worths, need }) => ({ worths, need: need - table[room]! }));
    return canSatisfy(beside, needs, plan.cost - settled - cost, freeBeside);
  });
  return possible ? unproven : [];
}
