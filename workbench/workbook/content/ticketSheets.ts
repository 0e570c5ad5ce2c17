import { LETTERS, type TicketLine } from "../../../src/drawing/ticket/ticketLines";
import type { PageSheet } from "../../../src/drawing/ticket/pages";
import type { Scene } from "../../../src/drawing/paper/scene";
import { stickerSheet } from "../../../src/drawing/ticket/stickerSheet";
import { ticketSheets as layOut } from "../../../src/drawing/ticket/ticketSheet";
import { STICKER_LABELS, TICKET_SHEET_LABELS as t } from "../../../src/shop/ticket/ticketLabels";
import { ticketTitle } from "../../../src/shop/ticket/ticketTitle";
import { usualFont } from "../file/looks";
import { chosenTickets, type TicketChoice } from "./chosenTickets";
import type { ContentCell, Look, Picture, SheetContent } from "./sheetContent";

/** Makes a picture of a drawing: the bytes of a PNG so many pixels wide. */
export type DrawPng = (scene: Scene, width: number) => Uint8Array | Promise<Uint8Array>;

export interface TicketWishes extends TicketChoice {
  /** Without it the tickets have no pictures. */
  draw?: DrawPng;
  /** Told after each picture. */
  onPicture?: (drawn: number, of: number) => void;
  /** A sheet of stickers too, one for each piece to make. */
  stickers?: boolean;
}

const PIXELS_PER_POINT = 96 / 72;

/**
 * Sheets of shop tickets, a page to each piece, the cutting sheet after the last of them, and stickers where they are
 * wanted; from the tables as the workbook's sheets hold them.
 */
export async function ticketSheets(
  sheets: readonly SheetContent[],
  wishes: TicketWishes = {},
): Promise<SheetContent[]> {
  const { draw, onPicture, stickers = false } = wishes;
  const { tickets, problems, straight, cuts } = chosenTickets(sheets, wishes);
  if (tickets.length + problems.length + straight === 0) return [];
  const look = { style: "feet", pictures: draw !== undefined } as const;
  const laidOut = layOut(tickets, { ...look, title: ticketTitle(tickets), problems, straight, cuts });
  const parts = laidOut.map((part, index): [name: string, sheet: PageSheet] => [
    index === 0 ? t.name : `${t.name} ${index + 1}`,
    part,
  ]);
  if (stickers && tickets.length > 0) parts.push([STICKER_LABELS.name, stickerSheet(tickets, look)]);
  const count = parts.reduce((sum, [, { pictures }]) => sum + pictures.length, 0);
  const made: SheetContent[] = [];
  let drawn = 0;
  for (const [name, part] of parts) {
    const pictures: Picture[] = [];
    for (const { line: row, column, scene, width, height, pixels } of draw ? part.pictures : []) {
      const { title, description } = scene;
      pictures.push({ png: await draw!(scene, pixels), row, column, width, height, title, description });
      onPicture?.(++drawn, count);
    }
    made.push({ ...contentOf(part, name), pictures });
  }
  return made;
}

function contentOf({ columns, lines, titleLines, pageStarts }: PageSheet, name: string): SheetContent {
  return {
    name,
    cells: lines.map(contentRow),
    columns: columns.map((width) => ({ width: Math.round(width * PIXELS_PER_POINT) })),
    rowHeights: lines.map(({ height }) => height),
    pageStarts,
    frozenRows: titleLines,
    frozenColumns: 0,
    tabColor: "5B4A1F",
    tables: [],
    choices: [],
  };
}

const contentRow = ({ cells }: TicketLine): (ContentCell | null)[] =>
  cells.map(({ text, letters }) =>
    text === "" && !LETTERS[letters].underline ? null : { value: text === "" ? null : text, look: LOOKS[letters] },
  );

/** Every cell is text, whatever a run or a job is called. */
const LOOKS = Object.fromEntries(
  Object.entries(LETTERS).map(([letters, { size, ...look }]): [string, Look] => [
    letters,
    { format: "@", middle: true, ...look, ...(size === usualFont.size ? {} : { size }) },
  ]),
);
