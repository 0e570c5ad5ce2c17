import type { Cell } from "../../workbook/items";
import { batch, reading } from "../batch";
import type { TableCells } from "./readTables";
import { stillThere } from "./stillThere";

/** Rows that stand under a table and are not in it, so that no formula reads them. */
export interface RowsBelow {
  /** How many hold something in the columns asked about. */
  count: number;
  /** How many rows the table must grow by to have them all. */
  reach: number;
}

/** Looks under a table for rows that hold something in one of its columns (zero-based); undefined when there are none. */
export function rowsBelow(table: TableCells, columns: readonly number[]): Promise<RowsBelow | undefined> {
  return reading(async (context) => {
    const sheet = context.workbook.worksheets.getItem(table.sheet);
    const used = sheet.getUsedRangeOrNullObject(true).load("rowIndex,rowCount");
    await context.sync();
    const first = table.row + table.cells.length;
    const rows = used.isNullObject ? 0 : used.rowIndex + used.rowCount - first;
    if (rows < 1) return undefined;
    const below = sheet.getRangeByIndexes(first, table.column, rows, table.cells[0]?.length ?? 1).load("values");
    await context.sync();
    const filled = (below.values as Cell[][]).flatMap((row, at) =>
      columns.some((column) => String(row[column] ?? "").trim() !== "") ? [at + 1] : [],
    );
    return filled.length === 0 ? undefined : { count: filled.length, reach: filled.at(-1) ?? 0 };
  });
}

/** Makes rows under a table part of it. Columns of formulas go on in them where Excel fills them in. */
export function takeRowsIn(table: TableCells, reach: number): Promise<void> {
  return batch(async (context, commit) => {
    const { sheet, row, column, cells } = table;
    await stillThere(context, [{ sheet, row, column, value: cells[0]?.[0] ?? "" }]);
    const wider = context.workbook.worksheets
      .getItem(sheet)
      .getRangeByIndexes(row, column, cells.length + reach, cells[0]?.length ?? 1);
    context.workbook.tables.getItem(table.name).resize(wider);
    await commit();
  });
}
