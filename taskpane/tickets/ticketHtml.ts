import { Sketch } from "../../src/drawing/paper/sketch";
import { lineUpSymbol } from "../../src/drawing/paper/symbols";
import { escapeText, toSvg } from "../../src/drawing/paper/toSvg";
import type { Ticket, TicketBend } from "../../src/shop/ticket/ticket";
import { TICKET_CAUTIONS } from "../../src/shop/ticket/ticketCautions";
import { writerFor, type TicketWriter } from "../../src/shop/ticket/ticketWords";
import { shapeScene, stickScene, type TicketLook } from "../../src/drawing/ticket/ticketScenes";
import { ticketStrings } from "./ticketStrings";

const t = ticketStrings.ticket;

/** A ticket as HTML; every text in it is escaped. Styled by paperCss. */
export function ticketHtml(ticket: Ticket, look: TicketLook): string {
  const words = writerFor(look.style);
  const { bends } = ticket;
  return [
    `<article class="rlt-ticket">`,
    head(ticket, words),
    `<div class="rlt-stick">${toSvg(stickScene(ticket, look, words.length))}</div>`,
    bends.length === 0 ? `<p class="rlt-lead">${text(t.straight)}</p>` : bendTable(bends, words),
    ticket.join ? `<p class="rlt-join"><b>${text(t.coupledOn)}</b> ${text(words.join(ticket.join))}</p>` : "",
    list("rlt-caution", t.caution, [...TICKET_CAUTIONS, ...(bends.length > 0 ? [t.source(ticket.shoe.source)] : [])]),
    bends.length === 0 ? "" : finished(ticket, look, words),
    "</article>",
  ].join("\n");
}

function head(ticket: Ticket, words: TicketWriter): string {
  const { run } = ticket;
  const facts: [name: string, value: string][] = [
    [t.job, run.job],
    [t.area, run.area],
    [t.conduit, `${run.raceway} ${run.size}`],
    [t.datumEnd, ticket.ends.datum],
    [t.farEnd, ticket.ends.far],
    ...(ticket.bends.length > 0 ? ([[t.shoe, words.shoe(ticket)]] as [string, string][]) : []),
  ];
  const shown = facts.filter(([, value]) => value !== "");
  return [
    `<header class="rlt-head">`,
    `<h3>${text(run.name)} <span>${text(t.piece(ticket.piece, ticket.pieces))}</span></h3>`,
    `<p class="rlt-make">${text(t.make(run.quantity))}</p>`,
    `<p class="rlt-cut">${text(t.cut)} <strong>${text(words.length(ticket.cutLength))}</strong> <small>${text(words.exact(ticket.cutLength))}</small></p>`,
    `<dl>${shown.map(([name, value]) => `<div><dt>${text(name)}</dt><dd>${text(value)}</dd></div>`).join("")}</dl>`,
    "</header>",
  ].join("\n");
}

function bendTable(bends: readonly TicketBend[], words: TicketWriter): string {
  const headers = [t.bend, t.mark, t.turn, t.lineUp, t.hook, t.dial];
  return [
    `<table class="rlt-bends"><caption>${text(t.marks)}</caption>`,
    `<thead><tr>${headers.map((header) => `<th scope="col">${text(header)}</th>`).join("")}</tr></thead>`,
    `<tbody>${bends.map((bend, index) => bendRow(bend, bends[index - 1], words)).join("\n")}</tbody></table>`,
  ].join("\n");
}

function bendRow(bend: TicketBend, before: TicketBend | undefined, words: TicketWriter): string {
  const cell = (name: string, label: string, html: string) =>
    `<td class="rlt-${name}" data-label="${label}">${html}</td>`;
  const dial = typeof bend.dial === "number" ? words.dial(bend) : t.pastDial;
  const notes = bend.notes.map((note) => `<small>${text(note)}</small>`).join("");
  return [
    `<tr><th scope="row"><b>${bend.number}</b></th>`,
    cell("mark", t.mark, `<b>${text(words.length(bend.mark))}</b><small>${text(words.exact(bend.mark))}</small>`),
    cell("turn", t.turn, `${text(words.turn(bend, before))}<small>${text(bend.kind)}</small>${notes}`),
    cell("lineup", t.lineUp, `${symbol(bend.lineUp)}${text(bend.lineUp)}`),
    cell("hook", t.hook, text(t.hookEnd[bend.hook])),
    cell(
      "dial",
      t.dial,
      `<b>${text(dial)}</b>${bend.dial === bend.angle ? "" : `<small>${text(t.finished(words.degrees(bend.angle)))}</small>`}`,
    ),
    "</tr>",
  ].join("");
}

/** The symbol as it stands on the shoe, beside its word. */
function symbol(lineUp: TicketBend["lineUp"]): string {
  const sketch = new Sketch(18);
  lineUpSymbol(sketch, lineUp, [9, 9]);
  return toSvg(sketch.finish("", "")).replace("<svg ", '<svg aria-hidden="true" ');
}

const finished = (ticket: Ticket, look: TicketLook, words: TicketWriter): string =>
  [
    `<div class="rlt-finished"><div>${toSvg(shapeScene(ticket, look, words.length))}</div>`,
    `${list("rlt-checks", t.checks, words.checks(ticket))}</div>`,
  ].join("\n");

/** Text with each length kept on one line: 3' 4-1/2" would part after the feet or at the hyphen. */
export const text = (words: string): string =>
  escapeText(words).replace(/(?:\d+&#39; )?(?:\d+-)?\d+(?:\/\d+)?&quot;/g, '<span class="rlt-length">$&</span>');

export function list(name: string, title: string, lines: readonly string[]): string {
  if (lines.length === 0) return "";
  const items = lines.map((line) => `<li>${text(line)}</li>`).join("");
  return `<section class="${name}"><h4>${text(title)}</h4><ul>${items}</ul></section>`;
}
