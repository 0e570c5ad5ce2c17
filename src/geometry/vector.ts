import { atan2, cos, sin, type Radians } from "./angle";

/**
 * Vectors in the frame of a run: east, north and up of its datum, right-handed. Lengths in inches; angles in radians
 * here (degrees begin at path.ts, the public edge of this room).
 */
export type Vec3 = readonly [east: number, north: number, up: number];

export const ORIGIN: Vec3 = [0, 0, 0];
export const EAST: Vec3 = [1, 0, 0];
export const NORTH: Vec3 = [0, 1, 0];
export const UP: Vec3 = [0, 0, 1];

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const subtract = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vec3, factor: number): Vec3 => [a[0] * factor, a[1] * factor, a[2] * factor];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const norm = (a: Vec3): number => Math.hypot(a[0], a[1], a[2]);

/** `point` moved `distance` along `direction`. */
export const along = (point: Vec3, direction: Vec3, distance: number): Vec3 => add(point, scale(direction, distance));

/** `a` at length 1. A zero vector has no direction: the caller rules it out first; it throws a RangeError here. */
export function unit(a: Vec3): Vec3 {
  const length = norm(a);
  if (!(length > 0)) throw new RangeError("a zero vector has no direction");
  return scale(a, 1 / length);
}

/** Angle between two directions [rad], 0 to π; steady near both ends, where the arc cosine is not. */
export const angleBetween = (a: Vec3, b: Vec3): Radians => atan2(norm(cross(a, b)), dot(a, b));

/** The part of `a` square to the unit vector `direction`. */
export const squareTo = (a: Vec3, direction: Vec3): Vec3 => subtract(a, scale(direction, dot(a, direction)));

/** `a` turned by `angle` about the unit vector `axis`, right-handed. */
export function rotate(a: Vec3, axis: Vec3, angle: Radians): Vec3 {
  const cosine = cos(angle);
  return add(add(scale(a, cosine), scale(cross(axis, a), sin(angle))), scale(axis, dot(axis, a) * (1 - cosine)));
}
