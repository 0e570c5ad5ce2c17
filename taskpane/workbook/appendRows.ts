import type { TableCells } from "../excel";
import type { WorkbookApi } from "../hooks/useWorkbook";
import type { NamedTables } from "./design/formulas";
import type { Rows } from "./design/startRows";
import type { Cell, TableName } from "./items";
import { columnsOf } from "./plan";
import { firstFreeRow } from "./rows";
import { runRowCells } from "./runRow";

/**
 * Writes rows under the last written one of a table: empty rows are filled first, then the table grows. Columns that are
 * none of ours are left alone.
 * @returns the table's row the first of them stands in
 */
export async function appendRows(
  workbook: WorkbookApi,
  name: TableName,
  table: TableCells,
  rows: Rows,
  tables: NamedTables,
): Promise<number> {
  const headers = table.cells[0] ?? [];
  const free = firstFreeRow(table.cells, columnsOf(name));
  const lines = rows.map((given): (Cell | null)[] => {
    if (name === "Runs") return runRowCells(headers, given, tables);
    return headers.map((header) => given[String(header)] ?? null);
  });
  const room = Math.max(0, table.cells.length - free);
  if (room > 0 && lines.length > 0) {
    const place = { sheet: table.sheet, row: table.row + free, column: table.column };
    const seen = rowSeen(table, 0).concat(...lines.slice(0, room).map((_, index) => rowSeen(table, free + index)));
    await workbook.writeCells(place, lines.slice(0, room), seen);
  }
  if (lines.length > room) await workbook.addRows(table.name, lines.slice(room));
  return free;
}

/** The cells of a table's row as they were read: 0 for the headers. */
export const rowSeen = ({ cells, sheet, row, column }: TableCells, at: number) =>
  (cells[at] ?? []).map((value, place) => ({ sheet, row: row + at, column: column + place, value }));
