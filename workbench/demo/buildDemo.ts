import {
  BooleanNumber,
  CellValueType,
  type IColumnData,
  type ICellData,
  type IObjectArrayPrimitiveType,
  type IRange,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
  VerticalAlign,
} from "@univerjs/core";
import { columnStyle, headings, note } from "./styles";
import type { DemoBook, DemoCell, DemoSheet } from "./types";

/** Empty room below and beside what a sheet holds. */
const spare = { rows: 200, columns: 12 };
/** Room for what a result sheet spills. */
const spillRows = 1000;

/** Makes the workbook data the engine opens from the demo's description. */
export function buildDemo(demo: DemoBook): IWorkbookData {
  const ids = demo.sheets.map((_, index) => `sheet-${index + 1}`);
  const styles: Record<string, IStyleData> = { heading: headings.input, result: headings.result, note };
  const sheets = demo.sheets.map((sheet, index) => buildSheet(ids[index]!, sheet, styles));
  const rules = Object.fromEntries(demo.sheets.map((sheet, index) => [ids[index]!, choiceRules(ids[index]!, sheet)]));
  const tables = Object.fromEntries(demo.sheets.map((sheet, index) => [ids[index]!, tableOf(ids[index]!, sheet)]));
  return {
    id: "workbook",
    name: demo.name,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles,
    sheetOrder: ids,
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id!, sheet])),
    resources: [
      { name: "SHEET_DATA_VALIDATION_PLUGIN", data: JSON.stringify(rules) },
      { name: "SHEET_TABLE_PLUGIN", data: JSON.stringify(tables) },
    ],
  };
}

function buildSheet(id: string, sheet: DemoSheet, styles: Record<string, IStyleData>): Partial<IWorksheetData> {
  const header = sheet.headerRow ?? 0;
  const columnData: IObjectArrayPrimitiveType<Partial<IColumnData>> = {};
  sheet.columns.forEach((column, index) => {
    const style = columnStyle(column);
    if (style) styles[`${id}-${index}`] = style;
    columnData[index] = { w: column.width ?? 100, ...(style && { s: `${id}-${index}` }) };
  });
  const cellData: Record<number, Record<number, ICellData>> = {};
  sheet.rows.forEach((row, at) => {
    cellData[at] = {};
    row.forEach((value, column) => {
      const own = styles[`${id}-${column}`] ? `${id}-${column}` : undefined;
      const style = sheet.noteRows?.includes(at) ? "note" : at === header ? (sheet.result ? "result" : "heading") : own;
      cellData[at]![column] = { ...cellOf(value), ...(style && at <= header ? { s: style } : own && { s: own }) };
    });
  });
  if (sheet.result) formatSpill(id, sheet, styles, cellData);
  return {
    id,
    name: sheet.name,
    tabColor: sheet.color ?? "",
    rowCount: sheet.rows.length + (sheet.result ? spillRows : spare.rows),
    columnCount: sheet.columns.length + spare.columns,
    defaultRowHeight: 22,
    freeze: {
      xSplit: sheet.frozenColumns ?? 0,
      ySplit: header + 1,
      startRow: header + 1,
      startColumn: sheet.frozenColumns ?? 0,
    },
    showGridlines: BooleanNumber.TRUE,
    defaultStyle: { vt: VerticalAlign.MIDDLE },
    rowData: { [header]: { h: 38 } },
    columnData,
    cellData,
  };
}

/** The grid shows a spilled number in its column's format only where the cell itself has that format. */
function formatSpill(
  id: string,
  sheet: DemoSheet,
  styles: Record<string, IStyleData>,
  cellData: Record<number, Record<number, ICellData>>,
): void {
  const formatted = sheet.columns.flatMap((_, column) => (styles[`${id}-${column}`] ? [column] : []));
  for (let row = sheet.rows.length; row < sheet.rows.length + spillRows; row++) {
    cellData[row] = Object.fromEntries(formatted.map((column) => [column, { s: `${id}-${column}` }]));
  }
}

function cellOf(value: DemoCell): ICellData {
  if (value === null || value === "") return {};
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  return value.startsWith("=") ? { f: value } : { v: value, t: CellValueType.STRING };
}

/** A list to choose from for each column that has one, down to the sheet's end. */
function choiceRules(id: string, sheet: DemoSheet): object[] {
  return sheet.columns.flatMap((column, index) => {
    if (!column.choices) return [];
    const range = below(sheet, index, index, sheet.rows.length + spare.rows - 1);
    return {
      uid: `${id}-choices-${index}`,
      type: "list",
      formula1: column.choices.join(","),
      ranges: [range],
      allowBlank: true,
      showDropDown: true,
      // A value outside the list is marked, not refused: the functions read many spellings.
      errorStyle: 2,
      showErrorMessage: false,
      renderMode: 1,
    };
  });
}

function tableOf(id: string, sheet: DemoSheet): object[] {
  if (!sheet.table) return [];
  const header = sheet.headerRow ?? 0;
  const range = { ...below(sheet, 0, sheet.columns.length - 1, sheet.rows.length - 1), startRow: header };
  const columns = (sheet.rows[header] ?? []).map((title, index) => ({
    id: `${id}-column-${index}`,
    displayName: String(title ?? ""),
    dataType: "none",
    formula: "",
    meta: {},
    style: {},
  }));
  const filters = { tableColumnFilterList: [], tableSortInfo: undefined };
  return [
    {
      id: `${id}-table`,
      name: sheet.table,
      range,
      options: { showHeader: true, showFooter: false },
      filters,
      columns,
      meta: {},
    },
  ];
}

function below(sheet: DemoSheet, startColumn: number, endColumn: number, endRow: number): IRange {
  return { startRow: (sheet.headerRow ?? 0) + 1, endRow, startColumn, endColumn };
}
