import { dot, norm, subtract, unit, type Vec3 } from "../../geometry/vector";
import { sideToward, turnToward } from "../../route/sideways";
import { DIRECTIONS, type Direction, type Rise } from "../../route/text/types";

/** Two sides of a run are square to each other to this [1]. */
const SQUARE = 1e-6;

/** The direction word toward which a run along `heading` turns to get to `way`; undefined where none leads nearer than `near` [1]. */
export const turnWord = (heading: Vec3, way: Vec3, angle: number, near: number): Direction | undefined =>
  DIRECTIONS.find((word) => {
    const turned = turnToward(word, angle, heading);
    return turned !== undefined && norm(subtract(turned, way)) < near;
  });

/** The word for the side an offset or saddle goes to. */
export const sideWord = (heading: Vec3, side: Vec3, near: number): Direction | undefined =>
  DIRECTIONS.find((word) => {
    const own = sideToward(word, heading);
    return own !== undefined && norm(subtract(own, side)) < near;
  });

/** A side as one rise, or as two square to each other; undefined where no words lead there. */
export function risesToward(heading: Vec3, side: Vec3, rise: number, near: number): Rise[] | undefined {
  const one = sideWord(heading, side, near);
  if (one) return [{ rise, toward: one }];
  const sides = DIRECTIONS.flatMap((toward) => {
    const own = sideToward(toward, heading);
    const share = own ? dot(own, side) : 0;
    return own && share > near ? [{ toward, own, share }] : [];
  });
  for (const [index, first] of sides.entries()) {
    const second = sides.slice(index + 1).find(({ own }) => Math.abs(dot(own, first.own)) < SQUARE);
    if (second && norm(subtract(side, unitSum(first, second))) < near) {
      return [first, second].map(({ toward, share }) => ({ rise: rise * share, toward }));
    }
  }
  return undefined;
}

interface Share {
  readonly own: Vec3;
  readonly share: number;
}

const unitSum = (a: Share, b: Share): Vec3 =>
  unit([0, 1, 2].map((axis) => a.own[axis]! * a.share + b.own[axis]! * b.share) as unknown as Vec3);
