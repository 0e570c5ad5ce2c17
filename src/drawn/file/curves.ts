import { atan2, cos, plus, sin, times, toRadians, type Radians } from "../../geometry/angle";
import type { Vec3 } from "../../geometry/vector";

/** Most turn between two points taken on an arc. */
const STEP = toRadians(3);

/** Points on an arc in the plane of its own frame, both ends included; `turn` [rad] is positive counterclockwise. */
export function arcPoints([x, y, z]: Vec3, radius: number, from: Radians, turn: Radians): Vec3[] {
  const steps = Math.max(2, Math.ceil(Math.abs(turn) / STEP - 1e-9));
  return Array.from({ length: steps + 1 }, (_, at) => {
    const angle = plus(from, times(turn, at / steps));
    return [x + radius * cos(angle), y + radius * sin(angle), z];
  });
}

/** Points from one vertex to the next of a flat polyline; its bulge is the tangent of a quarter of the arc's turn. */
export function bulgePoints(from: Vec3, to: Vec3, bulge: number): Vec3[] {
  const chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (bulge === 0 || chord === 0) return [from, to];
  const turn = times(atan2(bulge, 1), 4);
  const radius = chord / (2 * sin(times(turn, 0.5)));
  const square = plus(toRadians(90), times(turn, -0.5));
  const toCenter = plus(atan2(to[1] - from[1], to[0] - from[0]), square);
  const center: Vec3 = [from[0] + radius * cos(toCenter), from[1] + radius * sin(toCenter), from[2]];
  const start = atan2(from[1] - center[1], from[0] - center[0]);
  const points = arcPoints(center, Math.abs(radius), start, turn);
  return [from, ...points.slice(1, -1), to];
}

/** Points taken between two knots of a spline. */
const BETWEEN_KNOTS = 8;

/** Points on a B-spline, weighted or not, by de Boor's algorithm. */
export function splinePoints(
  degree: number,
  knots: readonly number[],
  control: readonly Vec3[],
  weights: readonly number[],
): Vec3[] {
  const spans = knots.slice(degree, control.length + 1);
  const values = spans.slice(1).flatMap((to, index) => {
    const from = spans[index]!;
    if (!(to > from)) return [];
    return Array.from({ length: BETWEEN_KNOTS }, (_, at) => from + ((to - from) * at) / BETWEEN_KNOTS);
  });
  return [...values, spans.at(-1)!].map((value) => deBoor(degree, knots, control, weights, value));
}

function deBoor(
  degree: number,
  knots: readonly number[],
  control: readonly Vec3[],
  weights: readonly number[],
  value: number,
): Vec3 {
  let span = degree;
  while (span < control.length - 1 && value >= knots[span + 1]!) span += 1;
  const points = Array.from({ length: degree + 1 }, (_, at) => {
    const place = span - degree + at;
    const weight = weights[place] ?? 1;
    return [...control[place]!.map((part) => part * weight), weight];
  });
  for (let round = 1; round <= degree; round += 1) {
    for (let at = degree; at >= round; at -= 1) {
      const low = knots[span - degree + at]!;
      const wide = knots[span + 1 + at - round]! - low;
      const share = wide > 0 ? (value - low) / wide : 0;
      points[at] = points[at]!.map((part, axis) => (1 - share) * points[at - 1]![axis]! + share * part);
    }
  }
  const [x, y, z, weight] = points[degree]!;
  return [x! / weight!, y! / weight!, z! / weight!];
}
