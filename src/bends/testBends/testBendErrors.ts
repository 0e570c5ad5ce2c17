import type { TestBend } from "./testBend";

/** How finely the test bend was read: the smallest division of tape [in] and protractor [°]. */
export interface Readings {
  readonly tape: number;
  readonly protractor: number;
}

/** What reading to the nearest division may do to a result, in the result's unit. */
export interface ReadingError {
  /** Every reading half a division off, each the way that hurts. */
  readonly worst: number;
  /** Standard error: each reading anywhere within half a division either way, independent of the others. */
  readonly standard: number;
}

const LENGTHS = ["cutLength", "mark", "stub", "leg"] as const;
/** Step of the central differences [in]: results are linear in the lengths, so any step will do. */
const STEP = 1e-3;
/** A reading that is anywhere within a division of width 1 has this standard deviation. */
const UNIFORM = 1 / Math.sqrt(12);

/**
 * Carries the errors of four tape readings through to a result, by how the result follows each of them.
 *
 * @param result of the test bend @param division [in] smallest division of the tape
 */
export function readingError(result: (test: TestBend) => number, test: TestBend, division: number): ReadingError {
  const effects = LENGTHS.map((name) => {
    const moved = (by: number) => result({ ...test, [name]: test[name] + by });
    return ((moved(STEP) - moved(-STEP)) / (2 * STEP)) * division;
  });
  return {
    worst: effects.reduce((sum, effect) => sum + Math.abs(effect) / 2, 0),
    standard: Math.hypot(...effects) * UNIFORM,
  };
}
