import { batch } from "../batch";
import { ifThere } from "../ifThere";
import type { Place } from "../selection";

/** Brings columns into sight that are hidden until something stands in them, or hides them again. */
export function showColumns(places: readonly Place[], shown: boolean): Promise<void> {
  return batch(async (context, commit) => {
    for (const { sheet, row, column } of places) {
      const cell = context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, 1);
      ifThere(() => (cell.getEntireColumn().columnHidden = !shown));
    }
    await commit();
  });
}
