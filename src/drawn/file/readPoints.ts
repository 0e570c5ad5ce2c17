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
 * Reads a list of points as a drawing: the points of a run follow one another and are its line. Plain numbers are in the
 * list's unit, lengths with a unit of their own (`12' 6"`) in that.
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
  const runs = new Map<string, Vec3[]>();
  const conduits = new Map<string, { raceway: string; size: string }>();
  const notRead: NotRead[] = [];
  let decimals = 0;
  for (const row of rows) {
    const name = String(row.get("Run") ?? "").trim();
    try {
      if (name === "") throw new InputError("it names no run");
      const texts = ["East", "North", "Up"].map((axis) => coordinate(row.get(axis), axis));
      const point = texts.map((text) => Number(text)) as unknown as Vec3;
      decimals = Math.max(decimals, ...texts.map((text) => Math.min(8, /\.(\d*?)0*$/.exec(text)?.[1]?.length ?? 0)));
      runs.set(name, [...(runs.get(name) ?? []), point]);
      const said = { raceway: String(row.get("Raceway") ?? "").trim(), size: String(row.get("Size") ?? "").trim() };
      if (said.raceway !== "" || said.size !== "") conduits.set(name, said);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      notRead.push({ layer: name, what: `row ${row.rowNumber}`, why: error.message, times: 1 });
    }
  }
  const lines: DrawnLine[] = [];
  for (const [layer, points] of runs) {
    if (points.length > 1) lines.push({ layer, handle: "", points });
    else notRead.push({ layer, what: "run", why: "it has a single point; a line takes two", times: 1 });
  }
  return { unit: null, decimals, lines, points: [], notRead, conduits };
}

/** A coordinate as a plain number; one with a unit is not mixed with the list's. */
function coordinate(cell: unknown, axis: string): string {
  const text = String(cell ?? "").trim();
  if (text !== "" && Number.isFinite(Number(text))) return text;
  if (text === "") throw new InputError(`${axis} is empty`);
  return String(toInches(text, axis));
}
