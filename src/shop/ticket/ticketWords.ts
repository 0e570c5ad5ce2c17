import { formatLength, type LengthStyle } from "../../units/formatLength";
import { show, showDegrees } from "../../units/show";
import type { Ticket, TicketBend, TicketJoin } from "./ticket";
import { pointWords, turnWords } from "../schedule/turnWords";

/** Decimals of lengths and degrees in an exact text: under a millionth of an inch at the end of any run. */
const EXACT = 10;
const MM = 25.4;

/** The parts of a ticket in words, lengths in one unit. */
export interface TicketWriter {
  /** To the nearest 1/16 in. or millimeter (in an exact text: with all decimals). */
  length(inches: number): string;
  /** With its decimals, as a rounded length in inches stands beside it; nothing in millimeters, which are told once. */
  exact(inches: number): string;
  /** Rounded and exact: `3' 4-1/2" (40.497 in.)`. */
  measure(inches: number): string;
  degrees(degrees: number): string;
  /** What on the shoe the mark is lined up with; a notch by its angle: `45° notch`. */
  lineUp(bend: Pick<TicketBend, "lineUp" | "angle">): string;
  dial(bend: TicketBend): string;
  turn(bend: TicketBend, before: TicketBend | undefined): string;
  shoe(ticket: Ticket): string;
  /** How the piece is rolled in its coupling. */
  join(join: TicketJoin): string;
  checks(ticket: Ticket): string[];
}

/** Words for tickets in a unit; `exact` gives every length and angle with all its decimals. */
export function writerFor(style: LengthStyle, exact = false): TicketWriter {
  const decimals = (inches: number, digits: number): string =>
    style === "mm" ? `${show(inches * MM, Math.max(1, digits - 2))} mm` : `${show(inches, digits)} in.`;
  const length = (inches: number): string => (exact ? decimals(inches, EXACT) : formatLength(inches, 16, style));
  const degrees = (value: number): string => showDegrees(value, exact ? EXACT : 2);
  return {
    length,
    exact: (inches) => (style === "mm" ? "" : decimals(inches, 3)),
    measure: (inches) => (exact || style === "mm" ? length(inches) : `${length(inches)} (${decimals(inches, 3)})`),
    degrees,
    lineUp: ({ lineUp, angle }) => (lineUp === "notch" ? `${showDegrees(angle)} notch` : lineUp),
    dial: ({ dial }) => (typeof dial === "number" ? degrees(dial) : dial),
    turn: (bend, before) => turnWords(bend.roll, bend.hook, before?.hook, exact ? EXACT : 2),
    shoe: ({ shoe }) => {
      const digits = exact ? EXACT : 4;
      return [
        `radius ${decimals(shoe.radius, digits)}`,
        `deduct ${decimals(shoe.deduct, digits)}`,
        `outside diameter ${decimals(shoe.outsideDiameter, digits)}`,
        springbackWords(shoe, digits),
        `dial starts at ${degrees(shoe.dialStart)}`,
      ].join(", ");
    },
    join: (join) => joinWords(join, degrees),
    checks: ({ checks }) =>
      checks.map(
        ({ what, is }) => `${what}: ${is.map((part) => (typeof part === "number" ? length(part) : part)).join("")}`,
      ),
  };
}

/** What the shoe's test bends said, as its dial readings follow from it. */
function springbackWords({ springback, secondTest }: Ticket["shoe"], digits: number): string {
  const at = (opened: number, angle: number) => `${showDegrees(opened, digits)} at ${showDegrees(angle, digits)}`;
  const second = secondTest ? ` and ${at(secondTest.springback, secondTest.angle)}` : "";
  return `springback ${at(springback, 90)}${second}`;
}

function joinWords(join: TicketJoin, degrees: (value: number) => string): string {
  const before =
    "piece" in join ? `the last bend of piece ${join.piece}` : `the ${degrees(join.elbow)} factory elbow before it`;
  return `bend 1 ${pointWords(join.roll, before, degrees)}`;
}
