import { placedPulls } from "../../src/shop/run/placed";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { differentNames } from "./names";
import { curveOf } from "./pieceShape";
import { around, tube } from "./tube";

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
      for (const {
        point: [x, y, z],
      } of rings.flat())
        lines.push(`v ${x} ${y} ${z}`);
      lines.push(...faces(rings.length, before));
      before += rings.length * around;
    }
  }
  return `${lines.join("\n")}\n`;
}

function faces(rings: number, before: number): string[] {
  const corner = (ring: number, at: number): number => before + ring * around + (at % around) + 1;
  return Array.from({ length: rings - 1 }, (_, ring) =>
    Array.from({ length: around }, (_, at) => {
      return `f ${corner(ring, at)} ${corner(ring, at + 1)} ${corner(ring + 1, at + 1)} ${corner(ring + 1, at)}`;
    }),
  ).flat();
}
