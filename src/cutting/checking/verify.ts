/**
 * Checks a plan against its request without any of the solver's code: its own counting, its own knapsack, its own
 * argument for the bound. Nothing is shown that this does not accept.
 */
import type { CutPlan, Cuts } from "./plan";
import type { CutRequest } from "../model/request";
import { checkBound } from "./verifyBound";
import { checkRest } from "./verifyRest";

/** What is wrong with the plan, in words; empty when nothing is. */
export function verifyPlan(request: CutRequest, plan: CutPlan): string[] {
  const patterns = [...checkStocks(request, plan), ...checkPatterns(request, plan), ...checkMissing(request, plan)];
  if (patterns.length > 0) return patterns;
  return [...checkTotals(request, plan), ...checkBound(request, plan), ...checkRest(request, plan)];
}

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
  const used = plan.stocks.map(() => 0);
  const made = new Map<number, number>();
  const add = (length: number, count: number): void => void made.set(length, (made.get(length) ?? 0) + count);
  plan.patterns.forEach(({ stock, count, cuts, remnant }, line) => {
    const stick = plan.stocks[stock];
    if (!stick || !isWhole(count, cuts))
      return void problems.push(`pattern ${line + 1} is not in whole sticks and pieces`);
    used[stock]! += count;
    for (const cut of cuts) add(cut.length, count * cut.count);
    const rest = stick.length - lengthOf(cuts, request);
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

/** What has no stick would be cut from as many more of the longest sticks as the plan says. */
function checkMissing(request: CutRequest, plan: CutPlan): string[] {
  const problems: string[] = [];
  const longest = Math.max(...plan.stocks.map((stick) => stick.length));
  const left = new Map<number, number>();
  const add = (length: number, count: number): void => void left.set(length, (left.get(length) ?? 0) + count);
  let sticks = 0;
  plan.missingPatterns.forEach(({ count, cuts }, line) => {
    if (!isWhole(count, cuts) || lengthOf(cuts, request) > longest)
      problems.push(`missing pattern ${line + 1} does not fit the longest stick in whole pieces`);
    sticks += count;
    for (const cut of cuts) add(cut.length, count * cut.count);
  });
  for (const { length, count } of plan.missing) add(length, -count);
  if ([...left.values()].some((count) => count !== 0))
    problems.push("the missing patterns do not hold what is missing");
  if (sticks !== plan.missingSticks)
    problems.push(`missingSticks is stated as ${plan.missingSticks}, should be ${sticks}`);
  return problems;
}

const isWhole = (count: number, cuts: readonly Cuts[]): boolean =>
  [count, ...cuts.map((cut) => cut.count)].every((some) => Number.isInteger(some) && some > 0);

/** Length of a stick that these pieces are cut from, with a saw cut between any two. */
function lengthOf(cuts: readonly Cuts[], { kerf = 0 }: CutRequest): number {
  const pieces = cuts.reduce((sum, cut) => sum + cut.count, 0);
  return cuts.reduce((sum, cut) => sum + cut.count * cut.length, 0) + (pieces - 1) * kerf;
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
    (total, { count, cuts }) => total + count * cuts.reduce((part, cut) => part + cut.count * cut.length, 0),
    0,
  );
  check("pieceLength", plan.pieceLength, pieces);
  check("waste", plan.waste, plan.stockLength - pieces - kept.reduce((total, remnant) => total + remnant, 0));
  check("wasteShare", plan.wasteShare, plan.stockLength > 0 ? plan.waste / plan.stockLength : 0);
  check("proven", Number(plan.proven), Number(plan.proven && plan.cost === plan.bound));
  return problems;
}
