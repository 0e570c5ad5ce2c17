import type { Ticket, TicketBend } from "../../shop/ticket/ticket";
import { measuredWords } from "../../shop/shoe/measured";
import { TICKET_CAUTIONS } from "../../shop/ticket/ticketCautions";
import { TICKET_LABELS as t, TICKET_SHEET_LABELS } from "../../shop/ticket/ticketLabels";
import type { TicketWriter } from "../../shop/ticket/ticketWords";
import type { LengthStyle } from "../../units/formatLength";
import type { Scene } from "../paper/scene";
import {
  cellsLine,
  gapLine,
  heightOfLines,
  textLines,
  TICKET_COLUMNS,
  TICKET_WIDTH,
  type TicketLetters,
  type TicketLine,
} from "./ticketLines";
import { isClose, isTight, shapeScene, stickScene } from "./ticketScenes";

/** A drawing laid over a block's rows, at the left edge: its size [pt], and the row whose top it hangs from. */
export interface BlockPicture {
  readonly line: number;
  readonly width: number;
  readonly height: number;
  readonly scene: Scene;
}

/** Rows that stay on one page. */
export interface TicketBlock {
  readonly lines: readonly TicketLine[];
  readonly picture?: BlockPicture;
}

/** Widths the drawings are made for [px]: letters of 12 px come out at 9 to 10 pt. */
const SCENES = { stickWidth: 620, shapeWidth: 280 };
/** The same where a ticket has many bends to find room for. */
const LOW_SCENES = { stickWidth: 760, shapeWidth: 280, low: true };
/** The finished shape stands left of its checks. */
const SHAPE = { columns: 4, gap: 6 };
const SHAPE_WIDTH = TICKET_COLUMNS.slice(0, SHAPE.columns).reduce((sum, width) => sum + width, 0) - SHAPE.gap;
/** More boxes to tick than this would fill the page. */
const MOST_BOXES = 40;
/** [pt] */
const AIR = 5;

/** A ticket as blocks of worksheet rows, top to bottom, with or without its drawings. */
export function ticketBlocks(
  ticket: Ticket,
  words: TicketWriter,
  { style, pictures }: { style: LengthStyle; pictures: boolean },
): TicketBlock[] {
  const { bends, join, shoe } = ticket;
  const cautions = [...TICKET_CAUTIONS, ...(bends.length > 0 ? [t.source(shoe.source)] : [])];
  const look = { style, ...(isClose(ticket) ? LOW_SCENES : SCENES) };
  return [
    withPicture(head(ticket, words), pictures && stickScene(ticket, look, words)),
    ...(bends.length === 0 ? [{ lines: textLines(t.straight, "strong") }] : bendBlocks(bends, words)),
    ...(join ? [{ lines: [gapLine(AIR), ...textLines(`${t.coupledOn} ${words.join(join)}`, "strong")] }] : []),
    listBlock(t.caution, cautions, isTight(ticket) ? "tiny" : "small"),
    ...(bends.length === 0 ? [] : [finished(ticket, words, pictures && shapeScene(ticket, look, words))]),
  ];
}

function listBlock(title: string, texts: readonly string[], letters: TicketLetters): TicketBlock {
  return {
    lines: [gapLine(AIR), ...textLines(title, "strong"), ...texts.flatMap((text) => textLines(text, letters))],
  };
}

function head(ticket: Ticket, words: TicketWriter): TicketLine[] {
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
    ...textLines(name, "name"),
    ...textLines(`${t.cut} ${words.measure(ticket.cutLength)}   ${ticket.name}   ${ticket.code}`, "cut"),
    ...textLines(`${t.tick}: ${boxes(run.quantity)}   ${t.by} ________   ${t.date} ________`, "fact"),
    ...textLines([about, ...facts.filter(Boolean)].join(". "), "fact"),
  ];
}

/** A box for each piece to make; a line to write on where they are too many. */
const boxes = (quantity: number): string =>
  quantity > MOST_BOXES ? `____ ${t.ofMany(quantity)}` : Array.from({ length: quantity }, () => "\u2610").join(" ");

/** The lead and the headings stay with the first bend. */
function bendBlocks(bends: readonly TicketBend[], words: TicketWriter): TicketBlock[] {
  const headings = cellsLine(TICKET_SHEET_LABELS.columns.map((text) => ({ text, letters: "heading" })));
  const lead = [...textLines(t.marks, "strong"), headings];
  return bends.map((bend, index) => ({
    lines: [...(index === 0 ? lead : []), bendLine(bend, index + 1, bends[index - 1], words)],
  }));
}

function bendLine(bend: TicketBend, step: number, before: TicketBend | undefined, words: TicketWriter): TicketLine {
  const reached = typeof bend.dial === "number";
  const finished = bend.dial === bend.angle ? [] : [t.finished(words.degrees(bend.angle))];
  const number = bend.number === step ? [] : [t.bendNumber(bend.number)];
  const turn = [words.turn(bend, before), ...number, bend.kind, ...finished, ...bend.notes].join("; ");
  return cellsLine([
    { text: String(step), letters: "number" },
    { text: words.length(bend.mark), letters: "number" },
    { text: words.lineUp(bend), letters: "cell" },
    { text: t.hookEnd[bend.hook], letters: "cell" },
    reached ? { text: words.dial(bend), letters: "number" } : { text: t.pastDial, letters: "cell" },
    { text: turn, letters: "cell" },
  ]);
}

/** The drawing in a row of its own, under the others. */
function withPicture(lines: readonly TicketLine[], scene: Scene | false): TicketBlock {
  if (!scene) return { lines: [...lines, gapLine(AIR)] };
  const height = (scene.height * TICKET_WIDTH) / scene.width;
  return {
    lines: [...lines, gapLine(Math.ceil(height) + AIR)],
    picture: { line: lines.length, width: TICKET_WIDTH, height, scene },
  };
}

/** Checks beside the finished shape, or across the page where there is none. */
function finished(ticket: Ticket, words: TicketWriter, scene: Scene | false): TicketBlock {
  const [checks, letters] = [words.checks(ticket), isTight(ticket) ? "small" : "check"] as const;
  if (!scene) return listBlock(t.checks, checks, letters);
  const height = (scene.height * SHAPE_WIDTH) / scene.width;
  const beside = [
    ...textLines(t.checks, "strong", SHAPE.columns),
    ...checks.flatMap((check) => textLines(check, letters, SHAPE.columns)),
  ];
  const short = Math.ceil(height - heightOfLines(beside));
  return {
    lines: [gapLine(AIR), ...beside, ...(short > 0 ? [gapLine(short)] : [])],
    picture: { line: 1, width: SHAPE_WIDTH, height, scene },
  };
}
