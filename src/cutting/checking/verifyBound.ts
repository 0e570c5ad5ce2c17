/** The part of the check that is about the bound; like verify.ts it shares no code with the solver. */
import type { CutPlan } from "./plan";
import type { CutRequest } from "../model/request";
import { checkPairs, type Kind } from "./verifyPairs";

/**
 * The bound. If no stick of kind k can hold pieces priced more than `worth[k]` together, then any plan with `n[k]` sticks
 * of each kind has Σ worth[k]·n[k] ≥ the price of all pieces. So it is enough to see that no numbers of sticks cheaper
 * than the bound satisfy every price list at once.
 */
export function checkBound(request: CutRequest, plan: CutPlan): string[] {
  const lengths = [...new Set(request.pieces.filter((piece) => piece.quantity > 0).map((piece) => piece.length))];
  lengths.sort((a, b) => b - a);
  const demands = lengths.map((length) =>
    request.pieces.reduce((sum, piece) => (piece.length === length ? sum + piece.quantity : sum), 0),
  );
  const lists = plan.certificate.prices;
  const priceOf = (list: readonly number[]): number => list.reduce((sum, price, k) => sum + price * demands[k]!, 0);
  // Whole numbers whose sums are exact, too.
  const sound = lists.every(
    (list) =>
      list.length === lengths.length &&
      list.every((price) => Number.isSafeInteger(price) && price >= 0) &&
      Number.isSafeInteger(priceOf(list)),
  );
  if (!sound) return ["the certificate does not price every length in whole numbers"];
  const kerf = request.kerf ?? 0;
  // No plan takes more sticks than there are pieces.
  const pieces = demands.reduce((sum, demand) => sum + demand, 0);
  const kinds: Kind[] = plan.stocks.map((stock) => ({
    room: stock.length + kerf,
    cost: stock.cost,
    limit: stock.quantity === Infinity ? Infinity : Math.min(stock.quantity, pieces),
  }));
  // A missing stick counts more than all others together: first as few of them as possible, then the cost.
  const dearest = Math.max(...kinds.map((kind) => kind.cost));
  const missing = dearest * pieces + 1;
  kinds.push({ room: Math.max(...kinds.map((kind) => kind.room)), cost: missing, limit: Infinity });
  const weights = lengths.map((length) => length + kerf);
  const settled = checkPairs(weights, lengths, demands, kinds, plan.certificate.pairs);
  if (settled === undefined) return ["the certificate takes out pairs that need not be in a best plan"];
  const claims = lists.map((list) => {
    const table = mostWorth(weights, demands, list, Math.max(...kinds.map((kind) => kind.room)));
    return {
      worths: kinds.map((kind) => table[kind.room]!),
      need: priceOf(list),
    };
  });
  return canBeCheaper(kinds, claims, plan.missingSticks * missing + plan.bound - settled - 1)
    ? [`the certificate does not prove the bound ${plan.bound}`]
    : [];
}

interface Claim {
  worths: number[];
  need: number;
}

/** Greatest total price of pieces that fit each room from 0 to `room`. */
function mostWorth(
  weights: readonly number[],
  demands: readonly number[],
  prices: readonly number[],
  room: number,
): Float64Array {
  const most = new Float64Array(room + 1);
  weights.forEach((weight, k) => {
    let left = Math.min(demands[k]!, Math.floor(room / weight));
    for (let some = 1; left > 0; some *= 2) {
      const copies = Math.min(some, left);
      const size = copies * weight;
      const worth = copies * prices[k]!;
      for (let at = room; at >= size; at--) most[at] = Math.max(most[at]!, most[at - size]! + worth);
      left -= copies;
    }
  });
  return most;
}

/** True when whole numbers of sticks for at most `budget` might satisfy every claim. */
function canBeCheaper(kinds: readonly Kind[], claims: readonly Claim[], budget: number): boolean {
  if (budget < 0) return false;
  const free = kinds.map((_, k) => k).filter((k) => kinds[k]!.cost === 0);
  const priced = kinds.map((_, k) => k).filter((k) => kinds[k]!.cost > 0);
  const worthOf = (claim: Claim, k: number, count: number): number =>
    claim.worths[k] === 0 ? 0 : count * claim.worths[k]!;
  const visit = (depth: number, money: number, needs: readonly number[]): boolean => {
    if (needs.every((need) => need <= 0)) return true;
    const rest = priced.slice(depth);
    const outOfReach = claims.some((claim, c) => {
      const rate = Math.max(0, ...rest.map((k) => claim.worths[k]! / kinds[k]!.cost));
      return needs[c]! > money * rate * (1 + 1e-12) + 1e-6;
    });
    if (outOfReach) return false;
    const k = priced[depth]!;
    const { cost, limit } = kinds[k]!;
    const most = Math.min(limit, Math.floor(money / cost));
    for (let count = rest.length === 1 ? most : 0; count <= most; count++) {
      const left = needs.map((need, c) => need - worthOf(claims[c]!, k, count));
      if (visit(depth + 1, money - count * cost, left)) return true;
    }
    return false;
  };
  const needs = claims.map(
    (claim) => claim.need - free.reduce((sum, k) => sum + worthOf(claim, k, kinds[k]!.limit), 0),
  );
  return visit(0, budget, needs);
}
