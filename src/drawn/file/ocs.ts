import { add, cross, scale, unit, type Vec3 } from "../../geometry/vector";

/** Turns a point of one frame into a point of another. */
export type Transform = (point: Vec3) => Vec3;

/** What counts as pointing up (AutoCAD DXF reference, arbitrary axis algorithm). */
const NEAR_UP = 1 / 64;

/**
 * From an object's own frame to the drawing's, by the object's extrusion: the arbitrary axis algorithm of the AutoCAD DXF
 * reference.
 */
export function fromOwnFrame(extrusion: Vec3): Transform {
  const z = unit(extrusion);
  const isUp = Math.abs(z[0]) < NEAR_UP && Math.abs(z[1]) < NEAR_UP;
  const x = unit(cross(isUp ? [0, 1, 0] : [0, 0, 1], z));
  const y = cross(z, x);
  return ([a, b, c]) => add(add(scale(x, a), scale(y, b)), scale(z, c));
}
