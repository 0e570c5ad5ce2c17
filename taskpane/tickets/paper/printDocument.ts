import { escapeText } from "../../../src/drawing/paper/toSvg";
import type { Ticket } from "../../../src/shop/ticket/ticket";
import { ticketTitle } from "../../../src/shop/ticket/ticketTitle";
import type { LengthStyle } from "../../../src/units/formatLength";
import type { CutResult } from "../../totals/cuts/cutWork";
import { cutSheetHtml } from "./cutSheetHtml";
import { PAGE_CSS } from "./paperCss";
import { isClose, type TicketLook } from "../../../src/drawing/ticket/ticketScenes";
import { ticketHtml } from "./ticketHtml";
import { ticketStrings } from "../ticketStrings";

const t = ticketStrings.ticket;

export interface PrintOptions {
  readonly style: LengthStyle;
  /** Small pieces share a page. */
  readonly together: boolean;
  /** Day and time of printing, as the person's language writes them. */
  readonly printed: string;
  /** What the runs were last issued as; nothing where they never were. */
  readonly issue?: string;
  readonly cuts?: CutResult;
}

/** For a page 186 mm wide: letters of a drawing 530 px wide come out at 12 pt; smaller where pieces or bends share the page. */
const ALONE = { stickWidth: 530, shapeWidth: 280 };
const CLOSE = { stickWidth: 640, shapeWidth: 230, low: true };
const TOGETHER = { stickWidth: 620, shapeWidth: 240, low: true };

/** A whole page of HTML, complete in itself: tickets, then the cutting sheet. Prints clean on A4 and Letter. */
export function printDocument(tickets: readonly Ticket[], options: PrintOptions): string {
  const { together, style, cuts } = options;
  const printed = [options.issue && `${t.issue} ${options.issue}`, t.printed(options.printed)]
    .filter(Boolean)
    .join(" · ");
  const lookOf = (ticket: Ticket): TicketLook => ({
    ...{ style, ...(together ? TOGETHER : isClose(ticket) ? CLOSE : ALONE) },
  });
  const title = ticketTitle(tickets);
  const sheets = tickets.map((ticket, index) => {
    const { run, piece, pieces } = ticket;
    const left = [run.name, t.piece(piece, pieces), run.job, run.area].filter(Boolean).join(" · ");
    const right = `${t.number(index + 1, tickets.length)} · ${printed}`;
    return sheet(left, right, ticketHtml(ticket, lookOf(ticket)));
  });
  if (cuts && cuts.lots.length + cuts.problems.length > 0) {
    const left = [ticketStrings.cuts.title, tickets[0]?.run.job ?? ""].filter(Boolean).join(" · ");
    sheets.push(sheet(left, printed, cutSheetHtml(cuts, style), " rlt-cutpage"));
  }
  return [
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${escapeText(title)}</title>`,
    `<style>${PAGE_CSS}</style></head>`,
    `<body${together ? ` class="rlt-together"` : ""}>`,
    ...sheets,
    "</body></html>",
  ].join("\n");
}

/** The head row stands on every page that a ticket runs over. */
const sheet = (left: string, right: string, body: string, more = ""): string =>
  [
    `<table class="rlt-page${more}" role="presentation"><thead><tr><td>${escapeText(left)}`,
    `<span>${escapeText(right)}</span></td></tr></thead><tbody><tr><td>${body}</td></tr></tbody></table>`,
  ].join("");
