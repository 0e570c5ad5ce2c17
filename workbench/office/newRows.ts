import type { Sheet } from "../engine";
import type { TableInfo } from "./tableEdits";

/** New rows under a table's old last one take after it: number formats and lists to choose from. */
export function takeAfterLastRow(sheet: Sheet, { range }: TableInfo, count: number): void {
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
