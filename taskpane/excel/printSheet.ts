import { batch } from "./batch";
import { ifThere, knows } from "./ifThere";

/** A part of a sheet: zero-based first row and column, and how many of each. */
export interface PrintArea {
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
  bold: PrintArea[];
  /** Areas with larger or smaller letters [pt]. */
  sized: (PrintArea & { size: number })[];
  /** Areas whose text goes on in further lines of its cell. */
  wrapped: PrintArea[];
  pageStarts: number[];
  /** How many rows stand at the head of every page. */
  titleRows: number;
  /** Printed at this share of its size. */
  scale: number;
}

/** Lines are parted by its measure; Excel has it on every system. */
const FONT = "Arial";

/** Margins of a printed sheet [pt]: half an inch, which printers reach on A4 and Letter. */
const MARGIN = 36;

/** Makes a new sheet laid out for printing. Excel refuses a name that is taken, so that nothing is written over. */
export function addPrintSheet({
  sheet: name,
  cells,
  widths,
  bold,
  sized,
  wrapped,
  pageStarts,
  titleRows,
  scale,
}: PrintSheet): Promise<void> {
  return batch(async (context, commit) => {
    const sheet = context.workbook.worksheets.add(name);
    const at = ({ row, column, rows, columns }: PrintArea) => sheet.getRangeByIndexes(row, column, rows, columns);
    const all = at({ row: 0, column: 0, rows: cells.length, columns: widths.length });
    all.numberFormat = cells.map((line) => line.map(() => "@"));
    all.formulas = cells;
    ifThere(() => (all.format.font.name = FONT));
    for (const area of bold) at(area).format.font.bold = true;
    ifThere(() =>
      widths.forEach((width, column) => {
        at({ row: 0, column, rows: cells.length, columns: 1 }).format.columnWidth = width;
      }),
    );
    ifThere(() => sized.forEach((area) => (at(area).format.font.size = area.size)));
    ifThere(() => wrapped.forEach((area) => (at(area).format.wrapText = true)));
    ifThere(() => layOut(sheet, pageStarts, titleRows, scale));
    sheet.activate();
    await commit();
  });
}

/** Page breaks, margins and the heads of pages, where this Excel has them (ExcelApi 1.9). */
function layOut(sheet: Excel.Worksheet, pageStarts: readonly number[], titleRows: number, scale: number): void {
  if (!knows("1.9")) return;
  sheet.pageLayout.zoom = { scale: Math.round(scale * 100) };
  for (const row of pageStarts) sheet.horizontalPageBreaks.add(`A${row + 1}`);
  sheet.pageLayout.setPrintTitleRows(`$1:$${titleRows}`);
  sheet.pageLayout.setPrintMargins("Points", { top: MARGIN, bottom: MARGIN, left: MARGIN, right: MARGIN });
}
