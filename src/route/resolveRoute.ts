import { SAME_PLACE } from "../units/tolerances";
import { add, along, type Vec3 } from "../geometry/vector";
import { InputError } from "../units/errors";
import type { Course, Stretch } from "./courses";
import { jointCorners, type JointCorners } from "./jointCorners";
import { centerlineLegs } from "./backs";
import { AS_WRITTEN, type ShowLength } from "../units/formatLength";
import { lengthsAsIn } from "./text/ownWords";
import { RouteError } from "./text/routeError";
import type { Pull, RadiusAt, ResolvedRoute, RouteCorner, RouteStep } from "./text/types";
import { Walk } from "./walk";

/**
 * Corner points of a route, pull by pull, from the datum at 0 0 0.
 *
 * A leg runs from corner to corner on the centerline: to the first corner of an offset and from its second, to the true
 * corner of a sweep, to the center of a saddle's obstacle. A three-bend saddle is as high as the crest of its arc, which
 * clears the obstacle, and its angle is the middle bend's; a four-bend saddle is straight for the obstacle's width, from
 * tangent point to tangent point. A sweep is parted into equal shots of the shoe's radius, of at most 10° unless told.
 *
 * @param radius the shoe's finished centerline radius [in], above 0: one for every bend, or by the bend's angle
 * @param outsideDiameter of the conduit [in]; needed only when a leg is measured to the back of its bends
 * @throws InputError with the step's number, what was read and what was expected
 * @example resolveRoute(readRoute("up 48, east 150"), 4).pulls[0].points
 * //=> [[0, 0, 0], [0, 0, 48], [150, 0, 48]]
 */
export function resolveRoute(
  steps: readonly RouteStep[],
  radius: number | RadiusAt,
  outsideDiameter?: number,
): ResolvedRoute {
  return layOut(walkRoute(steps, outsideDiameter), radius);
}

/** A route walked from the datum: what of it no radius changes. */
export interface WalkedRoute {
  readonly steps: readonly RouteStep[];
  readonly courses: readonly Course[];
  /** Of the conduit [in], where it was given. */
  readonly outsideDiameter: number | undefined;
}

/**
 * Walks the steps of a route.
 * @param outsideDiameter of the conduit [in]; needed only when a leg is measured to the back of its bends
 * @param show how messages tell lengths, where the route is not metric
 * @throws InputError with the step's number, what was read and what was expected
 */
export function walkRoute(
  steps: readonly RouteStep[],
  outsideDiameter?: number,
  show: ShowLength = AS_WRITTEN.show,
): WalkedRoute {
  const walk = new Walk();
  for (const step of centerlineLegs(steps, outsideDiameter, show)) walk.take(step);
  return { steps, courses: walk.finish(), outsideDiameter };
}

/**
 * Lays a walked route out at a radius [in], or at one for each angle.
 * @throws InputError where a saddle or a sweep takes the whole of a leg beside it
 */
export function layOut(
  { steps, courses }: WalkedRoute,
  radius: number | RadiusAt,
  show: ShowLength = AS_WRITTEN.show,
): ResolvedRoute {
  if (typeof radius === "number") aboveZero(radius);
  const radiusAt: RadiusAt = (angle, elbow) =>
    aboveZero(typeof radius === "number" ? (elbow?.radius ?? radius) : radius(angle, elbow));
  const showLength = lengthsAsIn(steps, show);
  let group = 0;
  const pulls = courses.map((course) => {
    const pull = pullOf(course, radiusAt, group, showLength);
    group += course.joints.length;
    return pull;
  });
  return { steps: [...steps], pulls, endsInBox: steps.at(-1)?.kind === "box" };
}

function aboveZero(radius: number): number {
  if (radius > 0 && radius < Infinity) return radius;
  throw new InputError(`radius must be above 0; got ${radius}.`);
}

function pullOf(
  { start, stretches, joints, end, fittings, whip }: Course,
  radiusAt: RadiusAt,
  groupsBefore: number,
  showLength: ShowLength,
): Pull {
  const made = joints.map((joint, index) =>
    jointCorners(joint, stretches[index]!.direction, stretches[index + 1]!.direction, radiusAt, showLength),
  );
  const corners: RouteCorner[] = [];
  const placed: Pull["joints"][number][] = [];
  let base: Vec3 = start;
  stretches.forEach((stretch, index) => {
    checkRoom(stretch, made[index - 1], made[index], showLength);
    for (const { stretch: place, at, fitting, step } of fittings) {
      if (place === index) placed.push({ point: along(base, stretch.direction, at), fitting, step });
    }
    base = along(base, stretch.direction, stretch.length);
    const joint = made[index];
    if (!joint) return;
    const { kind, step, corners: points, radii, shift, elbow } = joint;
    points.forEach((point, place) => {
      const of = points.length;
      corners.push({
        point: add(base, point),
        radius: radii[place]!,
        kind,
        step,
        group: groupsBefore + index + 1,
        place: place + 1,
        of,
        ...(elbow && { elbow }),
      });
    });
    base = add(base, shift);
  });
  const points = [start, ...corners.map(({ point }) => point), base];
  return { points, corners, end, joints: placed, ...(whip && { whip }) };
}

/** A saddle and a sweep stand on the stretches beside them: refuses when they take a stretch whole. */
function checkRoom(
  { length, step }: Stretch,
  before: JointCorners | undefined,
  after: JointCorners | undefined,
  showLength: ShowLength,
): void {
  const takers = [before, after].filter((joint) => joint !== undefined && joint.takes > 0) as JointCorners[];
  const left = takers.reduce((rest, { takes }) => rest - takes, length);
  if (left > SAME_PLACE) return;
  const taken = takers.map((joint) => `the ${joint.kind} of step ${joint.step} takes ${showLength(joint.takes)}`);
  throw new RouteError(
    step,
    `the leg is ${showLength(length)} long, but ${taken.join(" and ")} of it: ${showLength(-left)} short.`,
  );
}
