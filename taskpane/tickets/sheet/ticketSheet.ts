import { PICTURE_DOWN, type BlockPicture } from "../../../src/drawing/ticket/blocks";
import type { CutPages } from "../../../src/drawing/ticket/cutBlocks";
import type { PageSheet } from "../../../src/drawing/ticket/pages";
import { stickerSheet } from "../../../src/drawing/ticket/stickerSheet";
import { LETTERS, PRINT_SCALE } from "../../../src/drawing/ticket/ticketLines";
import { ticketSheets as layOut } from "../../../src/drawing/ticket/ticketSheet";
import type { Ticket } from "../../../src/shop/ticket/ticket";
import { STICKER_LABELS } from "../../../src/shop/ticket/ticketLabels";
import { ticketTitle } from "../../../src/shop/ticket/ticketTitle";
import type { LengthStyle } from "../../../src/units/formatLength";
import type { Contents, PrintSheet, SheetPicture } from "../../excel";
import { freeSheetName } from "../../workbook/plan";
import { drawPng } from "../paper/drawPng";
import { bandsOf, underlinesOf } from "./ticketBands";
import { ticketStrings } from "../ticketStrings";

export interface SheetLook {
  readonly style: LengthStyle;
  /** With drawings and codes, where the host takes pictures. */
  readonly pictures: boolean;
}

/** The size most lines of a ticket have [pt]. */
const USUAL_SIZE = LETTERS.plain.size;

/** The tickets as sheets that print a page to each piece, the cutting sheet after the last, under names that are free. */
export const ticketSheets = (
  tickets: readonly Ticket[],
  look: SheetLook & { readonly issue: string; readonly straight: number; readonly cuts?: CutPages },
  contents: Contents,
): PrintSheet[] => printSheets(layOut(tickets, { ...look, title: ticketTitle(tickets) }), sheetName(tickets), contents);

/** A sheet of stickers, one for each piece to make. */
export const labelSheets = (tickets: readonly Ticket[], look: SheetLook, contents: Contents): PrintSheet[] =>
  printSheets([stickerSheet(tickets, look)], sheetName(tickets, STICKER_LABELS.name), contents);

function printSheets(pages: readonly PageSheet[], name: string, contents: Contents): PrintSheet[] {
  const taken = [...contents.sheets];
  return pages.map((page) => {
    const sheet = freeSheetName(name, contents, taken);
    taken.push(sheet);
    return printSheet(page, sheet);
  });
}

function printSheet({ columns, lines, pageStarts, pictures, titleLines }: PageSheet, sheet: string): PrintSheet {
  const looks = { lines, columns: columns.length };
  return {
    sheet,
    cells: lines.map(({ cells }) => columns.map((_, column) => cells[column]?.text ?? "")),
    widths: [...columns],
    heights: lines.map(({ height }) => height),
    size: USUAL_SIZE,
    bold: bandsOf(looks, ({ bold = false }) => bold, false),
    sized: bandsOf(looks, ({ size }) => size, USUAL_SIZE).map(({ value, ...area }) => ({ ...area, size: value })),
    wrapped: bandsOf(looks, ({ wrap = false }) => wrap, false),
    underlined: underlinesOf(looks),
    pictures: pictures.map(pictureOf),
    pageStarts: [...pageStarts],
    titleRows: titleLines,
    scale: Math.round(100 * PRINT_SCALE),
  };
}

const pictureOf = ({ line: row, column, width, height, pixels, scene }: BlockPicture): SheetPicture => ({
  ...{ row, column, width, height, down: PICTURE_DOWN, title: scene.title, description: scene.description },
  png: () => drawPng(scene, pixels),
});

/** A name for the sheet. */
const sheetName = (tickets: readonly Ticket[], what: string = ticketStrings.sheet.name): string => {
  const names = new Set(tickets.map(({ run }) => run.name));
  const [only] = [...names];
  const name = names.size === 1 && only !== undefined ? `${what} ${only}` : what;
  return name.replace(/[[\]:*?/\\']/g, "-").slice(0, 28);
};
