import { sameName, type Place } from "../excel";
import type { Ledger } from "../hooks/useLedger";
import type { WorkbookApi } from "../hooks/useWorkbook";
import type { Cell } from "../workbook/items";

/** Sheet for bends that are not wanted where the cursor is. */
const SHEET = "Bends";

/** Where a block goes: at the selection, or aside of what is there. */
export interface BlockPlaces {
  at: Place;
  /** Cells in the way at the selection, and what stands in all of its cells. */
  taken: number;
  cells: Cell[][];
  /** A free place instead. */
  aside: Place;
}

/**
 * Looks for room at the selection. The sheets of our tables and results are left to them, for a table grows and a result
 * spills: there the block goes to a sheet of its own.
 */
export async function placesForBlock(
  workbook: WorkbookApi,
  { names, tables }: Pick<Ledger, "names" | "tables">,
  size: { rows: number; columns: number },
): Promise<BlockPlaces> {
  const selected = await workbook.readSelection();
  const ours = [...Object.values(names), ...Object.values(tables).map((table) => table?.sheet ?? "")];
  if (!ours.some((name) => sameName(name, selected.sheet))) {
    const { cells, taken, freeRow } = await workbook.lookAt(selected, size.rows, size.columns);
    return { at: selected, cells, taken, aside: { ...selected, row: freeRow } };
  }
  const { sheets } = await workbook.readContents();
  if (!sheets.some((name) => sameName(name, SHEET))) await workbook.addSheet(SHEET);
  const top = { sheet: SHEET, row: 0, column: 0 };
  const free = { ...top, row: (await workbook.lookAt(top, 1, 1)).freeRow };
  return { at: free, cells: [], taken: 0, aside: free };
}
