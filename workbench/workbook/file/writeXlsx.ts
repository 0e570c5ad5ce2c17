import { type Cell, type WriteSheet, writeXlsx as writeFile } from "hucre/xlsx";
import type { CellValue } from "../../engine";
import { PRINT_SCALE } from "../../../src/drawing/ticket/ticketLines";
import { columnLetters } from "../../../taskpane/workbook/address";
import { blockAddress } from "../address";
import { toFileFormula } from "./fileFormula";
import { finishFile } from "./finishFile";
import { DIGIT, fileStyle, usualFont } from "./looks";
import { isOverview, overviewCharts } from "./besides/overviewCharts";
import { fileImage } from "./besides/pictures";
import type { ContentCell, Look, SheetContent } from "../content/sheetContent";

/** What is written about the workbook itself. */
export interface BookFacts {
  title: string;
  /** The add-in's namespace: functions under it are written as files spell them. */
  namespace: string;
  /** Names for formulas that the workbook brings with it, spelled as files spell them. */
  names?: { name: string; formula: string }[];
}

/** Writes sheets as the bytes of an .xlsx file: values, live formulas, tables, drop-downs, print settings. */
export async function writeXlsx(
  sheets: readonly SheetContent[],
  { title, namespace, names = [] }: BookFacts,
): Promise<Uint8Array> {
  const properties = { title, creator: "Raceway Ledger" };
  const file = await writeFile({
    sheets: sheets.map((sheet) => fileSheet(sheet, namespace)),
    properties,
    namedRanges: names.map(({ name, formula }) => ({ name, range: formula })),
    defaultFont: usualFont,
  });
  return finishFile(file, sheets, namespace);
}

function fileSheet(sheet: SheetContent, namespace: string): WriteSheet {
  const cells = new Map<string, Partial<Cell>>();
  sheet.cells.forEach((row, at) =>
    row.forEach((cell, column) => {
      if (cell) cells.set(`${at},${column}`, fileCell(cell, sheet.columns[column]?.look, at, column, namespace));
    }),
  );
  return {
    name: sheet.name,
    cells,
    columns: sheet.columns.map(({ width, look, hidden }) => ({
      width: charactersWide(width ?? 100),
      ...(hidden && { hidden }),
      ...(look && { style: fileStyle(look) }),
    })),
    rowDefs: rowDefs(sheet),
    // A pane that is frozen at nothing is none.
    ...((sheet.frozenRows > 0 || sheet.frozenColumns > 0) && {
      freezePane: { rows: sheet.frozenRows, columns: sheet.frozenColumns },
    }),
    tables: sheet.tables.map(({ name, range, headers }) => ({
      name,
      range: blockAddress(range),
      columns: headers.map((header) => ({ name: header })),
    })),
    dataValidations: [
      ...sheet.choices.map(({ list, range }) => ({
        ...{ type: "list" as const, values: list, range: blockAddress(range) },
        ...{ allowBlank: true, showErrorMessage: false },
      })),
      ...(sheet.notes ?? []).map(({ column, title, text }) => ({
        // Whatever stands in the heading is right; the rule is there for its words.
        ...{ type: "custom" as const, formula1: "TRUE", range: `${columnLetters(column)}1`, allowBlank: true },
        ...{ showErrorMessage: false, showInputMessage: true, inputTitle: title, inputMessage: text },
      })),
    ],
    pageSetup: printSettings(sheet),
    // A break in the file stands after a row.
    rowBreaks: sheet.pageStarts?.map((row) => row - 1),
    images: sheet.pictures?.map(fileImage),
    charts: overviewCharts(sheet),
    headerFooter: { oddFooter: `&L&F  &A${sheet.pageStarts ? printedAt : ""}&RPage &P of &N` },
    view: {
      ...(sheet.tabColor && { tabColor: { rgb: sheet.tabColor } }),
      // A sheet laid out as pages looks like one.
      ...(sheet.pageStarts && { showGridLines: false }),
    },
  };
}

/** Height of a line of text [pt]. */
const lineHeight = 14.25;

function rowDefs({ rowLines = [], rowHeights }: SheetContent): WriteSheet["rowDefs"] {
  const heights = rowHeights ?? rowLines.map((lines) => (lines > 1 ? lines * lineHeight : undefined));
  return new Map(heights.flatMap((height, at) => (height === undefined ? [] : [[at, { height }]])));
}

const margins = { top: 0.5, bottom: 0.6, left: 0.4, right: 0.4, header: 0.3, footer: 0.3 };

/** Where a sheet is laid out as pages [in.]. */
const pageMargins = { top: 0.4, bottom: 0.5, left: 0.4, right: 0.4, header: 0.2, footer: 0.25 };

/** Day and time of printing, which the host fills in (ECMA-376 part 1, 18.3.1.46 firstHeader: &D, &T). */
const printedAt = "&CPrinted &D &T";

const fitted = { orientation: "landscape", fitToPage: true, fitToWidth: 1, fitToHeight: 0 } as const;

/** Excel passes over page breaks where it fits a sheet to pages, so that a sheet with breaks keeps its own size. */
function asLaidOut({ cells, columns }: SheetContent) {
  const printArea = `$A$1:$${columnLetters(columns.length - 1)}$${cells.length}`;
  return { orientation: "portrait", printArea, scale: Math.round(100 * PRINT_SCALE), margins: pageMargins } as const;
}

/** The heading rows on every page; landscape and as wide as one page, where the sheet has no pages of its own. */
function printSettings(sheet: SheetContent): WriteSheet["pageSetup"] {
  return {
    margins,
    ...(sheet.pageStarts ? asLaidOut(sheet) : fitted),
    // A picture of the whole job: one page.
    ...(isOverview(sheet) && { fitToHeight: 1 }),
    ...(sheet.frozenRows > 0 && { printTitlesRow: `$1:$${sheet.frozenRows}` }),
  };
}

function fileCell(
  cell: ContentCell,
  column: Look | undefined,
  at: number,
  place: number,
  namespace: string,
): Partial<Cell> {
  const shown: CellValue = cell.error?.code ?? cell.value;
  const look = safeLook(cell, cell.look ?? column);
  const style = { style: fileStyle(look ?? {}) };
  if (!cell.formula) return { value: shown, ...style };
  const { rows, columns } = cell.spill ?? { rows: 1, columns: 1 };
  const spill = { startRow: at, startColumn: place, endRow: at + rows - 1, endColumn: place + columns - 1 };
  return {
    formula: toFileFormula(cell.formula, namespace),
    formulaResult: shown,
    ...(cell.spill && { formulaType: "array", formulaRef: blockAddress(spill), formulaDynamic: true }),
    ...style,
  };
}

/** A text that would become a formula when somebody edits its cell is kept as text by the cell's format. */
function safeLook(cell: ContentCell, look: Look | undefined): Look | undefined {
  if (cell.formula || typeof cell.value !== "string" || !/^[=+\-@]/.test(cell.value)) return look;
  return { ...look, format: "@" };
}

/**
 * Pixels as the width a file counts in: digits of the usual font, the padding of a cell among them (ECMA-376 part 1,
 * 18.3.1.13 col: shown are width × digit pixels).
 */
function charactersWide(pixels: number): number {
  return Math.round((pixels / DIGIT) * 256) / 256;
}
