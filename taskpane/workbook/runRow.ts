import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { columnPlaces } from "./columns";
import { runFormula, type NamedTables } from "./design/formulas";
import type { Cell } from "./items";

/**
 * The cells of one row of a Runs table, in the order of its headers: what is given under its column, our formulas
 * under theirs, nothing under columns that are none of ours.
 */
export function runRowCells(
  headers: readonly Cell[],
  given: Readonly<Record<string, Cell>>,
  tables: NamedTables,
): (Cell | null)[] {
  const nameAt = new Map([...columnPlaces(headers, RUN_COLUMNS)].map(([name, place]) => [place, name]));
  return headers.map((header, place): Cell | null => {
    const name = nameAt.get(place) ?? String(header);
    return given[name] ?? (nameAt.has(place) ? "" : (runFormula(String(header), tables) ?? null));
  });
}

/** A name no run of the table has yet. */
export function freeRunName(taken: readonly string[]): string {
  for (let number = taken.length + 1; ; number++) {
    const name = `Run ${number}`;
    if (!taken.includes(name)) return name;
  }
}
