/** Reads a schedule as the person at the bench does: piece by piece, stroke by stroke, nothing guessed. */
import { HOOKS, LINE_UPS, type Stroke } from "./bench";

/** A line of the schedule: a cell under each header. */
export type Row = Readonly<Record<string, unknown>>;

/** A stroke of a schedule: the number of its bend along the piece, and what is done with the conduit before it. */
export interface ScheduledStroke extends Stroke {
  readonly bend: number;
  /** Absent where the rows have no such column. */
  readonly turn?: string;
}

export interface Ticket {
  readonly run: string;
  readonly pull: string;
  readonly piece: string;
  readonly cutLength: number;
  /** In the order they are made. */
  readonly strokes: readonly ScheduledStroke[];
  /** A bend that is bought, its radius and straight ends as its note says. */
  readonly bought?: {
    readonly angle: number;
    readonly plane: number;
    readonly radius: number;
    readonly before: number;
    readonly after: number;
  };
}

/** Rows of a table whose first line is the headers. */
export const rowsOf = ([headers = [], ...lines]: readonly (readonly unknown[])[]): Row[] =>
  lines.map((line) => Object.fromEntries(headers.map((header, column) => [String(header), line[column]])));

/** Tickets in the order of the schedule. A schedule without a Pull column is one pull to each run. */
export function readTickets(rows: readonly Row[]): Ticket[] {
  const tickets: (Ticket & { strokes: ScheduledStroke[] })[] = [];
  for (const row of rows) {
    if (row["Kind"] === "factory elbow") {
      tickets.push(readElbow(row));
      continue;
    }
    const [run, pull, piece] = [text(row, "Run"), String(row["Pull"] ?? ""), text(row, "Piece")];
    const cutLength = number(row, "Cut length");
    let ticket = tickets.at(-1);
    if (ticket?.run !== run || ticket.pull !== pull || ticket.piece !== piece) {
      ticket = { run, pull, piece, cutLength, strokes: [] };
      tickets.push(ticket);
    }
    if (ticket.cutLength !== cutLength) throw new Error(`${where(row)} gives two cut lengths`);
    if (row["Bend"] === "") continue;
    // A schedule without steps is made in the order of its bends.
    const step = row["Step"] === undefined ? "Bend" : "Step";
    if (number(row, step) !== ticket.strokes.length + 1) throw new Error(`${where(row)} is out of order`);
    ticket.strokes.push(readStroke(row));
  }
  for (const { run, piece, strokes } of tickets) {
    const numbers = strokes.map(({ bend }) => bend).sort((a, b) => a - b);
    if (numbers.some((bend, index) => bend !== index + 1))
      throw new Error(`run ${run} piece ${piece} has bends ${numbers.join(", ")}`);
  }
  return tickets;
}

/** A factory elbow: nothing to cut and nothing to mark. */
function readElbow(row: Row): Ticket & { strokes: ScheduledStroke[] } {
  const filled = ["Piece", "Cut length", "Bend", "Mark", "Line up", "Hook", "Dial"].filter((cell) => row[cell] !== "");
  if (filled.length > 0) throw new Error(`${where(row)}: a factory elbow has ${filled.join(", ")}`);
  const radius = /^bought; laid out at ([\d.]+) in\. radius(;|$)/.exec(text(row, "Note"))?.[1];
  if (radius === undefined) throw new Error(`${where(row)}: the note names no radius`);
  const bought = {
    ...{ angle: number(row, "Angle"), plane: number(row, "Plane"), radius: Number(radius) },
    ...straightEnds(text(row, "Note")),
  };
  return { run: text(row, "Run"), pull: String(row["Pull"] ?? ""), piece: "", cutLength: 0, strokes: [], bought };
}

/** Straight conduit before and after the arc of an elbow [in]. */
function straightEnds(note: string): { before: number; after: number } {
  if (note.includes("; straight ends not known, none counted")) return { before: 0, after: 0 };
  const [, whole, before = whole, after = whole] =
    /; straight ends ([\d.]+) in\.(?:, room for ([\d.]+) in\. before and ([\d.]+) in\. after)?(?:;|$)/.exec(note) ?? [];
  if (whole === undefined) throw new Error(`the note names no straight ends: ${note}`);
  return { before: Number(before), after: Number(after) };
}

const readStroke = (row: Row): ScheduledStroke => ({
  bend: number(row, "Bend"),
  ...(row["Turn"] === undefined ? {} : { turn: String(row["Turn"]) }),
  mark: number(row, "Mark"),
  lineUp: word(row, "Line up", LINE_UPS),
  hook: word(row, "Hook", HOOKS),
  angle: number(row, "Angle"),
  plane: number(row, "Plane"),
});

const where = (row: Row): string =>
  `run ${String(row["Run"])} piece ${String(row["Piece"])} bend ${String(row["Bend"])}`;

function number(row: Row, header: string): number {
  const cell = row[header];
  if (typeof cell === "number" && Number.isFinite(cell)) return cell;
  throw new Error(`${where(row)}: ${header} is not a number: ${JSON.stringify(cell)}`);
}

function text(row: Row, header: string): string {
  const cell = row[header];
  if (typeof cell === "number" || (typeof cell === "string" && cell !== "")) return String(cell);
  throw new Error(`${where(row)}: ${header} is empty`);
}

function word<Word extends string>(row: Row, header: string, words: readonly Word[]): Word {
  const found = words.find((each) => each === row[header]);
  if (found) return found;
  throw new Error(`${where(row)}: ${header} is none of ${words.join(", ")}: ${JSON.stringify(row[header])}`);
}
