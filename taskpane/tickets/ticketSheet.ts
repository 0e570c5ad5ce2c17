import { PICTURE_DOWN, type BlockPicture } from "../../src/drawing/ticket/blocks";
import type { CutPages } from "../../src/drawing/ticket/cutBlocks";
import type { PageSheet } from "../../src/drawing/ticket/pages";
import { stickerSheet } from "../../src/drawing/ticket/stickerSheet";
import { LETTERS, PRINT_SCALE, type LettersLook, type TicketLine } from "../../src/drawing/ticket/ticketLines";
import { ticketSheet as layOut } from "../../src/drawing/ticket/ticketSheet";
import type { Ticket } from "../../src/shop/ticket/ticket";
import { ticketTitle } from "../../src/shop/ticket/ticketTitle";
import type { LengthStyle } from "../../src/units/formatLength";
import type { PrintSheet, SheetPicture } from "../excel";
import { drawPng } from "./drawPng";
import { ticketStrings } from "./ticketStrings";

export interface SheetLook {
  readonly style: LengthStyle;
  /** With drawings and codes, where the host takes pictures. */
  readonly pictures: boolean;
}

/** The tickets as a sheet that prints a page to each piece, and the cutting sheet after them. */
export const ticketSheet = (
  tickets: readonly Ticket[],
  look: SheetLook & { readonly issue: string; readonly straight: number; readonly cuts?: CutPages },
  sheet: string,
): PrintSheet => printSheet(layOut(tickets, { ...look, title: ticketTitle(tickets) }), sheet);

/** A sheet of stickers, one for each piece to make. */
export const labelSheet = (tickets: readonly Ticket[], look: SheetLook, sheet: string): PrintSheet =>
  printSheet(stickerSheet(tickets, look), sheet);

function printSheet({ columns, lines, pageStarts, pictures, titleLines }: PageSheet, sheet: string): PrintSheet {
  const looks = lines.flatMap(looksOf);
  const areas = (wanted: (look: LettersLook) => boolean | undefined) =>
    looks.filter(({ look }) => wanted(look)).map(({ area }) => area);
  return {
    sheet,
    cells: lines.map(({ cells }) => columns.map((_, column) => cells[column]?.text ?? "")),
    widths: [...columns],
    heights: lines.map(({ height }) => height),
    bold: areas(({ bold }) => bold),
    sized: looks
      .filter(({ look }) => look.size !== LETTERS.plain.size)
      .map(({ area, look: { size } }) => ({ ...area, size })),
    wrapped: areas(({ wrap }) => wrap),
    underlined: areas(({ underline }) => underline),
    pictures: pictures.map(pictureOf),
    pageStarts: [...pageStarts],
    titleRows: titleLines,
    scale: Math.round(100 * PRINT_SCALE),
  };
}

const pictureOf = ({ line: row, column, width, height, pixels, scene }: BlockPicture): SheetPicture => ({
  ...{ row, column, width, height, down: PICTURE_DOWN, title: scene.title, description: scene.description },
  png: drawPng(scene, pixels),
});

/** Cells of a row that look otherwise than plain, those alike side by side taken together. */
function looksOf({ cells }: TicketLine, row: number) {
  const found: { look: LettersLook; area: PrintSheet["bold"][number] }[] = [];
  cells.forEach(({ letters }, column) => {
    const [look, last] = [LETTERS[letters], found.at(-1)];
    if (last?.look === look && last.area.column + last.area.columns === column) last.area.columns += 1;
    else if (letters !== "plain") found.push({ look, area: { row, column, rows: 1, columns: 1 } });
  });
  return found;
}

/** A name for the sheet. */
export const sheetName = (tickets: readonly Ticket[], what: string = ticketStrings.sheet.name): string => {
  const names = new Set(tickets.map(({ run }) => run.name));
  const [only] = [...names];
  const name = names.size === 1 && only !== undefined ? `${what} ${only}` : what;
  return name.replace(/[[\]:*?/\\']/g, "-").slice(0, 28);
};
