import { labelOf, labelText } from "../../shop/ticket/pieceLabel";
import { measuredWords } from "../../shop/shoe/measured";
import type { Ticket } from "../../shop/ticket/ticket";
import { TICKET_LABELS as t } from "../../shop/ticket/ticketLabels";
import type { TicketWriter } from "../../shop/ticket/ticketWords";
import type { Scene } from "../paper/scene";
import { codePicture, picture, type BlockPicture, type TicketBlock } from "./blocks";
import { codeScene } from "./codeScene";
import { isTight } from "./ticketScenes";
import { gapLine, heightOfLines, textLines, TICKET_COLUMNS, TICKET_WIDTH, type TicketLine } from "./ticketLines";

/** More boxes to tick than this would fill the page. */
const MOST_BOXES = 40;
/** The code stands in the last column, beside the words. */
const CODE = { column: TICKET_COLUMNS.length - 1, width: 88 };
/** [pt] */
const AIR = 5;

/** What a ticket begins with: what to make, a box to tick for each, who signs, the code of the piece and the straight stick. */
export function headBlock(ticket: Ticket, words: TicketWriter, stick: Scene | undefined): TicketBlock {
  const lines = headLines(ticket, words, stick ? CODE.column : undefined);
  if (!stick) return { lines: [...lines, gapLine(AIR)] };
  const code = codePicture(pieceCode(ticket), CODE.width, { column: CODE.column });
  const short = code.height - heightOfLines(lines);
  if (short > 0) lines.push(gapLine(Math.ceil(short)));
  const drawn = picture(stick, TICKET_WIDTH, { line: lines.length });
  return {
    lines: [...lines, gapLine(Math.ceil(drawn.height) + AIR)],
    pictures: [code, drawn] satisfies BlockPicture[],
  };
}

/** The code of a ticket's piece, for a camera. */
export const pieceCode = (ticket: Ticket): Scene => codeScene(labelText(labelOf(ticket)), t.code(ticket.name));

function headLines(ticket: Ticket, words: TicketWriter, end: number | undefined): TicketLine[] {
  const { run, ends } = ticket;
  const name = `${run.name} ${t.piece(ticket.piece, ticket.pieces)}, ${t.make(run.quantity).toLowerCase()}`;
  const named = (label: string, value: string): string => (value === "" ? "" : `${label}: ${value}`);
  const facts = [
    named(t.crew, run.crew),
    named(t.date, run.date),
    named(t.conductors, run.conductors),
    named(t.datumEnd, ends.datum),
    named(t.farEnd, ends.far),
    named(t.sawnEnds, ticket.sawnEnds),
    ticket.bends.length > 0 ? `${t.shoe}, ${measuredWords(ticket.shoe)}: ${words.shoe(ticket)}` : "",
  ];
  const about = [run.job, run.area, `${run.raceway} ${run.size}`].filter(Boolean).join(", ");
  return [
    ...textLines(name, "name", { end }),
    ...textLines(`${t.cut} ${words.measure(ticket.cutLength)}`, "cut", { end }),
    ...textLines(`${ticket.name}   ${ticket.code}`, "strong", { end }),
    ...textLines(`${t.tick}: ${boxes(run.quantity)}   ${t.by} ________   ${t.date} ________`, "fact", { end }),
    ...textLines([about, ...facts.filter(Boolean)].join(". "), isTight(ticket) ? "small" : "fact", { end }),
  ];
}

/** A box for each piece to make; a line to write on where they are too many. */
const boxes = (quantity: number): string =>
  quantity > MOST_BOXES ? `____ ${t.ofMany(quantity)}` : Array.from({ length: quantity }, () => "\u2610").join(" ");
