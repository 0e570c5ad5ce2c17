import { stickerLines } from "../../../src/drawing/ticket/stickerSheet";
import { escapeText } from "../../../src/drawing/paper/toSvg";
import type { Ticket } from "../../../src/shop/ticket/ticket";
import { ticketTitle } from "../../../src/shop/ticket/ticketTitle";
import { writerFor } from "../../../src/shop/ticket/ticketWords";
import type { LengthStyle } from "../../../src/units/formatLength";
import { codeHtml, text } from "./ticketHtml";
import { LABELS_CSS } from "./paperCss";
import { ticketStrings as t } from "../ticketStrings";

/** More stickers than this at once are not meant: a quantity with a zero too many would print for hours. */
export const MOST_LABELS = 3000;

/** A whole page of HTML with a sticker for each piece to make, three beside each other, on A4 and Letter. */
export function labelsDocument(tickets: readonly Ticket[], style: LengthStyle): string {
  const title = `${t.labels}, ${ticketTitle(tickets)}`;
  return [
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${escapeText(title)}</title>`,
    `<style>${LABELS_CSS}</style></head><body class="rlt-labels">`,
    ...tickets.flatMap((ticket) =>
      Array.from({ length: ticket.run.quantity }, (_, place) => labelHtml(ticket, place + 1, style)),
    ),
    "</body></html>",
  ].join("\n");
}

function labelHtml(ticket: Ticket, number: number, style: LengthStyle): string {
  const lines = stickerLines(ticket, number, writerFor(style));
  return [
    `<article class="rlt-label">${codeHtml(ticket)}<div><h3>${text(ticket.name)}</h3>`,
    ...lines.map((line) => `<p>${text(line)}</p>`),
    "</div></article>",
  ].join("");
}
