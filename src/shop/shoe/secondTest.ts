import type { SpringbackTest } from "../../bends/testBends/springbackModel";
import { toAngle } from "../../units/angle";
import { InputError, quoteValue } from "../../units/errors";

/** Two numbers, parted by words, a comma or a space: "30 at 31.5", "30°, dial 31.5°". */
const TWO_NUMBERS = /^(\d+(?:\.\d+)?)\s*°?\s*(?:,|;|\bat\b|\bdial\b|\s)+\s*(\d+(?:\.\d+)?)\s*°?$/i;

/**
 * Reads a test bend beside a shoe's 90: the angle it settled at and the dial reading it was taken to, from a start at
 * zero.
 *
 * @throws InputError when the cell is not two numbers, or the dial did not pass the angle
 * @example readSecondTest("30 at 31.5") //=> { angle: 30, springback: 1.5 }
 */
export function readSecondTest(cell: unknown): SpringbackTest {
  const [, angleText, dialText] = (typeof cell === "string" && TWO_NUMBERS.exec(cell.trim())) || [];
  if (angleText === undefined || dialText === undefined) {
    throw new InputError(
      "Second test must be the angle a bend settled at and the dial it was taken to, from zero, as in 30 at 31.5; " +
        `got ${quoteValue(cell)}.`,
    );
  }
  const angle = toAngle(Number(angleText), "Second test's angle");
  const dial = toAngle(Number(dialText), "Second test's dial", { min: angle, max: angle + 45 });
  return { angle, springback: dial - angle };
}

/** A second test as the cell holds it. */
export const secondTestCell = (angle: number, dial: number): string => `${angle} at ${dial}`;
