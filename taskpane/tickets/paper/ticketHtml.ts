import { Sketch } from "../../../src/drawing/paper/sketch";
import { lineUpSymbol } from "../../../src/drawing/paper/symbols";
import { escapeText, toSvg } from "../../../src/drawing/paper/toSvg";
import type { Ticket, TicketBend } from "../../../src/shop/ticket/ticket";
import { TICKET_CAUTIONS } from "../../../src/shop/ticket/ticketCautions";
import { writerFor, type TicketWriter } from "../../../src/shop/ticket/ticketWords";
import { measuredWords } from "../../../src/shop/shoe/measured";
import { pieceCode } from "../../../src/drawing/ticket/headBlock";
import { lieScene } from "../../../src/drawing/ticket/lieScene";
import {
  isClose,
  isTight,
  lieHeight,
  shapeScene,
  stickScene,
  type TicketLook,
} from "../../../src/drawing/ticket/ticketScenes";
import { ticketStrings } from "../ticketStrings";

const t = ticketStrings.ticket;

/** More boxes to tick than this would fill the page. */
const MOST_BOXES = 40;

/** A ticket as HTML; every text in it is escaped. Styled by paperCss. */
export function ticketHtml(ticket: Ticket, look: TicketLook): string {
  const words = writerFor(look.style);
  const { bends } = ticket;
  return [
    `<article class="rlt-ticket${isClose(ticket) ? " rlt-close" : ""}${isTight(ticket) ? " rlt-tight" : ""}">`,
    head(ticket, words),
    `<div class="rlt-stick">${toSvg(stickScene(ticket, look, words))}</div>`,
    bends.length === 0 ? `<p class="rlt-lead">${text(t.straight)}</p>` : bendTable(ticket, words),
    ticket.join ? `<p class="rlt-join"><b>${text(t.coupledOn)}</b> ${text(words.join(ticket.join))}</p>` : "",
    `<div class="rlt-foot">`,
    bends.length === 0 ? "" : finished(ticket, look, words),
    list("rlt-caution", t.caution, [...TICKET_CAUTIONS, ...(bends.length > 0 ? [t.source(ticket.shoe.source)] : [])]),
    "</div></article>",
  ].join("\n");
}

function head(ticket: Ticket, words: TicketWriter): string {
  const { run } = ticket;
  const facts: [name: string, value: string][] = [
    [t.job, run.job],
    [t.area, run.area],
    [t.crew, run.crew],
    [t.date, run.date],
    [t.conduit, `${run.raceway} ${run.size}`],
    [t.conductors, run.conductors],
    [t.datumEnd, ticket.ends.datum],
    [t.farEnd, ticket.ends.far],
    [t.sawnEnds, ticket.sawnEnds],
    ...(ticket.bends.length > 0
      ? ([[`${t.shoe}, ${measuredWords(ticket.shoe)}`, words.shoe(ticket)]] as [string, string][])
      : []),
  ];
  const shown = facts.filter(([, value]) => value !== "");
  return [
    `<header class="rlt-head">`,
    codeHtml(ticket),
    `<div class="rlt-names"><h3>${text(run.name)} <span>${text(t.piece(ticket.piece, ticket.pieces))}</span></h3>`,
    `<p class="rlt-make">${text(t.make(run.quantity))}</p>`,
    `<p class="rlt-cut">${text(t.cut)} <strong>${text(words.length(ticket.cutLength))}</strong>${small(words.exact(ticket.cutLength))}</p>`,
    tickBoxes(run.quantity),
    `<dl>${shown.map(([name, value]) => `<div><dt>${text(name)}</dt> <dd>${text(value)}</dd></div>`).join("")}</dl></div>`,
    "</header>",
  ].join("\n");
}

/** The code of the piece, for a camera and for people. */
export function codeHtml(ticket: Ticket): string {
  const code = toSvg(pieceCode(ticket));
  return `<figure class="rlt-code">${code}<figcaption>${text(ticket.name)}<br>${text(ticket.code)}</figcaption></figure>`;
}

/** A box for each piece to make, to be ticked; a line to write on where they are too many. */
function tickBoxes(quantity: number): string {
  const boxes =
    quantity > MOST_BOXES ? `____ ${text(t.ofMany(quantity))}` : `<span>${"<i></i>".repeat(quantity)}</span>`;
  return `<p class="rlt-ticks">${text(t.tick)} ${boxes} <span>${text(t.by)} ________ ${text(t.date)} ________</span></p>`;
}

const small = (exact: string): string => (exact === "" ? "" : ` <small>${text(exact)}</small>`);

function bendTable(ticket: Ticket, words: TicketWriter): string {
  const headers = [t.step, t.mark, t.turn, t.lineUp, t.hook, t.dial, t.lie];
  const rows = ticket.bends.map((_, step) => bendRow(ticket, step, words));
  return [
    `<table class="rlt-bends"><caption>${text(t.marks)}</caption>`,
    `<thead><tr>${headers.map((header) => `<th scope="col">${text(header)}</th>`).join("")}</tr></thead>`,
    `<tbody>${rows.join("\n")}</tbody></table>`,
  ].join("\n");
}

function bendRow(ticket: Ticket, step: number, words: TicketWriter): string {
  const [bend, before] = [ticket.bends[step]!, ticket.bends[step - 1]];
  const cell = (name: string, label: string, html: string) =>
    `<td class="rlt-${name}" data-label="${label}">${html}</td>`;
  const dial = typeof bend.dial === "number" ? words.dial(bend) : t.pastDial;
  const notes = bend.notes.map((note) => `<small>${text(note)}</small>`).join("");
  const finished = bend.dial === bend.angle ? "" : `<small>${text(t.finished(words.degrees(bend.angle)))}</small>`;
  return [
    `<tr><th scope="row"><b>${step + 1}</b><small>${text(t.bendNumber(bend.number))}</small></th>`,
    cell("mark", t.mark, `<b>${text(words.length(bend.mark))}</b>${small(words.exact(bend.mark))}`),
    cell("turn", t.turn, `${text(words.turn(bend, before))}<small>${text(bend.kind)}</small>${notes}`),
    cell("lineup", t.lineUp, `${symbol(bend.lineUp)}${text(words.lineUp(bend))}`),
    cell("hook", t.hook, text(t.hookEnd[bend.hook])),
    cell("dial", t.dial, `<b>${text(dial)}</b>${finished}`),
    cell("lie", t.lie, toSvg(lieScene(ticket, step, { height: lieHeight(ticket) }))),
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
    `<div class="rlt-finished"><div>${toSvg(shapeScene(ticket, look, words))}</div>`,
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
