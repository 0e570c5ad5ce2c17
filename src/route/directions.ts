import { SAME_DIRECTION } from "../units/tolerances";
import type { Vec3 } from "../geometry/vector";
import { DIRECTIONS, type Direction } from "./text/types";

const UNITS: Record<Direction, Vec3> = {
  up: [0, 0, 1],
  down: [0, 0, -1],
  north: [0, 1, 0],
  south: [0, -1, 0],
  east: [1, 0, 0],
  west: [-1, 0, 0],
};

/** Unit vector of a direction. */
export const directionVector = (direction: Direction): Vec3 => UNITS[direction];

/** Word for a unit vector, when it is one of the six; undefined for a slanting one. */
export const directionWord = (vector: Vec3): Direction | undefined =>
  DIRECTIONS.find((word) => Math.hypot(...UNITS[word].map((value, axis) => value - vector[axis]!)) < SAME_DIRECTION);
