import type { TableCells } from "../excel";
import { keptTable, type NewSheet } from "../workbook/design/newSheets";
import type { Cell } from "../workbook/items";
import { freeSheetName, tableName } from "../workbook/plan";
import type { Contents } from "../excel";

/** Runs, and what hangs on none, as they were once, each kept as a table on a sheet of its own. */
export interface Snapshot {
  table: string;
  /** Table of the counts; absent where there were none, and in older snapshots. */
  counts?: string;
  /** What the person called it. */
  name?: string;
  /** When it was taken, ISO 8601. */
  taken: string;
}

export const SNAPSHOTS = "raceway-ledger.snapshots";

/** The snapshots a workbook's settings tell of. */
export function readSnapshots(stored: unknown): Snapshot[] {
  if (!Array.isArray(stored)) return [];
  return stored.filter((item): item is Snapshot => typeof item?.table === "string" && typeof item?.taken === "string");
}

/** What a sheet's name cannot hold, and its longest [letters]. */
const [NOT_IN_NAMES, LONGEST] = [/[[\]:*?/\\']/g, 31];

/**
 * A sheet to make that holds a table as it is now: values, no formulas.
 * @param title what the sheet is called, such as Runs 2026-12-01, as far as it is free and fits
 */
export function snapshotTable(kept: TableCells, contents: Contents, title: string): NewSheet & { table: string } {
  // Room for a number behind it.
  const sheet = freeSheetName(
    title
      .replace(NOT_IN_NAMES, " ")
      .slice(0, LONGEST - 4)
      .trim(),
    contents,
  );
  return keptTable(
    sheet,
    tableName(sheet),
    kept.cells.map((row) => row.map(asValue)),
  );
}

/** Text that begins like a formula stays text. */
const asValue = (cell: Cell): Cell => (typeof cell === "string" && /^[=+@-]/.test(cell) ? `'${cell}` : cell);
