/** The least cost of tiny instances by trying everything: a second route that shares nothing with the solver. */
import type { CutRequest } from "../../src/cutting/model/request";

/** Every piece by itself, and how many sticks of each kind there may be. */
function oneByOne(request: CutRequest) {
  const pieces = request.pieces.flatMap(({ length, quantity }) => new Array<number>(quantity).fill(length));
  const stocks = request.stocks.map(({ length, quantity, cost }) => ({
    length,
    left: quantity ?? pieces.length,
    cost: cost ?? (quantity === undefined ? 1 : 0),
  }));
  return { pieces, stocks };
}

/** Least cost of sticks that hold all pieces; Infinity when the stock does not suffice. At most about nine pieces. */
export function leastCost(request: CutRequest): number {
  const { kerf = 0 } = request;
  const { pieces, stocks } = oneByOne(request);
  let best = Infinity;
  // Each stick so far: its length, and the pieces on it laid end to end with a cut between any two.
  const sticks: { length: number; used: number }[] = [];
  const place = (next: number, cost: number): void => {
    if (cost >= best) return;
    if (next === pieces.length) {
      best = cost;
      return;
    }
    const piece = pieces[next]!;
    for (const stick of sticks) {
      if (stick.used + kerf + piece > stick.length) continue;
      stick.used += kerf + piece;
      place(next + 1, cost);
      stick.used -= kerf + piece;
    }
    for (const stock of stocks) {
      if (stock.left === 0 || stock.length < piece) continue;
      stock.left--;
      sticks.push({ length: stock.length, used: piece });
      place(next + 1, cost + stock.cost);
      sticks.pop();
      stock.left++;
    }
  };
  place(0, 0);
  return best;
}

/**
 * Longest rest on any stick, bought or on hand, of any plan for `cost` that takes at most `free` sticks at no cost; by
 * trying everything. At most about eight pieces.
 */
export function longestRest(request: CutRequest, cost: number, free: number): number {
  const { kerf = 0 } = request;
  const { pieces, stocks } = oneByOne(request);
  /** What is left of each stick, cut by cut; a cut may end with the stick. */
  const sticks: { left: number }[] = [];
  let best = 0;
  const place = (next: number, money: number, freeLeft: number): void => {
    if (money < 0 || freeLeft < 0) return;
    if (next === pieces.length) {
      best = Math.max(best, ...sticks.map(({ left }) => left));
      return;
    }
    const piece = pieces[next]!;
    for (const stick of sticks) {
      if (stick.left < piece) continue;
      const before = stick.left;
      stick.left = Math.max(0, before - piece - kerf);
      place(next + 1, money, freeLeft);
      stick.left = before;
    }
    for (const stock of stocks) {
      if (stock.left === 0 || stock.length < piece) continue;
      stock.left--;
      sticks.push({ left: Math.max(0, stock.length - piece - kerf) });
      place(next + 1, money - stock.cost, freeLeft - (stock.cost === 0 ? 1 : 0));
      sticks.pop();
      stock.left++;
    }
  };
  place(0, cost, free);
  return best;
}
