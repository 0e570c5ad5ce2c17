import { times, toRadians } from "../../src/geometry/angle";
import {
  along,
  angleBetween,
  cross,
  EAST,
  norm,
  rotate,
  subtract,
  unit,
  UP,
  type Vec3,
} from "../../src/geometry/vector";

/** Points around the conduit. */
export const around = 16;

/** A point of a tube [in], and the direction outward there. */
export interface TubePoint {
  readonly point: Vec3;
  readonly outward: Vec3;
}

/** A ring of points square to the centerline at each of its points, carried along without twist. */
export function tube(points: readonly Vec3[], radius: number): TubePoint[][] {
  const ahead = points.slice(1).map((point, index) => unit(subtract(point, points[index]!)));
  const first = ahead[0]!;
  let side = unit(cross(first, Math.abs(first[2]) > 0.9 ? EAST : UP));
  return points.map((point, index) => {
    const [from, to] = [ahead[Math.max(0, index - 1)]!, ahead[Math.min(index, ahead.length - 1)]!];
    const axis = cross(from, to);
    const turn = norm(axis) > 1e-12 ? angleBetween(from, to) : toRadians(0);
    // Halfway between the two directions.
    const half = turn > 0 ? rotate(side, unit(axis), times(turn, 0.5)) : side;
    const direction = turn > 0 ? rotate(from, unit(axis), times(turn, 0.5)) : to;
    const ring = Array.from({ length: around }, (_, at) => {
      const outward = rotate(half, direction, toRadians((360 * at) / around));
      return { point: along(point, outward, radius), outward };
    });
    if (turn > 0) side = rotate(side, unit(axis), turn);
    return ring;
  });
}
