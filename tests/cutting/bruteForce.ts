/** The least cost of tiny instances by trying everything: a second route that shares nothing with the solver. */
import type { CutRequest } from "../../src/cutting/model/request";

/** Least cost of sticks that hold all pieces; Infinity when the stock does not suffice. At most about nine pieces. */
export function leastCost(request: CutRequest): number {
  const { kerf = 0 } = request;
  const pieces = request.pieces.flatMap(({ length, quantity }) => new Array<number>(quantity).fill(length));
  const stocks = request.stocks.map(({ length, quantity, cost }) => ({
    length,
    left: quantity ?? pieces.length,
    cost: cost ?? (quantity === undefined ? 1 : 0),
  }));
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

/** Longest remnant on a bought stick of any plan with `sticks` sticks of one length, by trying everything. */
export function longestRemnant(request: CutRequest, sticks: number): number {
  const { kerf = 0 } = request;
  const pieces = request.pieces.flatMap(({ length, quantity }) => new Array<number>(quantity).fill(length));
  const length = request.stocks[0]!.length;
  const used = new Array<number>(sticks).fill(0);
  let best = 0;
  const place = (next: number): void => {
    if (next === pieces.length) {
      if (used.every((some) => some > 0)) best = Math.max(best, length - Math.min(...used));
      return;
    }
    for (let stick = 0; stick < sticks; stick++) {
      const need = pieces[next]! + kerf;
      if (used[stick]! + need > length + kerf) continue;
      used[stick]! += need;
      place(next + 1);
      used[stick]! -= need;
      if (used[stick] === 0) break;
    }
  };
  place(0);
  return best;
}
