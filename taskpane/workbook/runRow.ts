import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { cellName } from "./address";
import { columnPlaces } from "./columns";
import type { Cell } from "./items";

/** Columns of a new Runs table that people fill in. */
export const RUN_ENTRIES = [
  "Run",
  "Job",
  "Area",
  "Raceway",
  "Size",
  "Route",
  "Quantity",
  "From",
  "To",
  "Conductors",
] as const;

/** Columns of a new Runs table that follow by formula, and the function behind each. */
export const RUN_FORMULAS = { Length: "LENGTH", Bends: "BENDS", Degrees: "DEGREES", Check: "CHECK" } as const;

/** Names of the tables that a run's formulas read besides its own row. */
export interface RunTables {
  readonly shoes: string;
  /** Undefined in a workbook without rules of its own. */
  readonly rules: string | undefined;
}

/** What follows route, raceway and size in a run's formula. */
export function runArguments(formula: string, { shoes, rules }: RunTables): string {
  const edition = formula === RUN_FORMULAS.Check ? "," : "";
  return `,${shoes}[#All]${rules === undefined ? "" : `${edition},${rules}[#All]`}`;
}

export const RUN_HEADERS: readonly string[] = [...RUN_ENTRIES, ...Object.keys(RUN_FORMULAS)];

/**
 * The cells of one row of a Runs table, in the order of its headers: what is given under its column, our formulas
 * under theirs, the rest empty.
 *
 * @param row zero-based row of the sheet it will stand in; @param column zero-based column the table begins at
 */
export function runRowCells(
  headers: readonly Cell[],
  row: number,
  column: number,
  given: Readonly<Record<string, Cell>>,
  tables: RunTables,
): Cell[] {
  const places = columnPlaces(headers, RUN_COLUMNS);
  const at = (name: string) => cellName(row, column + (places.get(name) ?? 0));
  const nameAt = new Map([...places].map(([name, place]) => [place, name]));
  return headers.map((header, place): Cell => {
    const name = nameAt.get(place);
    if (name !== undefined) return given[name] ?? "";
    const wanted = RUN_FORMULAS[String(header) as keyof typeof RUN_FORMULAS];
    if (!wanted) return given[String(header)] ?? "";
    const call = `CONDUIT.RUN.${wanted}(${at("Route")},${at("Raceway")},${at("Size")}${runArguments(wanted, tables)})`;
    return `=IF(${at("Route")}="","",${call})`;
  });
}

/** A name no run of the table has yet. */
export function freeRunName(taken: readonly string[]): string {
  for (let number = taken.length + 1; ; number++) {
    const name = `Run ${number}`;
    if (!taken.includes(name)) return name;
  }
}
