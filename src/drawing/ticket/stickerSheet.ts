import type { Ticket } from "../../shop/ticket/ticket";
import { STICKER_LABELS as t } from "../../shop/ticket/ticketLabels";
import { writerFor, type TicketWriter } from "../../shop/ticket/ticketWords";
import type { LengthStyle } from "../../units/formatLength";
import { codePicture, type BlockPicture, type TicketBlock } from "./blocks";
import { pieceCode } from "./headBlock";
import { Pages, type PageSheet } from "./pages";
import { heightOf, parted, type TicketCell, type TicketLine } from "./ticketLines";

/** A column for the code and one for the words of each sticker, three stickers side by side [pt]. */
const BESIDE = 3;
const COLUMNS = { code: 70, words: 116 };
const STICKER_COLUMNS = Array.from({ length: BESIDE }, () => [COLUMNS.code, COLUMNS.words]).flat();
const CODE_WIDTH = 66;
/** Rows of words under the name; what is longer ends in an ellipsis. */
const ROWS = 5;
/** Room between a sticker's words and the line it is cut along [pt]. */
const RULE = 5;

/** How many stickers tickets take: one for each piece to make. */
export const stickerCount = (tickets: readonly Ticket[]): number =>
  tickets.reduce((sum, { run }) => sum + run.quantity, 0);

/** What stands on a piece's sticker under its name: job and area, conduit and length, which of how many, the ends. */
export function stickerLines({ run, cutLength, bends, ends }: Ticket, number: number, words: TicketWriter): string[] {
  return [
    [run.job, run.area].filter(Boolean).join(" · "),
    `${run.raceway} ${run.size} · ${words.length(cutLength)}`,
    t.count(number, run.quantity, bends.length),
    [ends.datum, ends.far].filter(Boolean).join(" → "),
  ].filter(Boolean);
}

/** A sticker for each piece to make as rows of a worksheet: three beside each other, none cut by a page's end. */
export function stickerSheet(
  tickets: readonly Ticket[],
  { style, pictures = false }: { readonly style: LengthStyle; readonly pictures?: boolean },
): PageSheet {
  const words = writerFor(style);
  const stickers = tickets.flatMap((ticket) =>
    Array.from({ length: ticket.run.quantity }, (_, place) => ({ ticket, lines: cellsOf(ticket, place + 1, words) })),
  );
  const rows = Array.from({ length: Math.ceil(stickers.length / BESIDE) }, (_, row): TicketBlock => {
    const beside = stickers.slice(row * BESIDE, (row + 1) * BESIDE);
    return {
      lines: rowLines(beside.map(({ lines }) => lines)),
      pictures: pictures ? beside.map(({ ticket }, place) => codeAt(ticket, place)) : [],
    };
  });
  const sheet = new Pages(STICKER_COLUMNS, []);
  sheet.add(rows, []);
  return sheet;
}

const codeAt = (ticket: Ticket, place: number): BlockPicture =>
  codePicture(pieceCode(ticket), CODE_WIDTH, { column: 2 * place });

/** The words of a sticker, row by row: its name first. */
function cellsOf(ticket: Ticket, number: number, words: TicketWriter): TicketCell[] {
  const [name, ...more] = parted(ticket.name, "strong", COLUMNS.words);
  const lines = [
    ...more,
    ...stickerLines(ticket, number, words).flatMap((line) => parted(line, "small", COLUMNS.words)),
  ];
  const shown = lines.length > ROWS ? [...lines.slice(0, ROWS - 1), `${lines[ROWS - 1]!.slice(0, -1)}…`] : lines;
  return [{ text: name!, letters: "strong" }, ...shown.map((text): TicketCell => ({ text, letters: "small" }))];
}

function rowLines(stickers: readonly (readonly TicketCell[])[]): TicketLine[] {
  const empty: TicketCell = { text: "", letters: "plain" };
  const rows = Array.from({ length: ROWS + 1 }, (_, row) => ({
    cells: stickers.flatMap((cells) => [empty, cells[row] ?? empty]),
    height: heightOf(row === 0 ? "strong" : "small"),
  }));
  const rule = stickers.flatMap((): TicketCell[] => [
    { text: "", letters: "rule" },
    { text: "", letters: "rule" },
  ]);
  return [...rows, { cells: rule, height: RULE }];
}
