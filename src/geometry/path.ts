/**
 * A path is the centerline of bent conduit: corner points and the radius at each inner corner. The same path told the
 * way a bender is worked is legs, bends and the rotation between bends; this file turns one into the other.
 *
 * Sign of a rotation: right-handed about the direction of travel, so positive is clockwise seen from the datum end
 * toward the far end. Formulas: standard vector algebra, derived beside each.
 */
import { SAME_PLACE } from "../units/tolerances";
import { atan2, toDegrees, toRadians, type Degrees } from "./angle";
import { InputError } from "../units/errors";
import { gain, setback } from "./arc";
import { along, angleBetween, cross, dot, EAST, norm, ORIGIN, rotate, squareTo, subtract, unit, UP } from "./vector";
import type { Vec3 } from "./vector";

export interface Path {
  /** Corner points from the datum end to the far end [in], both ends included: two or more. */
  points: readonly Vec3[];
  /** Centerline radius at each inner corner [in]: two fewer than points. */
  radii: readonly number[];
}

export interface PathBend {
  /** What the conduit turns by [°], above 0 and below 180. */
  angle: Degrees;
  /** Centerline radius [in]. */
  radius: number;
  /** From the plane of the bend before to the plane of this one [°], above −180 to 180; 0 for the first. */
  rotation: Degrees;
}

export interface PathParts {
  /** From corner to corner [in]: one more than bends. */
  legs: number[];
  bends: PathBend[];
  /** What is straight of each leg, between tangent points [in]. Below 0 the leg is too short for its bends. */
  straights: number[];
  /** Length of the centerline along straights and arcs [in]: legs less gains. */
  developed: number;
}

/**
 * Legs, bends, straights and developed length of a path.
 *
 * @example pathParts({ points: [[0, 0, 0], [0, 0, 40], [30, 0, 40]], radii: [4] }).bends
 * //=> [{ angle: 90, radius: 4, rotation: 0 }]
 * @throws InputError where two points fall together, a corner does not turn, or turns straight back.
 */
export function pathParts(path: Path): PathParts {
  const { directions, legs } = legsOf(path);
  const bends: PathBend[] = [];
  let before: Vec3 | undefined;
  path.radii.forEach((radius, corner) => {
    const [from, to] = [directions[corner]!, directions[corner + 1]!];
    const turn = angleBetween(from, to);
    if (turn < SAME_PLACE)
      throw new InputError(`point ${corner + 2}: the path does not turn there; leave the point out.`);
    if (turn > Math.PI - SAME_PLACE) {
      throw new InputError(`point ${corner + 2}: the path turns straight back; a bend must be below 180°.`);
    }
    const normal = unit(cross(from, to));
    bends.push({ angle: toDegrees(turn), radius, rotation: before ? rotationBetween(before, normal, from) : 0 });
    before = normal;
  });
  const developed = bends.reduce((sum, { angle, radius }) => sum - gain(angle, radius), total(legs));
  return { legs, bends, straights: straightsOf(legs, bends), developed };
}

/** Length and unit direction of each leg of a path. @throws InputError where two points fall together. */
export function legsOf({ points, radii }: Path): { legs: number[]; directions: Vec3[] } {
  if (points.length < 2) throw new InputError(`a path needs at least 2 points; got ${points.length}.`);
  if (radii.length !== points.length - 2) {
    throw new InputError(`a path of ${points.length} points takes ${points.length - 2} radii; got ${radii.length}.`);
  }
  const bad = radii.findIndex((radius) => !(radius > 0 && radius < Infinity));
  if (bad >= 0) throw new InputError(`radius ${bad + 1} must be above 0; got ${radii[bad]}.`);
  const legs = points.slice(1).map((point, index) => subtract(point, points[index]!));
  const directions = legs.map((leg, index) => {
    if (norm(leg) > SAME_PLACE) return unit(leg);
    throw new InputError(`points ${index + 1} and ${index + 2} fall together; a leg must be longer than 0.`);
  });
  return { legs: legs.map(norm), directions };
}

/** What is straight of each leg [in]: the leg less the setbacks of the bends at its ends. */
export function straightsOf(legs: readonly number[], bends: readonly PathBend[]): number[] {
  const setbacks = [0, ...bends.map(({ angle, radius }) => setback(angle, radius)), 0];
  return legs.map((leg, index) => leg - setbacks[index]! - setbacks[index + 1]!);
}

/**
 * The path made of `legs` [in] and `bends`, laid out from `start` along `direction`, the first bend turning
 * right-handed about `normal`. The inverse of {@link pathParts}.
 *
 * @example partsToPath([40, 30], [{ angle: 90, radius: 4, rotation: 0 }]).points
 * //=> [[0, 0, 0], [40, 0, 0], [40, 30, 0]], to rounding
 * @throws InputError unless legs are above 0, angles above 0 and below 180, and there is one more leg than bends.
 */
export function partsToPath(
  legs: readonly number[],
  bends: readonly PathBend[],
  start: Vec3 = ORIGIN,
  direction: Vec3 = EAST,
  normal: Vec3 = UP,
): Path {
  if (legs.length !== bends.length + 1) {
    throw new InputError(`${bends.length} bends take ${bends.length + 1} legs; got ${legs.length}.`);
  }
  let travel = unit(direction);
  const square = squareTo(normal, travel);
  if (norm(square) < SAME_PLACE) throw new InputError("the first bend cannot turn about the direction of travel.");
  let about = unit(square);
  const points: Vec3[] = [start];
  legs.forEach((leg, index) => {
    if (!(leg > 0 && leg < Infinity)) throw new InputError(`leg ${index + 1} must be longer than 0; got ${leg}.`);
    points.push(along(points[index]!, travel, leg));
    const bend = bends[index];
    if (!bend) return;
    if (!(bend.angle > 0 && bend.angle < 180)) {
      throw new InputError(`angle of bend ${index + 1} must be above 0° and below 180°; got ${bend.angle}°.`);
    }
    about = unit(squareTo(rotate(about, travel, toRadians(bend.rotation)), travel));
    travel = unit(rotate(travel, about, toRadians(bend.angle)));
  });
  return { points, radii: bends.map(({ radius }) => radius) };
}

/** Right-handed angle [°] about `travel` from one plane's normal to the next one's; both square to `travel`. */
function rotationBetween(from: Vec3, to: Vec3, travel: Vec3): number {
  const angle = toDegrees(atan2(dot(cross(from, to), travel), dot(from, to)));
  return angle <= -180 + SAME_PLACE ? 180 : angle + 0;
}

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
