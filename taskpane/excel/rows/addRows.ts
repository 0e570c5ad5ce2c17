import type { Cell } from "../../workbook/items";
import { batch } from "../batch";

/**
 * Adds rows under a table's last one (values and formulas, one cell for each of its columns). A cell of null is left to
 * the table, which fills its own columns of formulas; columns of other people's keep what they put there.
 */
export function addRows(name: string, rows: (Cell | null)[][]): Promise<void> {
  return batch(async (context, commit) => {
    const table = context.workbook.tables.getItem(name);
    const sheet = table.worksheet.load("name");
    rows.forEach(() => table.rows.add());
    const range = table.getRange().load("rowIndex,columnIndex,rowCount");
    await commit();
    const first = range.rowIndex + range.rowCount - rows.length;
    const place = context.workbook.worksheets.getItem(sheet.name);
    place.getRangeByIndexes(first, range.columnIndex, rows.length, rows[0]?.length ?? 1).formulas = rows;
    await commit();
  });
}
