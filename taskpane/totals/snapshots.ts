import type { TableCells } from "../excel";
import { keptTable, type NewSheet } from "../workbook/design/newSheets";
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
export function snapshotTable(runs: TableCells, contents: Contents, day: string): NewSheet & { table: string } {
  const sheet = freeSheetName(`Runs ${day}`, contents);
  return keptTable(
    sheet,
    tableName(sheet),
    runs.cells.map((row) => row.map(asValue)),
  );
}

/** Text that begins like a formula stays text. */
const asValue = (cell: Cell): Cell => (typeof cell === "string" && /^[=+@-]/.test(cell) ? `'${cell}` : cell);
