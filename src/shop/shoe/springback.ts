import { toRadians, tidyDegrees, type Degrees } from "../../geometry/angle";
import { heldRadius, releasedRadius } from "../../bends/testBends/springback";
import {
  springbackAt,
  springbackModel,
  type SpringbackModel,
  type SpringbackTest,
} from "../../bends/testBends/springbackModel";
import { isUserError } from "../../units/errors";

/** What a shoe's test bends say of its radius and springback. */
export interface TestedShoe {
  /** Finished centerline radius at 90° [in]. */
  readonly radius: number;
  /** Degrees that a finished 90 opened when it was let go; none counts as 0. */
  readonly springback?: Degrees;
  /** Another test bend, at another angle. */
  readonly secondTest?: SpringbackTest;
}

/** The springback of a shoe as a line of the finished angle: of its 90 and, where there is one, of its second test. */
export const shoeModel = ({ springback = 0, secondTest }: TestedShoe): SpringbackModel =>
  springbackModel([{ angle: 90, springback }, ...(secondTest ? [secondTest] : [])]);

/**
 * Springback of a shoe at a finished angle [°]: what BEND.SPRINGBACK gives for the shoe's tests.
 *
 * @throws InputError at an angle too far from the tested ones
 * @example springbackOf({ radius: 4, springback: 4 }, 45) //=> 2
 */
export const springbackOf = (shoe: TestedShoe, angle: Degrees): number =>
  springbackAt(shoeModel(shoe), tidyDegrees(angle));

/** The same, undefined where the tests do not say. */
export function testedSpringback(shoe: TestedShoe, angle: Degrees): number | undefined {
  const answer = attempted(shoe, angle);
  return typeof answer === "number" ? answer : undefined;
}

/** Why the tests do not say it; empty where they do. */
export function untested(shoe: TestedShoe, angle: Degrees): string {
  const answer = attempted(shoe, angle);
  return typeof answer === "string" ? answer : "";
}

function attempted(shoe: TestedShoe, angle: Degrees): number | string {
  try {
    return springbackOf(shoe, angle);
  } catch (error) {
    if (isUserError(error)) return error.message;
    throw error;
  }
}

/**
 * Finished centerline radius at an angle [in].
 *
 * Derived: the tool's radius is the same at every angle and release keeps the arc's length, so
 * `R(A)·A = Rtool·(A + springback(A))`. Springback in proportion to the angle leaves the radius of the 90 everywhere. At
 * angles the tests do not reach, the radius is that of the nearest angle they do.
 *
 * @example radiusOf({ radius: 4, springback: 4 }, 45) //=> 4
 */
export function radiusOf(shoe: TestedShoe, angle: Degrees): number {
  if (!shoe.secondTest) return shoe.radius;
  const { intercept, slope, from, to } = shoeModel(shoe);
  const near = Math.min(Math.max(angle, from), to);
  return releasedRadius(heldRadius(shoe.radius, 90, shoe.springback ?? 0), near, Math.max(0, intercept + slope * near));
}

/** Length of conduit that a bend takes [in]. */
export const arcOf = (shoe: TestedShoe, angle: Degrees): number => radiusOf(shoe, angle) * toRadians(angle);
