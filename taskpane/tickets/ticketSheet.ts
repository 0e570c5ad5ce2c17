import { LETTERS, TICKET_COLUMNS, type LettersLook, type TicketLine } from "../../src/drawing/ticket/ticketLines";
import { PRINT_SCALE, ticketSheet as layOut } from "../../src/drawing/ticket/ticketSheet";
import type { Ticket } from "../../src/shop/ticket/ticket";
import { ticketTitle } from "../../src/shop/ticket/ticketTitle";
import type { LengthStyle } from "../../src/units/formatLength";
import type { PrintSheet } from "../excel";
import { ticketStrings } from "./ticketStrings";

/** The tickets as a sheet that prints a page to each piece. */
export function ticketSheet(tickets: readonly Ticket[], style: LengthStyle, sheet: string): PrintSheet {
  const { lines, pageStarts, titleLines } = layOut(tickets, { style, title: ticketTitle(tickets) });
  const looks = lines.flatMap(looksOf);
  return {
    sheet,
    cells: lines.map(({ cells }) => TICKET_COLUMNS.map((_, column) => cells[column]?.text ?? "")),
    widths: [...TICKET_COLUMNS],
    bold: looks.filter(({ look }) => look.bold).map(({ area }) => area),
    sized: looks
      .filter(({ look }) => look.size !== LETTERS.plain.size)
      .map(({ area, look: { size } }) => ({ ...area, size })),
    wrapped: looks.filter(({ look }) => look.wrap).map(({ area }) => area),
    pageStarts: [...pageStarts],
    titleRows: titleLines,
    scale: PRINT_SCALE,
  };
}

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
export const sheetName = (tickets: readonly Ticket[]): string => {
  const names = new Set(tickets.map(({ run }) => run.name));
  const [only] = [...names];
  const name =
    names.size === 1 && only !== undefined ? `${ticketStrings.sheet.name} ${only}` : ticketStrings.sheet.name;
  return name.replace(/[[\]:*?/\\']/g, "-").slice(0, 28);
};
