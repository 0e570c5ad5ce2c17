import { meanOf } from "./lineFit";

/** Limits of a chart of single values and of the steps from one to the next. */
export interface ControlLimits {
  readonly mean: number;
  readonly lower: number;
  readonly upper: number;
  /** Mean of the steps between neighbors, whatever their sign, and the most a step should be. */
  readonly meanStep: number;
  readonly largestStep: number;
}

/** Expected step of two values of one standard deviation, d2 for n = 2; and D4, the limit of a step over its mean. */
const [D2, D4] = [1.128, 3.267];

/**
 * Individuals and moving-range limits: mean ± 3·(mean step)/1.128 (NIST/SEMATECH e-Handbook 6.3.2.2, from memory).
 * @param values two or more, in the order they were made
 */
export function controlLimits(values: readonly number[]): ControlLimits {
  const mean = meanOf(values);
  const meanStep = meanOf(values.slice(1).map((value, index) => Math.abs(value - values[index]!)));
  const reach = (3 * meanStep) / D2;
  return { mean, lower: mean - reach, upper: mean + reach, meanStep, largestStep: D4 * meanStep };
}
