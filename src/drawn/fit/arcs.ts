import { sin, times, toRadians, type Radians } from "../../geometry/angle";
import { add, along, angleBetween, cross, dot, norm, scale, subtract, unit, type Vec3 } from "../../geometry/vector";

/** Where a line leaves a place: a ray. */
export interface Ray {
  readonly at: Vec3;
  readonly way: Vec3;
}

/** An arc that leaves a ray and ends somewhere. */
export interface FoundArc {
  readonly radius: number;
  readonly turn: Radians;
  /** Direction at its end. */
  readonly way: Vec3;
  /** Farthest a drawn point stands off it [in]. */
  readonly off: number;
}

/** Most turn of one chord: coarser arcs are corners. */
const COARSEST = toRadians(25);
/** Least turn of an arc. */
const LEAST = toRadians(0.2);

/**
 * The arc that leaves a ray at `points[first]` and goes through `points[last]`: there is just one, for the angle between the
 * ray and the chord is half its turn. Undefined where the points between stand off it, or its chords are not alike.
 *
 * @param near how far a point may stand off [in]
 */
export function arcFrom(
  ray: Ray,
  points: readonly Vec3[],
  first: number,
  last: number,
  near: number,
): FoundArc | undefined {
  const [from, to] = [points[first]!, points[last]!];
  const chord = subtract(to, from);
  const half = angleBetween(ray.way, chord);
  const count = last - first;
  const turn = times(half, 2);
  if (turn < LEAST || half > Math.PI / 2 - 0.01 || turn / count > COARSEST) return undefined;
  const normal = unit(cross(ray.way, chord));
  const radius = norm(chord) / (2 * sin(half));
  const center = along(from, cross(normal, ray.way), radius);
  const each = 2 * radius * sin(times(half, 1 / count));
  let off = 0;
  for (let at = first + 1; at <= last; at += 1) {
    const length = norm(subtract(points[at]!, points[at - 1]!));
    if (Math.abs(length - each) > 2 * near + 0.02 * each) return undefined;
    const spoke = subtract(points[at]!, center);
    const own = Math.hypot(norm(spoke) - radius, dot(spoke, normal));
    if (own > near) return undefined;
    off = Math.max(off, own);
  }
  const side = unit(chord);
  return { radius, turn, way: unit(subtract(scale(side, 2 * dot(ray.way, side)), ray.way)), off };
}

/** Where two lines come nearest to each other: how far along each, the middle between, and the gap. */
export function meeting(one: Ray, other: Ray): { onOne: number; onOther: number; at: Vec3; gap: number } | undefined {
  const cosine = dot(one.way, other.way);
  const slant = 1 - cosine * cosine;
  if (slant < 1e-12) return undefined;
  const between = subtract(other.at, one.at);
  const [a, b] = [dot(between, one.way), dot(between, other.way)];
  const onOne = (a - b * cosine) / slant;
  const onOther = (a * cosine - b) / slant;
  const [p, q] = [along(one.at, one.way, onOne), along(other.at, other.way, onOther)];
  return { onOne, onOther, at: scale(add(p, q), 0.5), gap: norm(subtract(p, q)) };
}
