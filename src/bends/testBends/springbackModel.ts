import type { Degrees } from "../../geometry/angle";
import { InputError } from "../../units/errors";
import { showDegrees } from "../../units/show";

/** One test bend: the angle it settled at and how far it sprang back to get there. Both [°]. */
export interface SpringbackTest {
  readonly angle: Degrees;
  readonly springback: Degrees;
}

/** Springback as a straight line of the finished angle, and where it may be used. All [°], slope [°/°]. */
export interface SpringbackModel {
  readonly kind: "proportional" | "straight line" | "least squares";
  readonly intercept: number;
  readonly slope: number;
  /** Finished angles the model answers for. */
  readonly from: number;
  readonly to: number;
  /** Largest distance of a test from the line. */
  readonly largestMiss: number;
}

/** How far past the tested angles a line through two or more tests is still trusted [°]. Our choice, no source. */
const REACH = 15;
/** Two tests at angles closer than this say nothing about the slope [°]. */
const LEAST_SPREAD = 1;

/**
 * Springback at other angles from test bends on one shoe with one raceway and size.
 *
 * One test: proportional to the angle, which holds for one material bent around one radius (the curvature lost on
 * release is the same all along the arc). Two tests at different angles: the straight line through both, which also
 * takes in a slack that does not depend on the angle. More: the straight line of least squares, with its largest miss.
 * A line is answered for from 15° below the smallest tested angle to 15° above the largest.
 *
 * @throws InputError without tests, or when several tests stand at one angle and none at another
 */
export function springbackModel(tests: readonly SpringbackTest[]): SpringbackModel {
  const [first] = tests;
  if (!first) throw new InputError("tests must hold at least one test bend; got none.");
  if (tests.length === 1) {
    const slope = first.springback / first.angle;
    return { kind: "proportional", intercept: 0, slope, from: 0, to: 180, largestMiss: 0 };
  }
  const angles = tests.map(({ angle }) => angle);
  const [smallest, largest] = [Math.min(...angles), Math.max(...angles)];
  if (largest - smallest < LEAST_SPREAD) {
    throw new InputError(
      `tests must stand at angles at least ${showDegrees(LEAST_SPREAD)} apart; all are near ${showDegrees(largest)}. ` +
        `Give one of them, or bend one more at another angle.`,
    );
  }
  const line = leastSquares(tests);
  return {
    kind: tests.length === 2 ? "straight line" : "least squares",
    ...line,
    from: Math.max(0, smallest - REACH),
    to: Math.min(180, largest + REACH),
    largestMiss: Math.max(...tests.map((test) => Math.abs(test.springback - line.intercept - line.slope * test.angle))),
  };
}

/**
 * Springback at an angle by a model.
 *
 * @param angle [°] finished
 * @throws InputError outside the model's angles, or where its line falls below 0
 * @example springbackAt(springbackModel([{ angle: 90, springback: 4 }]), 45) //=> 2
 */
export function springbackAt({ intercept, slope, from, to }: SpringbackModel, angle: Degrees): number {
  if (!(angle >= from && angle <= to)) {
    throw new InputError(
      `angle must lie within ${showDegrees(REACH)} of the tested angles, ${showDegrees(from)} to ${showDegrees(to)}; ` +
        `got ${showDegrees(angle)}. Bend a test nearer to it.`,
    );
  }
  const springback = intercept + slope * angle;
  if (springback >= 0) return springback;
  throw new InputError(
    `The tests give a springback of ${showDegrees(springback)} at ${showDegrees(angle)}, below 0°. Bend a test nearer to it.`,
  );
}

function leastSquares(tests: readonly SpringbackTest[]): { intercept: number; slope: number } {
  const mean = (pick: (test: SpringbackTest) => number) =>
    tests.reduce((sum, test) => sum + pick(test), 0) / tests.length;
  const [angle, springback] = [mean((test) => test.angle), mean((test) => test.springback)];
  const covariance = mean((test) => (test.angle - angle) * (test.springback - springback));
  const slope = covariance / mean((test) => (test.angle - angle) ** 2);
  return { intercept: springback - slope * angle, slope };
}
