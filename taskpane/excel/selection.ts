import { batch, reading } from "./batch";

/** Where the cursor is: sheet, and the zero-based first row and column of the selection. */
export interface Place {
  sheet: string;
  row: number;
  column: number;
}

export function readSelection(): Promise<Place> {
  return reading(async (context) => {
    const range = context.workbook.getSelectedRange().load("rowIndex,columnIndex");
    const sheet = range.worksheet.load("name");
    await context.sync();
    return { sheet: sheet.name, row: range.rowIndex, column: range.columnIndex };
  });
}

/** Brings the person to a range: its sheet comes to the front and the range is selected. */
export function select(place: Place, rows = 1, columns = 1): Promise<void> {
  return batch(async (context, commit) => {
    const sheet = context.workbook.worksheets.getItem(place.sheet);
    sheet.activate();
    sheet.getRangeByIndexes(place.row, place.column, rows, columns).select();
    await commit();
  });
}
