import { rememberLatest } from "../../memory/latest";

/** So many packages of one size. */
export interface PutUp {
  readonly size: number;
  readonly count: number;
}

/** Most steps of a table of totals; beyond it the largest size fills up first. */
const MOST_STEPS = 200_000;

/** What feet and pieces may be off by where they are whole. */
const CLOSE = 1e-6;

/**
 * Whole packages that hold a quantity: of all sums of their sizes that are enough the least, and of those of that sum the
 * fewest packages; largest first.
 *
 * @param need [ft or pieces], above 0
 * @param sizes whole, above 0
 * @example putUps(1356.3, [1000, 2500]) //=> [{ size: 1000, count: 2 }]
 */
export const putUps = (need: number, sizes: readonly number[]): readonly PutUp[] => remembered(need, ...sizes);

const remembered = rememberLatest((need: number, ...sizes: number[]): readonly PutUp[] => {
  const unit = sizes.reduce(greatestCommon);
  const steps = sizes.map((size) => size / unit).sort((a, b) => b - a);
  const largest = steps[0]!;
  const wanted = Math.max(1, Math.ceil((need - CLOSE) / unit));
  const filled = Math.max(0, Math.floor((wanted - MOST_STEPS) / largest));
  const counts = leastFill(wanted - filled * largest, steps);
  return steps
    .map((step, place) => ({ size: step * unit, count: counts[place]! + (place === 0 ? filled : 0) }))
    .filter(({ count }) => count > 0);
}, 500);

/** How many of each step add up to the least sum that is enough, by the fewest steps. */
function leastFill(wanted: number, steps: readonly number[]): number[] {
  const fewest = new Uint32Array(wanted + steps[0]!).fill(NONE);
  const last = new Int32Array(fewest.length);
  fewest[0] = 0;
  for (let sum = 1; sum < fewest.length; sum++) {
    steps.forEach((step, place) => {
      const before = sum >= step ? fewest[sum - step]! : NONE;
      if (before === NONE || before + 1 >= fewest[sum]!) return;
      fewest[sum] = before + 1;
      last[sum] = place;
    });
  }
  const counts = steps.map(() => 0);
  let sum = wanted;
  while (fewest[sum] === NONE) sum++;
  for (; sum > 0; sum -= steps[last[sum]!]!) counts[last[sum]!]!++;
  return counts;
}

const NONE = 2 ** 32 - 1;

const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b));

/** What packages hold together. */
export const heldBy = (packages: readonly PutUp[]): number =>
  packages.reduce((sum, { size, count }) => sum + size * count, 0);

/** @example putUpWords([{ size: 1000, count: 2 }], "ft") //=> "2 × 1000 ft" */
export const putUpWords = (packages: readonly PutUp[], unit: string): string =>
  packages.map(({ size, count }) => `${count} × ${size}${unit === "ft" ? " ft" : ""}`).join(" + ");
