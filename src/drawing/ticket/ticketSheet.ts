import type { Ticket } from "../../shop/ticket/ticket";
import { CUT_SHEET_LABELS, TICKET_LABELS as t, TICKET_SHEET_LABELS as s } from "../../shop/ticket/ticketLabels";
import { writerFor } from "../../shop/ticket/ticketWords";
import type { LengthStyle } from "../../units/formatLength";
import { cutBlocks, type CutPages } from "./cutBlocks";
import { Pages, type PageSheet } from "./pages";
import { ticketBlocks } from "./ticketBlocks";
import { gapLine, textLines, TICKET_COLUMNS } from "./ticketLines";

export interface TicketSheetOptions {
  readonly style: LengthStyle;
  /** With the drawings of stick and finished piece, of each bend at the shoe, and the piece's code. */
  readonly pictures?: boolean;
  /** Stands in the first rows, which print at the head of every page. */
  readonly title: string;
  /** What the runs were last issued as; nothing where they never were. */
  readonly issue?: string;
  /** Straight pieces without a ticket, which stand on the cutting sheet. */
  readonly straight?: number;
  /** The cutting sheet, after the tickets. */
  readonly cuts?: CutPages;
  /** Runs that have no tickets, and why: on a page of their own at the end. */
  readonly problems?: readonly { readonly run: string; readonly message: string }[];
}

/** [pt] */
const TITLE_GAP = 4;
/**
 * Page breaks after which a further sheet begins: well under the 1,023 of a sheet ("Excel specifications and limits" has
 * 1,026), for a ticket takes a few pages at most.
 */
const BREAKS = 900;

/**
 * The tickets as rows of worksheets, a page to each piece; one sheet at least. A ticket that is longer than a page goes
 * on under its name; no bend and no drawing is cut in two.
 */
export function ticketSheets(tickets: readonly Ticket[], options: TicketSheetOptions): PageSheet[] {
  const { style, pictures = false, title, issue, straight = 0, cuts, problems = [] } = options;
  const words = writerFor(style);
  const about = [
    `${title}.`,
    ...(issue ? [s.issue(issue)] : []),
    s.made,
    ...(cuts && straight > 0 ? [s.straight(straight)] : []),
  ];
  const begin = () => new Pages(TICKET_COLUMNS, [...textLines(about.join(" "), "small"), gapLine(TITLE_GAP)]);
  let sheet = begin();
  const sheets = [sheet];
  for (const ticket of tickets) {
    if (sheet.pageStarts.length >= BREAKS) sheets.push((sheet = begin()));
    const name = `${ticket.run.name} ${t.piece(ticket.piece, ticket.pieces)}, ${s.continued}`;
    sheet.add(ticketBlocks(ticket, words, { style, pictures }), textLines(name, "strong"));
  }
  if (cuts && cuts.lots.length + cuts.problems.length > 0) {
    sheet.add(cutBlocks(cuts, style), textLines(`${CUT_SHEET_LABELS.title}, ${s.continued}`, "strong"));
  }
  if (problems.length > 0) {
    const heading = textLines(s.notMade, "strong");
    const reasons = problems.map(({ run, message }) => ({ lines: textLines(`${run}: ${message}`, "check") }));
    sheet.add([{ lines: heading }, ...reasons], heading);
  }
  return sheets;
}
