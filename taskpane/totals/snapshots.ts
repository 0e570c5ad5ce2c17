import type { NewTable, TableCells } from "../excel";
import type { Cell } from "../workbook/items";
import { freeSheetName, tableName } from "../workbook/plan";
import type { Contents } from "../excel";

/** Runs as they were once, kept as a table on a sheet of its own. */
export interface Snapshot {
  table: string;
  /** When it was taken, ISO 8601. */
  taken: string;
}

export const SNAPSHOTS = "raceway-ledger.snapshots";

/** The snapshots a workbook's settings tell of. */
export function readSnapshots(stored: unknown): Snapshot[] {
  if (!Array.isArray(stored)) return [];
  return stored.filter((item): item is Snapshot => typeof item?.table === "string" && typeof item?.taken === "string");
}

/** A sheet to make that holds the runs as they are now: values, no formulas. */
export function snapshotTable(runs: TableCells, contents: Contents, day: string): NewTable {
  const sheet = freeSheetName(`Runs ${day}`, contents);
  const headers = runs.cells[0] ?? [];
  return {
    sheet,
    table: tableName(sheet),
    cells: runs.cells.map((row) => row.map(asValue)),
    formats: runs.cells.map(() => headers.map((header) => (/size|run/i.test(String(header)) ? "@" : "General"))),
    choices: [],
  };
}

/** Text that begins like a formula stays text. */
const asValue = (cell: Cell): Cell => (typeof cell === "string" && /^[=+@-]/.test(cell) ? `'${cell}` : cell);
