import type { Cell } from "../workbook/items";
import { batch } from "./batch";

/** Adds rows under a table's last one (values and formulas, one cell for each of its columns). */
export function addRows(table: string, rows: Cell[][]): Promise<void> {
  return batch(async (context) => {
    context.workbook.tables.getItem(table).rows.add(undefined, rows);
    await context.sync();
  });
}
