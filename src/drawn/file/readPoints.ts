import { readTable, type Column } from "../../table/headerTable";
import { InputError } from "../../units/errors";
import { toInches } from "../../units/length";
import type { Vec3 } from "../../geometry/vector";
import type { Drawing, DrawnLine, NotRead } from "./drawing";

/** Columns of a list of points. */
export const POINT_COLUMNS: readonly Column[] = [
  { name: "Run", required: true },
  { name: "East", required: true, also: ["X", "Easting"] },
  { name: "North", required: true, also: ["Y", "Northing"] },
  { name: "Up", required: true, also: ["Z", "Elevation"], zero: true },
  { name: "Raceway", also: ["Conduit"] },
  { name: "Size", also: ["Trade size"] },
];

/**
 * Reads a list of points as a drawing: the points of a run follow one another and are its line. Either all coordinates are
 * plain numbers in the list's unit, or all but zeros say their own (`12' 6"`), which makes the list one of inches. A run
 * that has a row which cannot be read is left out whole: without that point it would be another run.
 *
 * @param cells with a header row; a run's raceway and size stand in any of its rows
 * @throws InputError when a needed column is missing
 */
export function readPoints(cells: readonly (readonly unknown[])[], source: string): Drawing {
  const { rows } = readTable(
    cells,
    source,
    POINT_COLUMNS.map((column) => ({ ...column, zero: true })),
  );
  const hasUnits = rows.some((row) => AXES.some((axis) => saysUnit(row.get(axis))));
  const runs = new Map<string, Vec3[]>();
  const broken = new Set<string>();
  const conduits = new Map<string, { raceway: string; size: string }>();
  const notRead: NotRead[] = [];
  let decimals = 0;
  for (const row of rows) {
    const name = String(row.get("Run") ?? "").trim();
    try {
      if (name === "") throw new InputError("it names no run");
      const texts = AXES.map((axis) => coordinate(row.get(axis), axis, hasUnits));
      const point = texts.map((text) => Number(text)) as unknown as Vec3;
      decimals = Math.max(decimals, ...texts.map((text) => Math.min(8, /\.(\d*?)0*$/.exec(text)?.[1]?.length ?? 0)));
      runs.set(name, [...(runs.get(name) ?? []), point]);
      const said = { raceway: String(row.get("Raceway") ?? "").trim(), size: String(row.get("Size") ?? "").trim() };
      if (said.raceway !== "" || said.size !== "") conduits.set(name, said);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      broken.add(name);
      notRead.push({ layer: name, what: `row ${row.rowNumber}`, why: error.message, times: 1 });
    }
  }
  const lines: DrawnLine[] = [];
  for (const [layer, points] of runs) {
    if (broken.has(layer)) notRead.push({ layer, what: "run", why: "a row of it cannot be read", times: 1 });
    else if (points.length > 1) lines.push({ layer, handle: "", points });
    else notRead.push({ layer, what: "run", why: "it has a single point; a line takes two", times: 1 });
  }
  return { unit: hasUnits ? 1 : null, lengthsSayUnits: hasUnits, decimals, lines, points: [], notRead, conduits };
}

const AXES = ["East", "North", "Up"] as const;

/** True for a length that says its unit. */
function saysUnit(cell: unknown): boolean {
  const text = String(cell ?? "").trim();
  if (text === "" || Number.isFinite(Number(text))) return false;
  try {
    toInches(text, "");
    return true;
  } catch {
    return false;
  }
}

/** A coordinate as a plain number; in a list whose lengths say their unit [in] one without is not guessed. */
function coordinate(cell: unknown, axis: string, hasUnits: boolean): string {
  const text = String(cell ?? "").trim();
  if (text === "") throw new InputError(`${axis} is empty`);
  if (Number.isFinite(Number(text))) {
    if (!hasUnits || Number(text) === 0) return text;
    throw new InputError(`${axis} is ${text} without a unit, and other rows have one`);
  }
  return String(toInches(text, axis));
}
