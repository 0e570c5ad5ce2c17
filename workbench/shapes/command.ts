import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, extname, join } from "node:path";
import { builtRows, buildJob, unbuiltRows } from "../../src/shop/job/job";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { decodeText } from "../workbook/csv/csv";
import { runsFromCsv } from "../workbook/csv/runsFromCsv";
import { pieceDxf, runsDxf } from "./dxf";
import { runsGlb } from "./gltf";
import { runsIfc, timeNow } from "./ifc";
import { differentNames } from "./names";
import { runsObj } from "./obj";

const usage = `usage: npm run shapes -- runs.csv folder

Writes into the folder: runs.dxf, the centerlines of all runs; runs.ifc, the runs for a building model (IFC4); runs.glb and
runs.obj, the runs as tubes (glTF in meters, y up); and a DXF of the shape of every piece that has a bend. Inches, x east, y north, z up; a run begins at its Start, or at 0 0 0 without one.`;

/** Runs the command line and gives the exit code: 0, 1 when a run was left out, 2 for wrong usage or an unreadable file. */
export function main(given: readonly string[]): number {
  try {
    const [source, folder, ...more] = given;
    if (!source || !folder || more.length > 0 || source.startsWith("--")) throw new Error(usage);
    const { headers, rows } = runsFromCsv(decodeText(readFileSync(source)), basename(source));
    const { runs, problems } = build([headers, ...rows]);
    mkdirSync(folder, { recursive: true });
    if (runs.length > 0) {
      writeFileSync(join(folder, "runs.dxf"), runsDxf(runs));
      writeFileSync(join(folder, "runs.ifc"), runsIfc(runs, basename(source, extname(source)), timeNow()));
      writeFileSync(join(folder, "runs.glb"), runsGlb(runs));
      writeFileSync(join(folder, "runs.obj"), runsObj(runs));
    }
    const fileName = differentNames();
    const pieces = runs.flatMap(({ run, pulls }) =>
      pulls.flatMap((pull) => pull.pieces.map((piece) => ({ run, piece }))),
    );
    const bent = pieces.filter(({ piece }) => piece.bends.length > 0);
    for (const { run, piece } of bent) {
      writeFileSync(join(folder, `${fileName(`piece ${run.name} ${piece.number}`)}.dxf`), pieceDxf(piece));
    }
    process.stdout.write(`${folder}: ${runs.length} runs, ${bent.length} bent pieces.\n`);
    for (const problem of problems) process.stderr.write(`left out: ${problem}\n`);
    return problems.length > 0 ? 1 : 0;
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    return 2;
  }
}

/** The runs that can be built, by the built-in shoes, and in words those that cannot. */
export function build(cells: unknown[][]): { runs: BuiltRun[]; problems: string[] } {
  const job = buildJob({ runs: cells });
  return {
    runs: builtRows(job).map(({ built }) => built),
    problems: unbuiltRows(job).map(({ name, problem }) => `${name}: ${problem}`),
  };
}
