import type { Ticket } from "../../shop/ticket/ticket";
import { TICKET_LABELS as t, TICKET_SHEET_LABELS as s } from "../../shop/ticket/ticketLabels";
import { writerFor } from "../../shop/ticket/ticketWords";
import type { LengthStyle } from "../../units/formatLength";
import { ticketBlocks, type BlockPicture, type TicketBlock } from "./ticketBlocks";
import { gapLine, heightOfLines, textLines, type TicketLine } from "./ticketLines";

/** Tickets laid out as rows of a worksheet. */
export interface TicketSheet {
  readonly lines: readonly TicketLine[];
  /** How many of them are the title. */
  readonly titleLines: number;
  /** Rows that begin a page, the first page's not among them; counted from 0. */
  readonly pageStarts: readonly number[];
  /** Drawings, each hanging from the top of row `line` at the left edge. */
  readonly pictures: readonly BlockPicture[];
}

export interface TicketSheetOptions {
  readonly style: LengthStyle;
  /** With the drawings of stick and finished piece. */
  readonly pictures?: boolean;
  /** Stands in the first rows, which print at the head of every page. */
  readonly title: string;
  /** Runs that have no tickets, and why: on a page of their own at the end. */
  readonly problems?: readonly { readonly run: string; readonly message: string }[];
}

/**
 * A ticket is printed so much smaller: a font that stands in for a missing one may be a seventh wider, and the columns
 * counted in its digits with it, and both still keep to the page.
 */
export const PRINT_SCALE = 0.9;
/** What margins and a footer leave of a Letter page's height, less some air for printers that round up [pt]. */
const PAGE_HEIGHT = 690 / PRINT_SCALE;
/** [pt] */
const TITLE_GAP = 4;

/**
 * The tickets as rows of a worksheet, a page to each piece. A ticket that is longer than a page goes on under its name;
 * no bend and no drawing is cut in two.
 */
export function ticketSheet(tickets: readonly Ticket[], options: TicketSheetOptions): TicketSheet {
  const { style, pictures = false, title, problems = [] } = options;
  const words = writerFor(style);
  const sheet = new Pages([...textLines(`${title}. ${s.made}`, "small"), gapLine(TITLE_GAP)]);
  for (const ticket of tickets) {
    const name = `${ticket.run.name} ${t.piece(ticket.piece, ticket.pieces)}, ${s.continued}`;
    sheet.add(ticketBlocks(ticket, words, { style, pictures }), textLines(name, "strong"));
  }
  if (problems.length > 0) {
    const heading = textLines(s.notMade, "strong");
    const reasons = problems.map(({ run, message }) => ({ lines: textLines(`${run}: ${message}`, "check") }));
    sheet.add([{ lines: heading }, ...reasons], heading);
  }
  return sheet;
}

/** Fills pages with blocks from the top. */
class Pages implements TicketSheet {
  readonly lines: TicketLine[];
  readonly titleLines: number;
  readonly pageStarts: number[] = [];
  readonly pictures: BlockPicture[] = [];
  private readonly room: number;

  constructor(title: readonly TicketLine[]) {
    this.lines = [...title];
    this.titleLines = title.length;
    this.room = PAGE_HEIGHT - heightOfLines(title);
  }

  /** Blocks from the top of a new page on; `continued` stands over what goes on on another. */
  add(blocks: readonly TicketBlock[], continued: readonly TicketLine[]): void {
    if (this.lines.length > this.titleLines) this.pageStarts.push(this.lines.length);
    let used = 0;
    for (const { lines, picture } of blocks) {
      const height = heightOfLines(lines);
      if (used > 0 && used + height > this.room) {
        this.pageStarts.push(this.lines.length);
        this.lines.push(...continued);
        used = heightOfLines(continued);
      }
      if (picture) this.pictures.push({ ...picture, line: this.lines.length + picture.line });
      this.lines.push(...lines);
      used += height;
    }
  }
}
