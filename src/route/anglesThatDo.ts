import { isUserError } from "../units/errors";
import { layOut, walkRoute, type WalkedRoute } from "./resolveRoute";
import { refuseShortLegs } from "./problems";
import { RouteError } from "./text/routeError";
import type { RadiusAt, RouteStep } from "./text/types";

/** Least angle that is offered [°]: common practice, no source; flatter bends wander. */
const FLATTEST = 5;
const RIGHT_ANGLE = 90;
/** Steps after the one that is told whose bends may be what has no room. */
const NEAR = 1;

type Angled = Extract<RouteStep, { kind: "offset" | "saddle" }>;

/**
 * A mistake of a laid-out route, with the angle of an offset or a saddle that would do: found by laying the route out
 * again with other whole degrees, the nearest first. Unchanged where no angle does.
 *
 * @example "step 2: … 1.1 in. short. At most 38° in step 2 would do."
 */
export function withAngleThatDoes(error: unknown, walked: WalkedRoute, radiusAt: RadiusAt): unknown {
  if (!(error instanceof RouteError)) return error;
  for (let index = error.step - 1; index <= error.step - 1 + NEAR; index++) {
    const step = walked.steps[index];
    if (step?.kind !== "offset" && step?.kind !== "saddle") continue;
    const angle = nearestAngle(walked, step, index, radiusAt);
    if (angle === undefined) continue;
    const most = angle > step.angle ? "At least" : "At most";
    const words = ` ${most} ${angle}° in step ${index + 1} would do.`;
    return new RouteError(error.step, error.words + words, error.message + words, error.meant);
  }
  return error;
}

/** The whole angle nearest to a step's own with which nothing is wrong up to the step after it; undefined without one. */
function nearestAngle(walked: WalkedRoute, step: Angled, index: number, radiusAt: RadiusAt): number | undefined {
  const own = step.angle;
  const does = (angle: number): boolean =>
    firstMistake(
      walked,
      walked.steps.map((each) => (each === step ? { ...step, angle } : each)),
      radiusAt,
    ) >
    index + 1;
  for (let away = 1; away < RIGHT_ANGLE; away++) {
    const [less, more] = [Math.ceil(own) - away, Math.floor(own) + away];
    if (less >= FLATTEST && does(less)) return less;
    if (more <= RIGHT_ANGLE && does(more)) return more;
  }
  return undefined;
}

/** Number of the first step with a mistake; Infinity without one. */
function firstMistake({ outsideDiameter }: WalkedRoute, steps: readonly RouteStep[], radiusAt: RadiusAt): number {
  try {
    refuseShortLegs(layOut(walkRoute(steps, outsideDiameter), radiusAt).pulls);
    return Infinity;
  } catch (error) {
    if (!isUserError(error)) throw error;
    return error instanceof RouteError ? error.step : 0;
  }
}
