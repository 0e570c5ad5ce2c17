import type { Ticket } from "../../src/shop/ticket";
import { TICKET_CAUTIONS } from "../../src/shop/ticketCautions";
import { writerFor, type TicketWriter } from "../../src/shop/ticketWords";
import type { LengthStyle } from "../../src/units/formatLength";
import type { PrintSheet } from "../excel";
import { ticketStrings } from "./ticketStrings";

const t = ticketStrings.ticket;

/** Columns of a ticket on a sheet, 510 pt in all: what half-inch margins leave of A4 and Letter. */
const WIDTHS = [42, 96, 62, 76, 54, 180];
/** Letters that stand on a line across all columns. */
const LINE = 92;
const SIZES = { name: 20, marks: 16 };

interface Page {
  cells: string[][];
  /** Rows of the page in bold. */
  bold: number[];
  bendRows: { first: number; count: number };
}

/** The tickets as a sheet that prints a page to each piece. */
export function ticketSheet(tickets: readonly Ticket[], style: LengthStyle, sheet: string): PrintSheet {
  const words = writerFor(style);
  const print: PrintSheet = { sheet, cells: [], widths: WIDTHS, bold: [], large: [], wrapped: [], pageStarts: [] };
  for (const ticket of tickets) {
    const { cells, bold, bendRows } = ticketPage(ticket, words);
    const start = print.cells.length;
    print.pageStarts.push(start);
    print.cells.push(...cells);
    const across = { column: 0, columns: WIDTHS.length };
    print.bold.push(...bold.map((row) => ({ ...across, row: start + row, rows: 1 })));
    print.large.push({ ...across, row: start, rows: 1, size: SIZES.name });
    if (bendRows.count === 0) continue;
    const area = { row: start + bendRows.first, rows: bendRows.count, columns: 1 };
    for (const column of [1, 4]) print.large.push({ ...area, column, size: SIZES.marks });
    print.bold.push({ ...area, column: 0, columns: 2 });
    print.wrapped.push({ ...area, column: WIDTHS.length - 1 });
  }
  return print;
}

/** A name for the sheet. */
export const sheetName = (tickets: readonly Ticket[]): string => {
  const names = new Set(tickets.map(({ run }) => run.name));
  const [only] = [...names];
  const name =
    names.size === 1 && only !== undefined ? `${ticketStrings.sheet.name} ${only}` : ticketStrings.sheet.name;
  return name.replace(/[[\]:*?/\\']/g, "-").slice(0, 28);
};

function ticketPage(ticket: Ticket, words: TicketWriter): Page {
  const { run, bends, ends } = ticket;
  const page: Page = { cells: [], bold: [], bendRows: { first: 0, count: bends.length } };
  const put = (cells: readonly string[], bold = false): void => {
    if (bold) page.bold.push(page.cells.length);
    page.cells.push([...cells, ...WIDTHS.map(() => "")].slice(0, WIDTHS.length));
  };
  const lines = (text: string): void => wrap(text).forEach((line) => put([line]));
  put([`${run.name} ${t.piece(ticket.piece, ticket.pieces)}, ${t.make(run.quantity).toLowerCase()}`], true);
  put([`${t.cut} ${words.measure(ticket.cutLength)}`], true);
  lines([run.job, run.area, `${run.raceway} ${run.size}`].filter(Boolean).join(", "));
  if (ends.datum) lines(`${t.datumEnd}: ${ends.datum}`);
  if (ends.far) lines(`${t.farEnd}: ${ends.far}`);
  if (bends.length === 0) put([t.straight], true);
  else {
    lines(`${t.shoe}: ${words.shoe(ticket)}`);
    put([""]);
    put([t.marks], true);
    put(ticketStrings.sheet.columns, true);
    page.bendRows.first = page.cells.length;
    bends.forEach((bend, index) => {
      const turn = [words.turn(bend, bends[index - 1]), bend.kind, ...bend.notes].join("; ");
      const dial = typeof bend.dial === "number" ? words.dial(bend) : t.pastDial;
      put([String(bend.number), words.length(bend.mark), bend.lineUp, t.hookEnd[bend.hook], dial, turn]);
    });
  }
  if (ticket.join) lines(`${t.coupledOn} ${words.join(ticket.join)}`);
  for (const [title, texts] of [
    [t.checks, words.checks(ticket)],
    [t.caution, TICKET_CAUTIONS],
  ] as const) {
    if (texts.length === 0) continue;
    put([""]);
    put([title], true);
    texts.forEach(lines);
  }
  put([""]);
  lines(ticketStrings.sheet.made);
  return page;
}

/** Words parted into lines that fit across the columns, feet and inches kept together. */
function wrap(text: string): string[] {
  const lines: string[] = [];
  for (const word of text.split(/(?<!\d') /)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < LINE) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
