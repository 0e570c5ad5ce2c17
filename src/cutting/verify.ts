/**
 * Checks a plan against its request without any of the solver's code: its own counting, its own knapsack, its own
 * argument for the bound. Nothing is shown that this does not accept.
 */
import type { CutPlan } from "./plan";
import type { CutRequest } from "./request";

/** A kind of stick in the check: room for weights of piece + allowance + kerf. */
interface Kind {
  room: number;
  cost: number;
  limit: number;
}

/** What is wrong with the plan, in words; empty when nothing is. */
export function verifyPlan(request: CutRequest, plan: CutPlan): string[] {
  const patterns = [...checkStocks(request, plan), ...checkPatterns(request, plan)];
  return patterns.length > 0 ? patterns : [...checkTotals(request, plan), ...checkBound(request, plan)];
}

const extraOf = ({ allowance = 0, kerf = 0 }: CutRequest): number => allowance + kerf;

/** The plan's stocks are the request's, no more and no longer. */
function checkStocks(request: CutRequest, plan: CutPlan): string[] {
  const count = (rows: readonly { length: number; quantity?: number; cost?: number }[]): Map<string, number> => {
    const sums = new Map<string, number>();
    for (const { length, quantity = Infinity, cost } of rows) {
      const key = `${length} at ${cost ?? (quantity === Infinity ? 1 : 0)} ${quantity === Infinity ? "bought" : "on hand"}`;
      if (quantity > 0) sums.set(key, (sums.get(key) ?? 0) + quantity);
    }
    return sums;
  };
  const asked = count(request.stocks);
  const listed = count(plan.stocks);
  const same = asked.size === listed.size && [...asked].every(([key, quantity]) => listed.get(key) === quantity);
  return same ? [] : ["the plan's stocks are not the request's"];
}

/** Every stick holds its pieces, no stock is used more often than it is there, every piece is cut exactly once. */
function checkPatterns(request: CutRequest, plan: CutPlan): string[] {
  const problems: string[] = [];
  const kerf = request.kerf ?? 0;
  const allowance = request.allowance ?? 0;
  const used = plan.stocks.map(() => 0);
  const made = new Map<number, number>();
  const add = (length: number, count: number): void => void made.set(length, (made.get(length) ?? 0) + count);
  plan.patterns.forEach(({ stock, count, cuts, remnant }, line) => {
    const stick = plan.stocks[stock];
    const whole =
      Number.isInteger(count) && count > 0 && cuts.every((cut) => Number.isInteger(cut.count) && cut.count > 0);
    if (!stick || !whole) return void problems.push(`pattern ${line + 1} is not in whole sticks and pieces`);
    used[stock]! += count;
    let pieces = 0;
    let length = 0;
    for (const cut of cuts) {
      pieces += cut.count;
      length += cut.count * (cut.length + allowance);
      add(cut.length, count * cut.count);
    }
    const rest = stick.length - length - (pieces - 1) * kerf;
    if (rest < 0) problems.push(`pattern ${line + 1} is ${-rest} steps longer than its stick`);
    if (remnant !== Math.max(0, rest - kerf)) problems.push(`pattern ${line + 1} states a wrong remnant`);
  });
  plan.stocks.forEach((stick, k) => {
    if (used[k]! > stick.quantity)
      problems.push(`stock ${k + 1} is used ${used[k]} times; there are ${stick.quantity}`);
    if (used[k] !== plan.used[k]) problems.push(`stock ${k + 1} states a wrong number of sticks`);
  });
  for (const { length, count } of plan.missing) add(length, count);
  for (const { length, quantity } of request.pieces) add(length, -quantity);
  for (const [length, count] of made)
    if (count !== 0) problems.push(`length ${length} is cut ${count} times too often`);
  return problems;
}

/** The sums follow from the patterns. */
function checkTotals(request: CutRequest, plan: CutPlan): string[] {
  const problems: string[] = [];
  const check = (name: string, stated: number, right: number): void => {
    if (stated !== right) problems.push(`${name} is stated as ${stated}, should be ${right}`);
  };
  const sum = (value: (stock: CutPlan["stocks"][number]) => number): number =>
    plan.stocks.reduce((total, stock, k) => total + (plan.used[k] ?? 0) * value(stock), 0);
  check(
    "cost",
    plan.cost,
    sum((stock) => stock.cost),
  );
  check(
    "sticks",
    plan.sticks,
    sum((stock) => (stock.quantity === Infinity ? 1 : 0)),
  );
  check(
    "onHand",
    plan.onHand,
    sum((stock) => (stock.quantity === Infinity ? 0 : 1)),
  );
  check(
    "stockLength",
    plan.stockLength,
    sum((stock) => stock.length),
  );
  const kept = plan.patterns
    .flatMap(({ count, remnant }) => new Array<number>(count).fill(remnant))
    .filter((remnant) => remnant > 0 && remnant >= (request.minimumOffcut ?? 0))
    .sort((a, b) => b - a);
  check("longestRemnant", plan.longestRemnant, kept[0] ?? 0);
  if (kept.join() !== plan.remnants.join()) problems.push("the remnants do not follow from the patterns");
  const pieces = plan.patterns.reduce(
    (total, { count, cuts }) =>
      total + count * cuts.reduce((part, cut) => part + cut.count * (cut.length + (request.allowance ?? 0)), 0),
    0,
  );
  check("pieceLength", plan.pieceLength, pieces);
  check("waste", plan.waste, plan.stockLength - pieces - kept.reduce((total, remnant) => total + remnant, 0));
  check("wasteShare", plan.wasteShare, plan.stockLength > 0 ? plan.waste / plan.stockLength : 0);
  check("proven", Number(plan.proven), Number(plan.proven && plan.cost === plan.bound));
  return problems;
}

/**
 * The bound. If no stick of kind k can hold pieces priced more than `worth[k]` together, then any plan with `n[k]` sticks
 * of each kind has Σ worth[k]·n[k] ≥ the price of all pieces. So it is enough to see that no numbers of sticks cheaper
 * than the bound satisfy every price list at once.
 */
function checkBound(request: CutRequest, plan: CutPlan): string[] {
  const lengths = [...new Set(request.pieces.filter((piece) => piece.quantity > 0).map((piece) => piece.length))];
  lengths.sort((a, b) => b - a);
  const demands = lengths.map((length) =>
    request.pieces.reduce((sum, piece) => (piece.length === length ? sum + piece.quantity : sum), 0),
  );
  const lists = plan.certificate.prices;
  const sound = lists.every(
    (list) => list.length === lengths.length && list.every((price) => Number.isSafeInteger(price) && price >= 0),
  );
  if (!sound) return ["the certificate does not price every length in whole numbers"];
  const kerf = request.kerf ?? 0;
  const kinds: Kind[] = plan.stocks.map((stock) => ({
    room: stock.length + kerf,
    cost: stock.cost,
    limit: stock.quantity,
  }));
  // A missing stick counts more than all others together: first as few of them as possible, then the cost.
  const dearest = Math.max(...kinds.map((kind) => kind.cost));
  const missing = dearest * demands.reduce((sum, demand) => sum + demand, 0) + 1;
  kinds.push({ room: Math.max(...kinds.map((kind) => kind.room)), cost: missing, limit: Infinity });
  const weights = lengths.map((length) => length + extraOf(request));
  const claims = lists.map((list) => {
    const table = mostWorth(weights, demands, list, Math.max(...kinds.map((kind) => kind.room)));
    return {
      worths: kinds.map((kind) => table[kind.room]!),
      need: list.reduce((sum, price, k) => sum + price * demands[k]!, 0),
    };
  });
  return canBeCheaper(kinds, claims, plan.missingSticks * missing + plan.bound - 1)
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
