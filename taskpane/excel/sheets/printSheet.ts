import { batch, type Commit } from "../batch";
import { ifThere, knows } from "../ifThere";
import { inParts } from "../inParts";
import type { PrintArea } from "./printArea";
import { addPictures, type SheetPicture } from "./sheetPictures";
import { eachWith, grouped } from "./someRanges";
import { takeAway, withoutHalves } from "./takeAway";

/** A sheet to be printed: text cells, how they look, and the rows that begin a page. */
export interface PrintSheet {
  sheet: string;
  cells: string[][];
  /** Width of each column and height of each row [pt]. */
  widths: number[];
  heights: number[];
  /** Size of letters where nothing else is said [pt]. */
  size: number;
  bold: PrintArea[];
  /** Areas with larger or smaller letters [pt]. */
  sized: (PrintArea & { size: number })[];
  /** Areas whose text goes on in further lines of its cell. */
  wrapped: PrintArea[];
  /** Areas with a thin line under each cell. */
  underlined: PrintArea[];
  pictures: SheetPicture[];
  pageStarts: number[];
  /** Printed at this many hundredths of its size. */
  scale: number;
  /** How many rows stand at the head of every page. */
  titleRows: number;
}

/** How a long piece of work is followed and stopped. */
export interface Progress {
  /** Told after each part: 0 at the beginning, 1 at the end. */
  onShare(share: number): void;
  isCanceled(): boolean;
}

/** A picture takes about as long as so many rows. */
const ROWS_OF_A_PICTURE = 10;

/** Lines are parted by its measure; Excel has it on every system. */
const FONT = "Arial";

/** Margins of a printed sheet [pt], which printers reach on A4 and Letter. */
const MARGINS = { top: 29, bottom: 36, left: 29, right: 29, header: 14, footer: 18 };

/**
 * Makes new sheets laid out for printing, a band of rows with each round trip. Excel refuses a name that is taken, so that
 * nothing is written over. When it cannot be finished, or is canceled, the sheets are taken away again.
 * @returns whether they were made; false where it was canceled
 */
export async function addPrintSheets(sheets: readonly PrintSheet[], progress: Progress): Promise<boolean> {
  const made: string[] = [];
  const weight = ({ cells, pictures }: PrintSheet) => cells.length + pictures.length * ROWS_OF_A_PICTURE;
  const total = sheets.reduce((sum, sheet) => sum + weight(sheet), 0);
  let done = 0;
  /** Says how far it is; false where it is to stop. */
  const goOn = (more: number) => {
    progress.onShare((done += more) / total);
    return !progress.isCanceled();
  };
  try {
    const whole = await batch(async (context, commit) => {
      for (const sheet of sheets) {
        context.workbook.worksheets.add(sheet.sheet);
        await commit();
        made.push(sheet.sheet);
        const place = context.workbook.worksheets.getItem(sheet.sheet);
        const isFull =
          (await fill(place, sheet, commit, goOn)) &&
          (await addPictures({ context, commit }, place, sheet.pictures, (count) => goOn(count * ROWS_OF_A_PICTURE)));
        if (!isFull) return false;
      }
      context.workbook.worksheets.getItem(sheets[0]!.sheet).activate();
      await commit();
      return true;
    });
    if (!whole) await takeAway(made);
    return whole;
  } catch (error) {
    throw await withoutHalves(made, error);
  }
}

async function fill(
  sheet: Excel.Worksheet,
  given: PrintSheet,
  commit: Commit,
  goOn: (rows: number) => boolean,
): Promise<boolean> {
  const { cells, widths, pageStarts } = given;
  widths.forEach((width, at) => {
    const column = sheet.getRangeByIndexes(0, at, 1, 1).getEntireColumn();
    // A single value is for all of the cells, though the types know tables of values only.
    column.numberFormat = "@" as unknown as string[][];
    ifThere(() => (column.format.columnWidth = width));
    ifThere(() => (column.format.font.size = given.size));
    ifThere(() => (column.format.font.name = FONT));
    ifThere(() => (column.format.verticalAlignment = "Center"));
  });
  ifThere(() => layOut(sheet, given));
  let row = 0;
  for (const part of inParts(cells)) {
    sheet.getRangeByIndexes(row, 0, part.length, widths.length).formulas = part;
    await commit();
    row += part.length;
    if (!goOn(part.length)) return false;
  }
  look(sheet, given);
  ifThere(() => {
    if (!knows("1.9")) return;
    for (const start of pageStarts) sheet.horizontalPageBreaks.add(`A${start + 1}`);
  });
  await commit();
  return true;
}

/** Letters, lines and heights, many areas with each call. */
function look(sheet: Excel.Worksheet, { bold, sized, wrapped, underlined, heights }: PrintSheet): void {
  eachWith(sheet, bold, ({ format }) => (format.font.bold = true));
  eachWith(sheet, wrapped, ({ format }) => (format.wrapText = true));
  const under = (areas: PrintArea[], edge: "EdgeBottom" | "InsideHorizontal") =>
    eachWith(sheet, areas, ({ format }) => (format.borders.getItem(edge).style = "Continuous"));
  under(underlined, "EdgeBottom");
  under(
    underlined.filter(({ rows }) => rows > 1),
    "InsideHorizontal",
  );
  for (const [size, areas] of grouped(sized, (area) => area.size))
    eachWith(sheet, areas, ({ format }) => (format.font.size = size));
  for (const [height, areas] of grouped(rowsAlike(heights), (area) => area.height))
    eachWith(sheet, areas, ({ format }) => (format.rowHeight = height));
}

/** Rows of one height under each other, taken together. */
function rowsAlike(heights: readonly number[]): (PrintArea & { height: number })[] {
  const found: (PrintArea & { height: number })[] = [];
  heights.forEach((height, row) => {
    const last = found.at(-1);
    if (last?.height === height) last.rows += 1;
    else found.push({ height, row, rows: 1, column: 0, columns: 1 });
  });
  return found;
}

/** Margins, size and the heads and feet of pages, where this Excel has them (ExcelApi 1.9). */
function layOut(sheet: Excel.Worksheet, { titleRows, scale }: PrintSheet): void {
  if (!knows("1.9")) return;
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
