/** Which way a step turns or moves a run that goes along `heading`. Each answers undefined when there is no such way. */
import { toRadians, type Degrees } from "../geometry/angle";
import { add, cross, dot, norm, rotate, scale, squareTo, unit, type Vec3 } from "../geometry/vector";
import { NEAR_DIRECTION } from "../units/tolerances";
import { directionVector, directionWord } from "./directions";
import type { Direction, Rise } from "./text/types";

/** Unit direction square to `heading` in the plane toward `toward`; undefined when the run goes that way, or from it. */
export function sideToward(toward: Direction, heading: Vec3): Vec3 | undefined {
  const side = squareTo(directionVector(toward), heading);
  return norm(side) < NEAR_DIRECTION ? undefined : unit(side);
}

/** `heading` turned by `angle` [°] toward `toward`; on one of the six directions exactly, where it comes to one. */
export function turnToward(toward: Direction, angle: Degrees, heading: Vec3): Vec3 | undefined {
  const side = sideToward(toward, heading);
  if (!side) return undefined;
  const turned = unit(rotate(heading, cross(heading, side), toRadians(angle)));
  const word = directionWord(turned);
  return word ? directionVector(word) : turned;
}

/** Side and true rise [in] of an offset by one rise, or by two that are square to each other seen along the run. */
export function offsetSide(rises: readonly Rise[], heading: Vec3): { side: Vec3; rise: number } | undefined {
  const sides = rises.map(({ toward }) => sideToward(toward, heading));
  let sum: Vec3 = [0, 0, 0];
  for (const [index, side] of sides.entries()) {
    if (!side) return undefined;
    if (sides.some((other, place) => place < index && other && Math.abs(dot(other, side)) > NEAR_DIRECTION))
      return undefined;
    sum = add(sum, scale(side, rises[index]!.rise));
  }
  return { side: unit(sum), rise: norm(sum) };
}
