import { tan, toDegrees, toRadians } from "../geometry/angle";
import { angleBetween, add, along, cross, dot, rotate, scale, subtract, unit, type Vec3 } from "../geometry/vector";
import { showInches } from "../units/show";
import { SAME_DIRECTION } from "../units/tolerances";
import type { Course, Joint } from "./courses";
import { walkRoute } from "./resolveRoute";
import { RouteError } from "./text/routeError";
import type { RouteStep } from "./text/types";

/** Where the other conduits of a rack lie on a stretch: the side it has there, a unit vector, from the step that begins it. */
export interface RackSide {
  readonly step: number;
  readonly side: Vec3;
}

/** A route laid for a rack: what each stretch and sweep changes by for a conduit one inch to the side. */
export interface RackRoute {
  readonly steps: readonly RouteStep[];
  readonly sides: readonly RackSide[];
  /** By step number, 1 for the first: how much longer a leg is, how much wider a sweep, how far a point moves. */
  readonly legs: ReadonlyMap<number, number>;
  readonly sweeps: ReadonlyMap<number, number>;
  readonly points: ReadonlyMap<number, Vec3>;
  /** How much longer the conduit's legs are in all. */
  readonly longer: number;
}

/** What one corner does: how much shorter the legs beside it are for an inch to the side, and what of the side it turns toward. */
interface Corner {
  readonly before: number;
  readonly after: number;
  readonly toward: number;
}

/**
 * Carries the side of a rack along a route without twist. Derived: a conduit `d` to the side `b` of the first has its
 * corner at `P + d·(b − c·tan(A/2)·u)`, `u` the heading before it, `c` the part of `b` in the plane of the bend, toward
 * where it turns; so both legs are `d·c·tan(A/2)` shorter, and a sweep around the same center has `R − d·c`.
 *
 * @param side unit vector from conduit 1 to the others where the run begins
 * @throws RouteError where the side is not square to the first leg, a saddle turns toward the rack, the rack turns in a
 *   box, or goes on as a flexible piece
 */
export function rackRoute(steps: readonly RouteStep[], side: Vec3, outsideDiameter: number): RackRoute {
  const { courses } = walkRoute(steps, outsideDiameter);
  const [legs, sweeps] = [new Map<number, number>(), new Map<number, number>()];
  const points = new Map<number, Vec3>();
  const sides: RackSide[] = [];
  const more = (map: Map<number, number>, step: number, by: number) => void map.set(step, (map.get(step) ?? 0) + by);
  const first = courses[0]!.stretches[0]!;
  if (Math.abs(dot(side, first.direction)) > SAME_DIRECTION) {
    throw new RouteError(first.step, "the other conduits of a rack must lie square to the run's first leg.");
  }
  let [now, longer] = [side, 0];
  courses.forEach((course, index) => {
    const { stretches, joints, whip } = course;
    if (whip) throw new RouteError(whip.step, "a flexible piece is written run by run, not for a rack.");
    stretches.forEach(({ direction, step }, place) => {
      sides.push({ step, side: now });
      const joint = joints[place];
      const next = stretches[place + 1] ?? courses[index + 1]?.stretches[0];
      const last = lastLeg(steps, step, stretches[place + 1]?.step ?? endStep(courses, index, steps));
      let corner: Corner = { before: 0, after: 0, toward: 0 };
      const here = now;
      if (joint) corner = joint.type === "corner" ? turned(direction, next!.direction, now) : slanted(joint, now);
      else if (next) corner = between(course, direction, next.direction, now, endStep(courses, index, steps));
      more(legs, last, -corner.before);
      if (next) more(legs, next.step, -corner.after);
      longer -= corner.before + corner.after;
      if (joint?.type === "corner" && joint.sweep) more(sweeps, joint.sweep.step, -corner.toward);
      points.set(last, subtract(along(here, direction, -corner.before), side));
      if (joint?.type === "corner" || (!joint && next)) now = carried(now, direction, next!.direction);
    });
  });
  return { steps, sides, legs, sweeps, points, longer };
}

/** The last step of a stretch that goes on, before the step that ends it. */
function lastLeg(steps: readonly RouteStep[], from: number, to: number): number {
  for (let step = to - 1; step > from; step--) {
    if (["leg", "ahead", "to"].includes(steps[step - 1]!.kind)) return step;
  }
  return from;
}

/** The step after the last one of a course. */
const endStep = (courses: readonly Course[], index: number, steps: readonly RouteStep[]): number =>
  courses[index + 1]?.stretches[0]?.step ?? steps.length + 1;

function turned(before: Vec3, after: Vec3, side: Vec3): Corner {
  const angle = angleBetween(before, after);
  const toward = dot(side, unit(subtract(after, scale(before, dot(after, before)))));
  const less = toward * tan(toRadians(toDegrees(angle) / 2));
  return { before: less, after: less, toward };
}

function slanted(joint: Exclude<Joint, { type: "corner" }>, side: Vec3): Corner {
  const toward = dot(side, joint.side);
  if (joint.type === "saddle" && Math.abs(toward) > SAME_DIRECTION) {
    throw new RouteError(
      joint.step,
      "a saddle of a rack must rise square to the rack's side; write saddles toward it run by run.",
    );
  }
  const less = toward * tan(toRadians(joint.angle / 2));
  return { before: less, after: -less, toward };
}

/** From one pull to the next: straight on, or turned in a conduit body. */
function between({ end }: Course, before: Vec3, after: Vec3, side: Vec3, step: number): Corner {
  const angle = angleBetween(before, after);
  if (angle < SAME_DIRECTION) return { before: 0, after: 0, toward: 0 };
  if (end !== "box") return turned(before, after, side);
  throw new RouteError(step, "a rack cannot turn in a box; end it there and write the rest as another row.");
}

/** The side after a turn: turned as the run is. */
function carried(side: Vec3, before: Vec3, after: Vec3): Vec3 {
  const angle = angleBetween(before, after);
  return angle < SAME_DIRECTION ? side : rotate(side, unit(cross(before, after)), angle);
}

/**
 * The route of a conduit of a rack, so far to the side of the first [in].
 *
 * @throws RouteError where a leg of it would be none
 */
export function memberSteps({ steps, legs, sweeps, points }: RackRoute, shift: number, name: string): RouteStep[] {
  return steps.map((step, index): RouteStep => {
    const number = index + 1;
    if (step.kind === "leg" || step.kind === "ahead") {
      const length = step.length + shift * (legs.get(number) ?? 0);
      if (length > 0.001) return { ...step, length };
      throw new RouteError(
        number,
        `this leg of ${name} would be ${showInches(length)}: make it longer, or the rack narrower.`,
      );
    }
    if (step.kind === "to") return { ...step, point: add(step.point, scale(points.get(number) ?? [0, 0, 0], shift)) };
    return step.kind === "sweep" ? { ...step, radius: step.radius + shift * (sweeps.get(number) ?? 0) } : step;
  });
}
