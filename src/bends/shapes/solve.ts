import type { Degrees } from "../../geometry/angle";

/**
 * The angle [°] above 0 and up to `highest` at which a steadily falling function has a value, found by halving until
 * no number is left between the two ends.
 */
export function falling(f: (angle: Degrees) => number, value: number, highest: number): number {
  let [low, high] = [0, highest];
  for (;;) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) return high;
    if (f(middle) > value) low = middle;
    else high = middle;
  }
}
