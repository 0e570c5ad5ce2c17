import type { Book, CellRange, Sheet } from "../../engine";
import { cellsAt } from "../sheet/place";
import { growTable, type GridTable } from "./tableEdits";

/** Grows a table by rows under its last one; what lies below moves down, if anything does. Gives the new cells. */
export function addEmptyRows(book: Book, sheet: Sheet, table: GridTable, count: number): CellRange {
  const { startColumn, endColumn, endRow } = table.range;
  const added = cellsAt(sheet, endRow + 1, startColumn, count, endColumn - startColumn + 1);
  growTable(book, table, count, isFreeBelow(sheet, table));
  takeAfterLastRow(sheet, table, count);
  return added;
}

/** New rows under a table's old last one take after it: number formats and lists to choose from. */
export function takeAfterLastRow(sheet: Sheet, { range }: GridTable, count: number): void {
  const { startColumn, endColumn, endRow } = range;
  const columns = endColumn - startColumn + 1;
  const formats = sheet.cells(endRow, startColumn, 1, columns).numberFormats[0]!;
  const added = sheet.cells(endRow + 1, startColumn, count, columns);
  added.setNumberFormats(Array.from({ length: count }, () => formats));
  for (let column = startColumn; column <= endColumn; column++) {
    const rule = sheet.cells(endRow, column).native.getDataValidation();
    rule?.setRanges([...rule.getRanges(), sheet.cells(endRow + 1, column, count, 1).native]);
  }
}

function isFreeBelow(sheet: Sheet, { range }: GridTable): boolean {
  const used = sheet.used();
  const last = used ? used.place.rows - 1 : -1;
  if (last <= range.endRow) return true;
  const width = range.endColumn - range.startColumn + 1;
  const below = sheet.cells(range.endRow + 1, range.startColumn, last - range.endRow, width);
  return below.values.flat().every((value) => value === null || value === "");
}
