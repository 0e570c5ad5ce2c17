/** Random runs drawn the way a drawing program does: chords for arcs, coordinates in its unit with so many decimals. */
import fc from "fast-check";
import { samplePath } from "../../src/geometry/span";
import type { Vec3 } from "../../src/geometry/vector";
import { pullPath, refuseShortLegs } from "../../src/route/problems";
import { resolveRoute } from "../../src/route/resolveRoute";
import type { Pull } from "../../src/route/text/types";
import { writeRoute } from "../../src/route/text/writeRoute";
import { radiusOf } from "../../src/shop/shoe/springback";
import { readShoes } from "../../src/shop/shoe/shoeBook";
import { randomRoute } from "../support/randomRoutes";

export interface RandomRun {
  name: string;
  raceway: string;
  size: string;
  route: string;
  pulls: Pull[];
}

const CONDUITS = [["EMT", "1/2"], ["EMT", "3/4"], ["EMT", "1"], ["IMC", "3/4"], ["RMC", "1"]] as const; // prettier-ignore

/** The same runs for the same seed; routes whose legs are too short for their bends are passed over. */
export function randomRuns(count: number, seed: number): RandomRun[] {
  const shoes = readShoes(null);
  const runs: RandomRun[] = [];
  for (const steps of fc.sample(randomRoute, { numRuns: 2 * count, seed })) {
    const [raceway, size] = CONDUITS[runs.length % CONDUITS.length]!;
    const found = shoes.lookUp(raceway, size);
    if (!("shoe" in found)) throw new Error(`no shoe for ${raceway} ${size}`);
    const { pulls } = resolveRoute(steps, (angle) => radiusOf(found.shoe, angle));
    try {
      refuseShortLegs(pulls);
    } catch {
      continue;
    }
    runs.push({ name: `R-${runs.length + 1}`, raceway, size, route: writeRoute(steps), pulls });
    if (runs.length === count) return runs;
  }
  throw new Error("not enough runs");
}

/** Inches in a unit, its number in $INSUNITS (AutoCAD DXF reference), and the decimals drawn with. */
export const UNITS = {
  "inches, 4 decimals": { inches: 1, code: 1, decimals: 4 },
  "feet, 5 decimals": { inches: 12, code: 2, decimals: 5 },
  "millimeters, 1 decimal": { inches: 1 / 25.4, code: 4, decimals: 1 },
  "meters, 3 decimals": { inches: 1 / 0.0254, code: 6, decimals: 3 },
} as const;

/** An ASCII DXF of runs, a layer and a place of its own for each. @param step turn of a chord [°], by the run's place */
export function drawingOf(
  runs: readonly RandomRun[],
  unit: (typeof UNITS)[keyof typeof UNITS],
  step: (at: number) => number,
): string {
  const lines: (string | number)[] = [
    0,
    "SECTION",
    2,
    "HEADER",
    9,
    "$INSUNITS",
    70,
    unit.code,
    0,
    "ENDSEC",
    0,
    "SECTION",
    2,
    "ENTITIES",
  ];
  const write = ([x, y, z]: Vec3, at: number) => {
    const moved = [x + 517.25 * at, y - 31.5 * at, z + 96];
    moved.forEach((value, axis) => lines.push(10 + 10 * axis, (value / unit.inches).toFixed(unit.decimals)));
  };
  runs.forEach(({ name, raceway, size, pulls }, at) => {
    const layer = `${name} ${raceway} ${size}`;
    pulls.forEach((pull, index) => {
      lines.push(0, "POLYLINE", 8, layer, 70, 8);
      for (const point of samplePath(pullPath(pull), step(at))) {
        lines.push(0, "VERTEX", 8, layer);
        write(point, at);
        lines.push(70, 32);
      }
      lines.push(0, "SEQEND", 8, layer);
      if (index === pulls.length - 1) return;
      lines.push(0, "POINT", 8, layer);
      write(pull.points.at(-1)!, at);
    });
  });
  return [...lines, 0, "ENDSEC", 0, "EOF", ""].join("\n");
}
