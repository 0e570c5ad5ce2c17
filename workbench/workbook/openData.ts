import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  LocaleType,
} from "@univerjs/core";
import { styleOfLook } from "./file/looks";
import { resourcesFor } from "./file/resources";
import type { ContentCell, Look, SheetContent } from "./content/sheetContent";

/** Empty room below and beside what a sheet holds; a sheet of results needs more. */
const spare = { rows: 500, columns: 40 };
const spareForResults = 50_000;
/** Two lines of a heading [px]. */
const headingHeight = 40;

/** Workbook data the engine opens, from what its sheets hold. Formulas come without results: the engine works them out. */
export function openData(sheets: readonly SheetContent[]): IWorkbookData {
  const ids = sheets.map((_, index) => `sheet-${index + 1}`);
  const styles: Record<string, IStyleData> = {};
  const styled = (look: Look | undefined) => {
    if (!look) return {};
    const id = JSON.stringify(look);
    styles[id] = styleOfLook(look);
    return { s: id };
  };
  const data = sheets.map((sheet, index) => [ids[index]!, sheetData(ids[index]!, sheet, styled)] as const);
  return {
    id: "workbook",
    name: "",
    appVersion: "",
    locale: LocaleType.EN_US,
    styles,
    sheetOrder: ids,
    sheets: Object.fromEntries(data),
    resources: resourcesFor(sheets, ids),
  };
}

function sheetData(id: string, sheet: SheetContent, styled: (look: Look | undefined) => { s?: string }) {
  const cellData: Record<number, Record<number, ICellData>> = {};
  sheet.cells.forEach((row, at) =>
    row.forEach((cell, column) => {
      if (cell) (cellData[at] ??= {})[column] = { ...cellOf(cell), ...styled(cell.look) };
    }),
  );
  const { frozenRows, frozenColumns } = sheet;
  return {
    id,
    name: sheet.name,
    tabColor: sheet.tabColor ? `#${sheet.tabColor}` : "",
    rowCount: sheet.cells.length + (sheet.cells[0]?.[0]?.formula ? spareForResults : spare.rows),
    // Not Math.max of all rows at once: a sheet may have a million.
    columnCount: sheet.cells.reduce((most, row) => Math.max(most, row.length), sheet.columns.length) + spare.columns,
    freeze: { xSplit: frozenColumns, ySplit: frozenRows, startRow: frozenRows, startColumn: frozenColumns },
    showGridlines: BooleanNumber.TRUE,
    ...(sheet.frozenRows === 1 && !sheet.rowHeights && { rowData: { 0: { h: headingHeight } } }),
    columnData: Object.fromEntries(
      sheet.columns.map(({ width, look, hidden }, column) => [
        column,
        { w: width ?? 100, ...styled(look), ...(hidden && { hd: BooleanNumber.TRUE }) },
      ]),
    ),
    cellData,
  };
}

function cellOf({ value, formula }: ContentCell): ICellData {
  if (formula) return { f: formula };
  if (value === null) return {};
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING };
}
