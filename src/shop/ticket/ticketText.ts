import type { LengthStyle } from "../../units/formatLength";
import type { Ticket, TicketBend } from "./ticket";
import { measuredWords } from "../shoe/measured";
import { TICKET_CAUTIONS } from "./ticketCautions";
import { writerFor, type TicketWriter } from "./ticketWords";

export interface TicketTextOptions {
  /** Unit of the lengths; feet and inches when left out. */
  readonly style?: LengthStyle;
  /** Lengths and degrees with all their decimals, for a reader that is not a person with a tape. */
  readonly exact?: boolean;
}

/**
 * A ticket as plain text, complete: whoever has only this and the shoe can make the piece.
 *
 * @example ticketText(ticketsOf(buildRun(run, shoe))[0]) //=> "RUN TH-01\nPiece 1 of 1; make 4\n…"
 */
export function ticketText(ticket: Ticket, { style = "feet", exact = false }: TicketTextOptions = {}): string {
  const words = writerFor(style, exact);
  const { run } = ticket;
  return [
    `RUN ${run.name}`,
    `Piece ${ticket.piece} of ${ticket.pieces}; make ${run.quantity}`,
    `Piece code: ${ticket.name}, shape ${ticket.code}`,
    ...facts({ Job: run.job, Area: run.area }),
    `Conduit: ${run.raceway} ${run.size}`,
    `Shoe: ${words.shoe(ticket)} (${measuredWords(ticket.shoe)}: ${ticket.shoe.source})`,
    `Cut length: ${words.measure(ticket.cutLength)}`,
    ...facts({ "Datum end": ticket.ends.datum, "Far end": ticket.ends.far }),
    ...facts({ "Sawn ends": ticket.sawnEnds, Conductors: run.conductors }),
    "",
    ...bendLines(ticket, words),
    ...(ticket.join ? [`Coupled on: ${words.join(ticket.join)}`, ""] : []),
    ...section("Check the finished piece:", words.checks(ticket)),
    ...section("Caution:", TICKET_CAUTIONS),
  ].join("\n");
}

function bendLines(ticket: Ticket, words: TicketWriter): string[] {
  if (ticket.bends.length === 0) return ["Straight: cut it, nothing to bend.", ""];
  const lines = ticket.bends.flatMap((bend, index) => bendText(bend, index + 1, ticket.bends[index - 1], words));
  return [
    "Write D on the datum end. Put every mark on the straight stick first; measure each from D.",
    "",
    ...lines,
    "",
  ];
}

const bendText = (bend: TicketBend, step: number, before: TicketBend | undefined, words: TicketWriter): string[] => [
  `Step ${step}, bend ${bend.number} (${bend.kind}): mark at ${words.measure(bend.mark)}`,
  `  Turn: ${words.turn(bend, before)}`,
  `  Line up: ${words.lineUp(bend)}`,
  `  Hook: toward the ${bend.hook} end`,
  `  Dial: ${words.dial(bend)}, for a finished ${words.degrees(bend.angle)}`,
  ...bend.notes.map((note) => `  Note: ${note}`),
];

const facts = (values: Readonly<Record<string, string>>): string[] =>
  Object.entries(values).flatMap(([name, value]) => (value === "" ? [] : [`${name}: ${value}`]));

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [title, ...lines.map((line) => `- ${line}`), ""];
