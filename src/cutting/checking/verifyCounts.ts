/** What the arguments for the bound and for the longest rest have in common; like verify.ts it shares no code with the solver. */
import type { CutPlan } from "./plan";
import type { CutRequest } from "../model/request";

/** A kind of stick in the check: room for weights of piece + kerf. */
export interface Kind {
  room: number;
  cost: number;
  limit: number;
}

/** The pieces of a request by length, longest first; `weights` are lengths with a cut. */
export interface Wanted {
  lengths: number[];
  demands: number[];
  weights: number[];
}

export function wantedIn({ pieces, kerf = 0 }: CutRequest): Wanted {
  const demand = new Map<number, number>();
  for (const { length, quantity } of pieces) {
    if (quantity > 0) demand.set(length, (demand.get(length) ?? 0) + quantity);
  }
  const lengths = [...demand.keys()].sort((a, b) => b - a);
  return {
    lengths,
    demands: lengths.map((length) => demand.get(length)!),
    weights: lengths.map((length) => length + kerf),
  };
}

/** The kinds of stick of a plan; no plan takes more sticks than there are pieces. */
export function kindsOf(plan: CutPlan, { demands }: Wanted, kerf: number): Kind[] {
  const pieces = demands.reduce((sum, demand) => sum + demand, 0);
  return plan.stocks.map((stock) => ({
    room: stock.length + kerf,
    cost: stock.cost,
    limit: stock.quantity === Infinity ? Infinity : Math.min(stock.quantity, pieces),
  }));
}

/** Whole numbers, one a length, whose sums are exact, too. */
export function areSound(lists: readonly (readonly number[])[], { lengths, demands }: Wanted): boolean {
  return lists.every(
    (list) =>
      list.length === lengths.length &&
      list.every((price) => Number.isSafeInteger(price) && price >= 0) &&
      Number.isSafeInteger(worthOfAll(list, demands)),
  );
}

export const worthOfAll = (list: readonly number[], demands: readonly number[]): number =>
  list.reduce((sum, price, k) => sum + price * demands[k]!, 0);

/** What one price list says: sticks of each kind hold at most `worths`; together they must hold `need`. */
export interface Claim {
  worths: number[];
  need: number;
}

/** No pieces in a room are worth more than the best of them by weight would be, could it be had in fractions. */
export function worthByWeight({ weights }: Wanted, prices: readonly number[], room: number): number {
  const rate = prices.reduce((most, price, k) => Math.max(most, price / weights[k]!), 0);
  return Math.floor(room * rate * (1 + 1e-12));
}

/** Greatest total price of pieces that fit each room from 0 to `room`. */
export function mostWorth({ weights, demands }: Wanted, prices: readonly number[], room: number): Float64Array {
  const most = new Float64Array(room + 1);
  weights.forEach((weight, k) => {
    let left = prices[k]! > 0 ? Math.min(demands[k]!, Math.floor(room / weight)) : 0;
    for (let some = 1; left > 0; some *= 2) {
      const copies = Math.min(some, left);
      const size = copies * weight;
      const worth = copies * prices[k]!;
      for (let at = room; at >= size; at--) {
        const other = most[at - size]! + worth;
        if (other > most[at]!) most[at] = other;
      }
      left -= copies;
    }
  });
  return most;
}

/**
 * True when whole numbers of sticks for at most `budget` might satisfy every claim.
 *
 * @param mostFree sticks at no cost that may be taken, of all kinds together
 */
export function canSatisfy(
  kinds: readonly Kind[],
  claims: readonly Claim[],
  budget: number,
  mostFree = Infinity,
): boolean {
  if (budget < 0) return false;
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
    // The other kinds, had in fractions, serve each claim only where a linear inequality in the count holds.
    let [from, to] = [rest.length === 1 ? most : 0, most];
    claims.forEach((claim, c) => {
      const rate = Math.max(0, ...rest.slice(1).map((other) => claim.worths[other]! / kinds[other]!.cost));
      const each = rate * cost - claim.worths[k]!;
      const spare = money * rate * (1 + 1e-12) + 1e-6 - needs[c]!;
      // Below this the difference may be rounding of the machine; above, a count of 100,000 is off by less than one.
      const tiny = 1e-9 * (rate * cost + claim.worths[k]!);
      if (each > tiny) to = Math.min(to, Math.floor(spare / each) + 1);
      else if (each < -tiny) from = Math.max(from, Math.ceil(spare / each) - 1);
    });
    for (let count = from; count <= to; count++) {
      const left = needs.map((need, c) => need - worthOf(claims[c]!, k, count));
      if (visit(depth + 1, money - count * cost, left)) return true;
    }
    return false;
  };
  return visit(
    0,
    budget,
    claims.map((claim) => claim.need - freeWorth(kinds, claim, mostFree)),
  );
}

/** What sticks at no cost can be worth by a claim, the best of them taken. */
function freeWorth(kinds: readonly Kind[], { worths }: Claim, mostFree: number): number {
  let left = mostFree;
  let worth = 0;
  const free = kinds.map((_, k) => k).filter((k) => kinds[k]!.cost === 0 && worths[k]! > 0);
  for (const k of free.sort((a, b) => worths[b]! - worths[a]!)) {
    const count = Math.min(left, kinds[k]!.limit);
    if (count === Infinity) return Infinity;
    worth += count * worths[k]!;
    left -= count;
  }
  return worth;
}
