import { batch } from "./batch";

/** A part of a sheet: zero-based first row and column, and how many of each. */
export interface Area {
  row: number;
  column: number;
  rows: number;
  columns: number;
}

/** A sheet to be printed: text cells, how they look, and the rows that begin a page. */
export interface PrintSheet {
  sheet: string;
  cells: string[][];
  /** Width of each column [pt]. */
  widths: number[];
  bold: Area[];
  /** Areas with larger letters [pt]. */
  large: (Area & { size: number })[];
  /** Areas whose text goes on in further lines of its cell. */
  wrapped: Area[];
  pageStarts: number[];
}

/** Margins of a printed sheet [pt]: half an inch, which printers reach on A4 and Letter. */
const MARGIN = 36;

/** Makes a new sheet laid out for printing. Excel refuses a name that is taken, so that nothing is written over. */
export function addPrintSheet({
  sheet: name,
  cells,
  widths,
  bold,
  large,
  wrapped,
  pageStarts,
}: PrintSheet): Promise<void> {
  return batch(async (context) => {
    const sheet = context.workbook.worksheets.add(name);
    const at = ({ row, column, rows, columns }: Area) => sheet.getRangeByIndexes(row, column, rows, columns);
    const all = at({ row: 0, column: 0, rows: cells.length, columns: widths.length });
    all.numberFormat = cells.map((line) => line.map(() => "@"));
    all.formulas = cells;
    widths.forEach((width, column) => {
      at({ row: 0, column, rows: cells.length, columns: 1 }).format.columnWidth = width;
    });
    for (const area of bold) at(area).format.font.bold = true;
    for (const area of large) at(area).format.font.size = area.size;
    for (const area of wrapped) at(area).format.wrapText = true;
    layOut(sheet, pageStarts);
    sheet.activate();
    await context.sync();
  });
}

/** Page breaks and margins, where this Excel has them (ExcelApi 1.9). */
function layOut(sheet: Excel.Worksheet, pageStarts: readonly number[]): void {
  if (globalThis.Office?.context?.requirements?.isSetSupported("ExcelApi", "1.9") === false) return;
  const { horizontalPageBreaks: breaks, pageLayout: layout } = sheet as Partial<Excel.Worksheet>;
  for (const row of pageStarts) if (row > 0) breaks?.add(`A${row + 1}`);
  layout?.setPrintMargins("Points", { top: MARGIN, bottom: MARGIN, left: MARGIN, right: MARGIN });
}
