import { samplePath } from "../../src/geometry/span";
import { partsToPath, type Path } from "../../src/geometry/path";
import { arcLength, setback } from "../../src/geometry/arc";
import { toDegrees, toRadians, type Radians } from "../../src/geometry/angle";
import { norm, subtract, type Vec3 } from "../../src/geometry/vector";
import type { Piece } from "../../src/shop/run/builtRun";

/** A part of a flat shape [in, °]: a straight line, or an arc told the way drawings do, counterclockwise. */
export type FlatPart =
  | { from: readonly [x: number, y: number]; to: readonly [x: number, y: number] }
  | { center: readonly [x: number, y: number]; radius: number; startAngle: number; endAngle: number };

/** Rotations that keep a bend in the plane of the one before [°]. */
const flatTolerance = 1e-6;

/** Points closer together than this are one [in]. */
const nothing = 1e-9;

/** Whether all bends of a piece lie in one plane. */
export function isFlat({ bends }: Piece): boolean {
  return bends
    .slice(1)
    .every(({ plane }) => Math.min(Math.abs(plane), Math.abs(180 - Math.abs(plane))) < flatTolerance);
}

/**
 * Centerline of a flat piece: from its datum end along x, the first bend to the left. True arcs.
 * @throws Error for a piece that is not flat
 */
export function flatShape(piece: Piece): FlatPart[] {
  if (!isFlat(piece)) throw new Error(`Piece ${piece.number} does not lie in one plane.`);
  const parts: FlatPart[] = [];
  let at: readonly [number, number] = [0, 0];
  let [heading, reached, side] = [0, 0, 1];
  const straight = (length: number): void => {
    if (length < nothing) return;
    const to = [at[0] + length * Math.cos(heading), at[1] + length * Math.sin(heading)] as const;
    parts.push({ from: at, to });
    at = to;
  };
  piece.bends.forEach(({ angle, radius, start, plane }, index) => {
    if (index > 0 && Math.abs(plane) > 90) side = -side;
    straight(start - reached);
    // The center lies square to the way the conduit goes; seen from it, the conduit stands opposite.
    const spoke = heading - (side * Math.PI) / 2;
    const center = [at[0] - radius * Math.cos(spoke), at[1] - radius * Math.sin(spoke)] as const;
    const turn = side * toRadians(angle);
    const [startAngle, endAngle] = [Math.min(spoke, spoke + turn), Math.max(spoke, spoke + turn)].map((radians) =>
      toDegrees(radians as Radians),
    );
    parts.push({ center, radius, startAngle: startAngle!, endAngle: endAngle! });
    at = [center[0] + radius * Math.cos(spoke + turn), center[1] + radius * Math.sin(spoke + turn)];
    heading += turn;
    reached = start + arcLength(angle, radius);
  });
  straight(piece.cutLength - reached);
  return parts;
}

/** Turn between two points of a curve made of straight lines [°]. */
const arcStep = 3;

/** Centerline of any piece [in] as points in space: from its datum end east, the first bend toward north. */
export function pieceCurve(piece: Piece): Vec3[] {
  const legs: number[] = [];
  let from = 0;
  for (const { start, angle, radius } of piece.bends) {
    legs.push(start - from + setback(angle, radius));
    from = start + arcLength(angle, radius) - setback(angle, radius);
  }
  legs.push(piece.cutLength - from);
  const bends = piece.bends.map(({ angle, radius, plane }, index) => ({
    angle,
    radius,
    rotation: index === 0 ? 0 : plane,
  }));
  return curveOf(partsToPath(legs, bends));
}

/** A path's centerline as points; where two bends touch, their common point stands once. */
export function curveOf(path: Path): Vec3[] {
  const points = samplePath(path, arcStep);
  return points.filter((point, index) => index === 0 || norm(subtract(point, points[index - 1]!)) > nothing);
}
