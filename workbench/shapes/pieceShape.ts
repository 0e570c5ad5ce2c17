import { samplePath } from "../../src/geometry/span";
import { partsToPath, type Path } from "../../src/geometry/path";
import { arcLength, setback } from "../../src/geometry/arc";
import { toRadians } from "../../src/geometry/angle";
import { norm, subtract, type Vec3 } from "../../src/geometry/vector";
import type { Piece } from "../../src/shop/buildRun";

/** A corner of a flat shape; the way to the next is straight, or an arc where `bulge` is not 0. */
export interface FlatPoint {
  x: number;
  y: number;
  /** Tangent of a quarter of the arc's angle, above 0 to the left (AutoCAD DXF reference, LWPOLYLINE, code 42). */
  bulge: number;
}

/** Rotations that keep a bend in the plane of the one before [°]. */
const flatTolerance = 1e-6;

/** Whether all bends of a piece lie in one plane. */
export function isFlat({ bends }: Piece): boolean {
  return bends
    .slice(1)
    .every(({ plane }) => Math.min(Math.abs(plane), Math.abs(180 - Math.abs(plane))) < flatTolerance);
}

/**
 * Centerline of a flat piece [in]: from its datum end along x, the first bend to the left. True arcs.
 * @throws Error for a piece that is not flat
 */
export function flatShape(piece: Piece): FlatPoint[] {
  if (!isFlat(piece)) throw new Error(`Piece ${piece.number} does not lie in one plane.`);
  const points: FlatPoint[] = [{ x: 0, y: 0, bulge: 0 }];
  let [x, y, heading, reached, side] = [0, 0, 0, 0, 1];
  const go = (distance: number, toward: number): void => {
    x += distance * Math.cos(toward);
    y += distance * Math.sin(toward);
  };
  piece.bends.forEach(({ angle, radius, start, plane }, index) => {
    if (index > 0 && Math.abs(plane) > 90) side = -side;
    const turn = side * toRadians(angle);
    go(start - reached, heading);
    points.push({ x, y, bulge: Math.tan(turn / 4) });
    go(2 * radius * Math.sin(Math.abs(turn) / 2), heading + turn / 2);
    points.push({ x, y, bulge: 0 });
    heading += turn;
    reached = start + arcLength(angle, radius);
  });
  go(piece.cutLength - reached, heading);
  points.push({ x, y, bulge: 0 });
  return points;
}

/** Turn between two points of a curve made of straight lines [°]. */
const arcStep = 3;
/** Points closer together than this are one [in]. */
const nothing = 1e-9;

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
