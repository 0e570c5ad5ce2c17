/** The centerline of a path taken span by span, straight or arc, so that any distance along it can be found. */
import { type Degrees, arcAngle } from "./angle";
import { arcLength, setback } from "./arc";
import { legsOf, pathParts, type Path } from "./path";
import { add, along, cross, rotate, subtract, unit, type Vec3 } from "./vector";

interface SpanPlace {
  /** Distance from the datum end along the centerline to where the span begins [in]. */
  from: number;
  /** [in] */
  length: number;
  /** Where the span begins, and its direction there. */
  point: Vec3;
  direction: Vec3;
}

export interface StraightSpan extends SpanPlace {
  kind: "straight";
  /** Leg it lies on, counted from 0. */
  leg: number;
}

export interface ArcSpan extends SpanPlace {
  kind: "arc";
  /** Bend it belongs to, counted from 0. */
  bend: number;
  /** [°] */
  angle: Degrees;
  radius: number;
  center: Vec3;
  /** Axis the conduit turns about, right-handed. */
  normal: Vec3;
}

export type Span = StraightSpan | ArcSpan;

/**
 * Spans from the datum end to the far end: straight, arc, straight, … straight. A straight whose bends touch has no
 * length; one that its bends overlap has a length below 0, which is for the caller to refuse or to show.
 */
export function pathSpans(path: Path): Span[] {
  const { bends, straights } = pathParts(path);
  const { directions } = legsOf(path);
  const spans: Span[] = [];
  let from = 0;
  straights.forEach((length, leg) => {
    const direction = directions[leg]!;
    const before = bends[leg - 1];
    const point = along(path.points[leg]!, direction, before ? setback(before.angle, before.radius) : 0);
    spans.push({ kind: "straight", leg, from, length, point, direction });
    from += length;
    const bend = bends[leg];
    if (!bend) return;
    const { angle, radius } = bend;
    const start = along(point, direction, length);
    const normal = unit(cross(direction, directions[leg + 1]!));
    const center = along(start, cross(normal, direction), radius);
    const arc = arcLength(angle, radius);
    spans.push({ kind: "arc", bend: leg, from, length: arc, point: start, direction, angle, radius, center, normal });
    from += arc;
  });
  return spans;
}

/** Point and direction on a span, `distance` [in] after its beginning. */
export function onSpan(span: Span, distance: number): { point: Vec3; direction: Vec3 } {
  if (span.kind === "straight") {
    return { point: along(span.point, span.direction, distance), direction: span.direction };
  }
  const turned = arcAngle(distance, span.radius);
  const spoke = subtract(span.point, span.center);
  return {
    point: add(span.center, rotate(spoke, span.normal, turned)),
    direction: rotate(span.direction, span.normal, turned),
  };
}

/**
 * Point and direction at a distance [in] along the centerline from the datum end, 0 to the developed length.
 *
 * @throws RangeError outside that.
 */
export function pointAlong(path: Path, distance: number): { point: Vec3; direction: Vec3 } {
  const spans = pathSpans(path);
  const last = spans[spans.length - 1]!;
  const end = last.from + last.length;
  if (!(distance >= 0 && distance <= end)) throw new RangeError(`distance must be from 0 to ${end}; got ${distance}.`);
  const span = spans.find(({ from, length }) => distance <= from + length) ?? last;
  return onSpan(span, distance - span.from);
}

/**
 * The centerline as a chain of points for a drawing: the ends, the tangent points, and arc points no more than
 * `maxStepDegrees` of turn apart. All points lie on the centerline.
 *
 * @example samplePath({ points: [[0, 0, 0], [0, 0, 40], [30, 0, 40]], radii: [5] }, 30).length //=> 6
 */
export function samplePath(path: Path, maxStepDegrees: number): Vec3[] {
  if (!(maxStepDegrees > 0)) throw new RangeError(`maxStepDegrees must be above 0; got ${maxStepDegrees}.`);
  const points: Vec3[] = [path.points[0]!];
  for (const span of pathSpans(path)) {
    const steps = span.kind === "arc" ? Math.ceil(span.angle / maxStepDegrees - 1e-9) : 1;
    for (let step = 1; step <= steps; step += 1) points.push(onSpan(span, (span.length * step) / steps).point);
  }
  return points;
}
