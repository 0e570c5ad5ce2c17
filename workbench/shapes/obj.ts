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
import { placedPulls } from "../../src/shop/run/placed";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { differentNames } from "./names";
import { curveOf } from "./pieceShape";

/** Points around the conduit. */
const around = 16;

/**
 * Runs as tubes in the Wavefront OBJ format, a group for each run [in]: x east, y north, z up of the job's zero; as
 * thick as the conduit is outside, open at the ends.
 */
export function runsObj(runs: readonly BuiltRun[]): string {
  const lines = ["# Raceway Ledger: conduit runs, inches, x east, y north, z up"];
  const groupName = differentNames();
  let before = 0;
  for (const built of runs) {
    lines.push(`g ${groupName(built.run.name)}`);
    for (const path of placedPulls(built)) {
      const rings = tube(curveOf(path), built.shoe.outsideDiameter / 2);
      for (const [x, y, z] of rings.flat()) lines.push(`v ${x} ${y} ${z}`);
      lines.push(...faces(rings.length, before));
      before += rings.length * around;
    }
  }
  return `${lines.join("\n")}\n`;
}

/** A ring of points square to the centerline at each of its points, carried along without twist. */
function tube(points: readonly Vec3[], radius: number): Vec3[][] {
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
    const ring = Array.from({ length: around }, (_, at) =>
      along(point, rotate(half, direction, toRadians((360 * at) / around)), radius),
    );
    if (turn > 0) side = rotate(side, unit(axis), turn);
    return ring;
  });
}

function faces(rings: number, before: number): string[] {
  const corner = (ring: number, at: number): number => before + ring * around + (at % around) + 1;
  return Array.from({ length: rings - 1 }, (_, ring) =>
    Array.from({ length: around }, (_, at) => {
      return `f ${corner(ring, at)} ${corner(ring, at + 1)} ${corner(ring + 1, at + 1)} ${corner(ring + 1, at)}`;
    }),
  ).flat();
}
