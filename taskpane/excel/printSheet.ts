import { batch } from "./batch";
import { ifThere, knows } from "./ifThere";
import { addPictures, type SheetPicture } from "./sheetPictures";

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
  /** Width of each column and height of each row [pt]. */
  widths: number[];
  heights: number[];
  bold: PrintArea[];
  /** Areas with larger or smaller letters [pt]. */
  sized: (PrintArea & { size: number })[];
  /** Areas whose text goes on in further lines of its cell. */
  wrapped: PrintArea[];
  /** Areas with a thin line under them. */
  underlined: PrintArea[];
  pictures: SheetPicture[];
  pageStarts: number[];
  /** Printed at this many hundredths of its size. */
  scale: number;
  /** How many rows stand at the head of every page. */
  titleRows: number;
}

/** Lines are parted by its measure; Excel has it on every system. */
const FONT = "Arial";

/** Margins of a printed sheet [pt], which printers reach on A4 and Letter. */
const MARGINS = { top: 29, bottom: 36, left: 29, right: 29, header: 14, footer: 18 };

/** Makes a new sheet laid out for printing. Excel refuses a name that is taken, so that nothing is written over. */
export function addPrintSheet(given: PrintSheet): Promise<void> {
  const { sheet: name, cells, widths, heights, bold, sized, wrapped, underlined, pictures } = given;
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
    ifThere(() => (all.format.verticalAlignment = "Center"));
    ifThere(() => underlined.forEach((area) => (at(area).format.borders.getItem("EdgeBottom").style = "Continuous")));
    ifThere(() => {
      for (const { height, row, rows } of bands(heights))
        at({ row, column: 0, rows, columns: 1 }).format.rowHeight = height;
    });
    ifThere(() => layOut(sheet, given));
    sheet.activate();
    await commit();
    if (pictures.length > 0) await addPictures({ context, commit }, sheet, pictures);
  });
}

/** Rows of one height under each other, taken together. */
function bands(heights: readonly number[]): { height: number; row: number; rows: number }[] {
  const found: { height: number; row: number; rows: number }[] = [];
  heights.forEach((height, row) => {
    const last = found.at(-1);
    if (last?.height === height) last.rows += 1;
    else found.push({ height, row, rows: 1 });
  });
  return found;
}

/** Page breaks, margins and the heads of pages, where this Excel has them (ExcelApi 1.9). */
function layOut(sheet: Excel.Worksheet, { pageStarts, titleRows, scale }: PrintSheet): void {
  if (!knows("1.9")) return;
  for (const row of pageStarts) sheet.horizontalPageBreaks.add(`A${row + 1}`);
  if (titleRows > 0) sheet.pageLayout.setPrintTitleRows(`$1:$${titleRows}`);
  const { defaultForAllPages } = sheet.pageLayout.headersFooters;
  Object.assign(defaultForAllPages, {
    leftFooter: "&F  &A",
    centerFooter: "Printed &D &T",
    rightFooter: "Page &P of &N",
  });
  sheet.pageLayout.setPrintMargins("Points", MARGINS);
  sheet.pageLayout.zoom = { scale };
}
