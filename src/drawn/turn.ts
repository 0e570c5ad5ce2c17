import { atan2, toDegrees, toRadians } from "../geometry/angle";
import { rotate, UP, type Vec3 } from "../geometry/vector";
import type { DrawnRun } from "./fit/chain";

/** A drawing within this of the points of the compass is not turned [°]. */
const STRAIGHT = 0.02;
/** Directions are counted in steps of this [°]. */
const STEP = 0.25;

/**
 * How far a drawing is turned from north [°], above −45 to 45, counterclockwise: where most of the length of its level
 * segments lies, quarter turns apart.
 */
export function turnOf(runs: readonly DrawnRun[]): number {
  const votes = new Map<number, { length: number; sum: number }>();
  for (const points of runs.flatMap(({ pulls }) => pulls)) {
    points.slice(1).forEach((point, at) => {
      const [x, y] = [point[0] - points[at]![0], point[1] - points[at]![1]];
      const length = Math.hypot(x, y);
      if (length === 0) return;
      const angle = ((toDegrees(atan2(y, x)) + 405) % 90) - 45;
      const step = Math.round(angle / STEP);
      const vote = votes.get(step) ?? { length: 0, sum: 0 };
      votes.set(step, { length: vote.length + length, sum: vote.sum + angle * length });
    });
  }
  const best = [...votes.values()].sort((a, b) => b.length - a.length)[0];
  const turn = best ? best.sum / best.length : 0;
  return Math.abs(turn) < STRAIGHT ? 0 : turn;
}

/** A point turned about the vertical [°], counterclockwise. */
export function turnedBy(degrees: number): (point: Vec3) => Vec3 {
  return (point) => rotate(point, UP, toRadians(degrees));
}
