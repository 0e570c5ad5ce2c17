import { tableKnapsack, type PieceChoice, type Goods, type KnapsackAnswer } from "./knapsackTable";
import type { Work } from "../model/work";

const NODES = 20_000;

/**
 * Worth-greatest choice of pieces for one bin, exact in whole numbers. Depth-first with the fractional bound; when that
 * takes too long, dynamic programming. Choices not worth more than `above` are of no interest.
 */
export function knapsack(goods: Goods, capacity: number, above: number, work: Work): KnapsackAnswer {
  const order = byRatio(goods, capacity);
  const n = order.length;
  const weight = Float64Array.from(order, (item) => goods.weights[item]!);
  const price = Float64Array.from(order, (item) => goods.prices[item]!);
  const bound = Float64Array.from(order, (item) =>
    Math.min(goods.bounds[item]!, Math.floor(capacity / goods.weights[item]!)),
  );
  const lightest = new Float64Array(n + 1).fill(Infinity);
  for (let k = n - 1; k >= 0; k--) lightest[k] = Math.min(lightest[k + 1]!, weight[k]!);

  const taken = new Float64Array(n);
  const choices: PieceChoice[] = [];
  let best = above;
  let room = capacity;
  let worth = 0;
  let next = 0;
  let nodes = 0;
  for (;;) {
    // Forward: fill greedily as long as the fractional bound from here beats the best.
    while (next < n && room >= lightest[next]!) {
      let spare = room;
      let limit = worth;
      let k = next;
      for (; k < n && spare > 0; k++) {
        const need = bound[k]! * weight[k]!;
        if (need > spare) {
          limit += Math.floor((spare * price[k]!) / weight[k]!);
          break;
        }
        spare -= need;
        limit += bound[k]! * price[k]!;
      }
      nodes += 1 + (k - next);
      if (limit <= best) break;
      const count = Math.min(bound[next]!, Math.floor(room / weight[next]!));
      taken[next] = count;
      room -= count * weight[next]!;
      worth += count * price[next]!;
      next++;
    }
    if (worth > best) {
      best = worth;
      choices.push(choiceOf(order, taken, worth));
    }
    // Back: give back one copy of the last piece taken and go on behind it.
    let last = Math.min(next, n) - 1;
    while (last >= 0 && taken[last] === 0) last--;
    if (last < 0) break;
    taken[last] = taken[last]! - 1;
    room += weight[last]!;
    worth -= price[last]!;
    next = last + 1;
    if (nodes > NODES) {
      work.add(6 * nodes);
      return tableKnapsack(goods, [capacity], [above], work)[0]!;
    }
  }
  work.add(6 * nodes + 20 * n);
  return { best, choices };
}

/** Items worth taking, best price for weight first. */
function byRatio({ weights, prices, bounds }: Goods, capacity: number): number[] {
  const items: number[] = [];
  for (let item = 0; item < weights.length; item++) {
    if (prices[item]! > 0 && bounds[item]! > 0 && weights[item]! <= capacity) items.push(item);
  }
  return items.sort((a, b) => prices[b]! * weights[a]! - prices[a]! * weights[b]! || a - b);
}

function choiceOf(order: readonly number[], taken: Float64Array, worth: number): PieceChoice {
  const items: number[] = [];
  const copies: number[] = [];
  order.forEach((item, k) => {
    if (taken[k]! > 0) {
      items.push(item);
      copies.push(taken[k]!);
    }
  });
  return { worth, items, copies };
}
