/**
 * The corners of one joint: how far they reach into the stretches on either side, and where they stand. Points are
 * relative to the joint: the true corner, the obstacle's center on the base line, or an offset's first corner.
 */
import { tan, toDegrees, toRadians, type Degrees } from "../geometry/angle";
import { cornerHeight, setback } from "../geometry/arc";
import { add, along, angleBetween, cross, ORIGIN, rotate, scale, unit, type Vec3 } from "../geometry/vector";
import { RouteError } from "./text/routeError";
import type { ShowLength } from "../units/formatLength";
import type { Joint, OffsetJoint, SaddleJoint, Sweep } from "./courses";
import type { AskedElbow, CornerKind, RadiusAt } from "./text/types";

export interface JointCorners {
  kind: CornerKind;
  step: number;
  corners: Vec3[];
  /** Centerline radius at each [in]. */
  radii: number[];
  /** What the corners take of the stretch before and of the stretch after [in]. */
  takes: number;
  /** From where the stretch before ends to where the stretch after starts. */
  shift: Vec3;
  elbow?: AskedElbow;
}

/** Most turn of one shot when the number is not given [°]: common practice (nine shots for a 90 by hickey). */
const SHOT = 10;

/** @param before direction of the stretch before; @param after of the one after; @param radiusAt the shoe's [in] */
export function jointCorners(
  joint: Joint,
  before: Vec3,
  after: Vec3,
  radiusAt: RadiusAt,
  showLength: ShowLength,
): JointCorners {
  if (joint.type === "offset") return offsetCorners(joint, before, radiusAt);
  if (joint.type === "saddle") return saddleCorners(joint, before, radiusAt);
  const turn = toDegrees(angleBetween(before, after));
  if (joint.sweep) return sweepCorners(joint.sweep, before, after, turn, radiusAt, showLength);
  const { step, elbow } = joint;
  const radii = [radiusAt(turn, elbow)];
  return { kind: "bend", step, corners: [ORIGIN], radii, takes: 0, shift: ORIGIN, ...(elbow && { elbow }) };
}

function offsetCorners({ kind, step, side, rise, angle }: OffsetJoint, before: Vec3, radiusAt: RadiusAt): JointCorners {
  const second = add(scale(before, rise / tan(toRadians(angle))), scale(side, rise));
  const radius = radiusAt(angle);
  return { kind, step, corners: [ORIGIN, second], radii: [radius, radius], takes: 0, shift: second };
}

/** Three bends: the crest of the arc is `rise` high, so its corner stands higher. Four: the top is straight for `over`. */
function saddleCorners({ step, side, rise, angle, over }: SaddleJoint, before: Vec3, radiusAt: RadiusAt): JointCorners {
  const radius = radiusAt(angle);
  const at = (distance: number, height: number) => along(scale(before, distance), side, height);
  if (over === null) {
    const top = rise + cornerHeight(angle, radius);
    const takes = top / tan(toRadians(angle / 2));
    const [corners, outer] = [[at(-takes, 0), at(0, top), at(takes, 0)], radiusAt(angle / 2)];
    return { kind: "three-bend saddle", step, corners, radii: [outer, radius, outer], takes, shift: ORIGIN };
  }
  const inner = over / 2 + setback(angle, radius);
  const takes = inner + rise / tan(toRadians(angle));
  const corners = [at(-takes, 0), at(-inner, rise), at(inner, rise), at(takes, 0)];
  const radii = corners.map(() => radius);
  return { kind: "four-bend saddle", step, corners, radii, takes, shift: ORIGIN };
}

/** One curve of the sweep's radius where it is made in one shot; else equal shots on the corners of the polygon drawn around the ideal arc: each side touches the arc in its middle. */
function sweepCorners(
  { step, ...sweep }: Sweep,
  before: Vec3,
  after: Vec3,
  turn: Degrees,
  radiusAt: RadiusAt,
  showLength: ShowLength,
): JointCorners {
  const shots = sweep.shots ?? Math.max(2, Math.ceil(turn / SHOT - 1e-9));
  const radius = shots === 1 ? sweep.radius : radiusAt(turn / shots);
  if (sweep.radius < radius) {
    const least = `sweep radius must be at least the shoe's ${showLength(radius)}`;
    throw new RouteError(step, `${least}; got ${showLength(sweep.radius)}`);
  }
  const axis = unit(cross(before, after));
  const half = setback(turn / shots, sweep.radius);
  const takes = setback(turn, sweep.radius) - half;
  const corners = [scale(before, -takes)];
  for (let shot = 1; shot < shots; shot += 1) {
    corners.push(along(corners[shot - 1]!, rotate(before, axis, toRadians((turn * shot) / shots)), 2 * half));
  }
  return { kind: "sweep", step, corners, radii: corners.map(() => radius), takes, shift: ORIGIN };
}
