import { batch } from "../batch";
import { ifThere } from "../ifThere";
import type { Place } from "../selection";

/** Brings a column into sight that is hidden until something stands in it. */
export function showColumn({ sheet, row, column }: Place): Promise<void> {
  return batch(async (context) => {
    const cell = context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, 1);
    ifThere(() => (cell.getEntireColumn().columnHidden = false));
    await context.sync();
  });
}
