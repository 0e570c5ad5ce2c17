import { mergeMade, type MergedMade } from "../../src/made/records/mergeMade";
import { MADE_COLUMNS } from "../../src/made/records/madeTable";
import type { TableCells } from "../excel";
import type { WorkbookApi } from "../hooks/useWorkbook";
import type { Cell } from "../workbook/items";
import { rowSeen } from "../workbook/appendRows";
import { plainText } from "../workbook/plainText";
import { firstFreeRow } from "../workbook/rows";

/** Names that a sheet would take for a date or a number, as 1/2; a day may become one. */
const ALMOST_A_NUMBER = /^(?!\d{4}-\d\d-\d\d$)[\d\s./-]+$/;
const asWritten = (cell: Cell | null): Cell | null =>
  cell === null ? null : typeof cell === "string" && ALMOST_A_NUMBER.test(cell) ? `'${cell}` : plainText(cell);

/** Adds records to the Made table by their Id: into its empty rows first, then under them. What it cannot add it tells. */
export async function addToMade(
  workbook: WorkbookApi,
  made: TableCells,
  incoming: readonly (readonly Cell[])[],
): Promise<MergedMade> {
  const merged = mergeMade(made.cells, incoming);
  const rows = merged.rows.map((row) => row.map(asWritten));
  const free = firstFreeRow(made.cells, MADE_COLUMNS);
  const room = Math.max(0, made.cells.length - free);
  const inside = rows.slice(0, room);
  if (inside.length > 0) {
    const seen = rowSeen(made, 0).concat(...inside.map((_, index) => rowSeen(made, free + index)));
    await workbook.writeCells({ sheet: made.sheet, row: made.row + free, column: made.column }, inside, seen);
  }
  if (rows.length > room) await workbook.addRows(made.name, rows.slice(room));
  return merged;
}
