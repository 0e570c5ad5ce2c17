import { resultHeadings } from "../../../taskpane/workbook/design/newSheets";
import { sheetColumns } from "../../../taskpane/workbook/design/sheets";
import { RESULTS, type ResultName } from "../../../taskpane/workbook/items";
import type { SheetContent } from "../content/sheetContent";

/**
 * A result leaves out columns that nothing fills, such as prices where there are none, and what follows moves to the
 * left. On paper each column has its own width and look, and the headings end where the columns do.
 */
export const columnsAsShown = (sheets: readonly SheetContent[]): SheetContent[] => sheets.map(asShown);

const isResult = (name: string): name is ResultName => (RESULTS as readonly string[]).includes(name);

function asShown(sheet: SheetContent): SheetContent {
  if (!isResult(sheet.name) || sheet.tables.length > 0) return sheet;
  const shown = (sheet.cells[0] ?? []).map((cell) => String(cell?.value ?? ""));
  const headers = shown.slice(0, shown.length - [...shown].reverse().findIndex((header) => header !== ""));
  const designed = sheetColumns(sheet.name, "").map(({ header }) => header);
  const places = headers.map((header) => designed.indexOf(header));
  const moved = places.some((place, at) => place !== at) && places.every((place, at) => place > (places[at - 1] ?? -1));
  if (!moved) return sheet;
  const columns = places.map((place) => sheet.columns[place] ?? {});
  const headings = resultHeadings(columns).map((look, at) => ({ ...sheet.cells[0]![at]!, look }));
  return { ...sheet, cells: [headings, ...sheet.cells.slice(1)], columns };
}
