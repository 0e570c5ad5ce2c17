import type { TableCells } from "../excel";
import type { WorkbookApi } from "../hooks/useWorkbook";
import type { Cell, TableName } from "./items";
import type { Rows } from "./newTables";
import { columnsOf } from "./plan";
import { firstFreeRow } from "./rows";
import { runRowCells, type RunTables } from "./runRow";

/**
 * Writes rows under the last written one of a table: empty rows are filled first, then the table grows.
 * @returns the table's row the first of them stands in
 */
export async function appendRows(
  workbook: WorkbookApi,
  name: TableName,
  table: TableCells,
  rows: Rows,
  tables: RunTables,
): Promise<number> {
  const headers = table.cells[0] ?? [];
  const free = firstFreeRow(table.cells, columnsOf(name));
  const lines = rows.map((given, index): Cell[] => {
    if (name === "Runs") return runRowCells(headers, table.row + free + index, table.column, given, tables);
    return headers.map((header) => given[String(header)] ?? "");
  });
  const room = Math.max(0, table.cells.length - free);
  if (room > 0 && lines.length > 0) {
    const place = { sheet: table.sheet, row: table.row + free, column: table.column };
    await workbook.writeCells(place, lines.slice(0, room));
  }
  if (lines.length > room) await workbook.addRows(table.name, lines.slice(room));
  return free;
}
