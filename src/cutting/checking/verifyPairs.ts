/** The part of the check that is about sticks taken out beforehand; like verify.ts it shares no code with the solver. */
import type { CutPlan } from "./plan";
import type { Kind, Wanted } from "./verifyCounts";

/**
 * Takes the certificate's pairs out of what is wanted; answers what their sticks cost, or undefined when one is not justified.
 * With one kind of stick (all others no longer and no cheaper), a piece and the longest other that fits beside it can
 * share a stick alone in a best plan if they fill it, or if no two others fit beside it: exchange whatever lies there.
 * That holds beside one stick with less room, too, when the piece is too heavy for it.
 *
 * @param less room of that stick
 */
export function checkPairs(
  { weights, lengths, demands }: Wanted,
  kinds: readonly Kind[],
  pairs: CutPlan["certificate"]["pairs"],
  less = 0,
): number | undefined {
  const main = kinds.find((kind) => kind.limit === Infinity);
  if (pairs.length === 0) return 0;
  if (!main || kinds.some((kind) => kind.room > main.room || kind.cost < main.cost)) return undefined;
  // Where all weights are multiples of one number, so is whatever a stick holds.
  const step = weights.reduce(commonDivisor, 0);
  const usable = step > 0 ? main.room - (main.room % step) : main.room;
  let cost = 0;
  for (const {
    lengths: [one, other],
    count,
  } of pairs) {
    const a = lengths.indexOf(one);
    const b = other === 0 ? -1 : lengths.indexOf(other);
    if (a < 0 || (other !== 0 && b < 0) || !Number.isInteger(count) || count < 1) return undefined;
    for (let n = 0; n < count; n++) {
      if (demands[a]! < 1 || weights[a]! <= less) return undefined;
      demands[a]!--;
      const room = usable - weights[a]!;
      const justified = b < 0 || weights[b] === room || twoLightest(weights, demands) > room;
      if (longestFitting(weights, demands, room) !== b || !justified) return undefined;
      if (b >= 0) demands[b]!--;
      cost += main.cost;
    }
  }
  return cost;
}

/** Place of the longest piece still wanted that weighs no more than `room`; -1 when none does. */
function longestFitting(weights: readonly number[], demands: readonly number[], room: number): number {
  let [from, to] = [0, weights.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (weights[middle]! > room) from = middle + 1;
    else to = middle;
  }
  while (from < weights.length && demands[from]! < 1) from++;
  return from < weights.length ? from : -1;
}

/** What the two lightest pieces still wanted weigh together; Infinity when there are not two. */
function twoLightest(weights: readonly number[], demands: readonly number[]): number {
  let one = 0;
  for (let k = weights.length - 1; k >= 0; k--) {
    const demand = demands[k]!;
    if (demand > 0 && one > 0) return one + weights[k]!;
    if (demand > 1) return 2 * weights[k]!;
    if (demand > 0) one = weights[k]!;
  }
  return Infinity;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
