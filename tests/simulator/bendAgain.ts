/**
 * Bends a schedule again. It takes only the schedule's rows and the shoe, lays straight sticks on the shoe, and gives
 * the shape that comes off the bench, to be held against the run that was asked for.
 */
import { bentStretch, radiusLeft, type BenchShoe } from "./bench";
import { endOf, measure, type Centerline, type Segment } from "./centerline";
import { BENCH, type Frame } from "./frame";
import { curl, follow, PICKED_UP } from "./handling";
import { readTickets, type Row, type Ticket } from "./readRows";

export interface BentPiece extends Centerline {
  readonly piece: string;
}

/** A run from box to box: its pieces, each as it lies on the bench, and all of them coupled together. */
export interface BentPull extends Centerline {
  readonly run: string;
  readonly pull: string;
  readonly pieces: readonly BentPiece[];
}

/** Lengths closer than this are the same [in]: far under a pencil line, far over rounding. */
const ROUNDING = 1e-9;

/**
 * @throws Error where the rows cannot be followed: a cell missing or unreadable, a bend that runs off the stick, a bend
 * that starts in the bend before it
 */
export function bendAgain(rows: readonly Row[], shoe: BenchShoe): BentPull[] {
  const pulls: { run: string; pull: string; tickets: Ticket[] }[] = [];
  for (const ticket of readTickets(rows)) {
    const last = pulls.at(-1);
    if (last?.run === ticket.run && last.pull === ticket.pull) last.tickets.push(ticket);
    else pulls.push({ run: ticket.run, pull: ticket.pull, tickets: [ticket] });
  }
  return pulls.map(({ run, pull, tickets }) => ({ run, pull, ...bendPull(tickets, shoe) }));
}

function bendPull(tickets: readonly Ticket[], shoe: BenchShoe): Centerline & { pieces: BentPiece[] } {
  const segments: Segment[] = [];
  let end = BENCH;
  let azimuth = 0;
  const pieces = tickets.flatMap((ticket): BentPiece[] => {
    if (ticket.bought) {
      const { angle, plane, radius, before, after } = ticket.bought;
      azimuth += plane;
      const arc = { angle, radius, azimuth };
      for (const part of [{ length: before }, { length: (radius * angle * Math.PI) / 180, arc }, { length: after }]) {
        const segment = { begin: end, ...part };
        segments.push(segment);
        end = endOf(segment);
      }
      return [];
    }
    const alone = bendPiece(ticket, shoe, BENCH, 0);
    const joined = bendPiece(ticket, shoe, end, azimuth);
    segments.push(...joined.segments);
    end = joined.end;
    azimuth = joined.azimuth;
    return [{ piece: ticket.piece, ...measure(alone.segments, BENCH) }];
  });
  return { pieces, ...measure(segments, BENCH) };
}

/** One stick, whose chalk line goes on from `begin` and whose last bend before curled toward `azimuth` [°]. */
function bendPiece(
  ticket: Ticket,
  shoe: BenchShoe,
  begin: Frame,
  azimuth: number,
): { segments: Segment[]; end: Frame; azimuth: number } {
  const segments: Segment[] = [];
  let [end, reached] = [begin, 0];
  const put = (segment: Segment): void => {
    segments.push(segment);
    end = endOf(segment);
  };
  const strokes = [...ticket.strokes].sort((a, b) => a.bend - b.bend);
  checkTurns(ticket);
  strokes.forEach((stroke, index) => {
    const { from, to } = bentStretch(shoe, stroke);
    const who = `run ${ticket.run} piece ${ticket.piece} bend ${index + 1}`;
    if (from < reached - ROUNDING) {
      throw new Error(`${who} starts at ${from}, before the stick or the last bend leaves off at ${reached}`);
    }
    if (to > ticket.cutLength + ROUNDING) throw new Error(`${who} ends at ${to}, past the cut at ${ticket.cutLength}`);
    azimuth += stroke.plane;
    put({ begin: end, length: from - reached });
    put({
      begin: end,
      length: to - from,
      arc: { angle: stroke.angle, radius: radiusLeft(shoe, stroke.angle), azimuth },
    });
    reached = to;
  });
  put({ begin: end, length: ticket.cutLength - reached });
  return { segments, end, azimuth };
}

/** Degrees that two decimals of each of a few turns may leave [°]. */
const TURNS_TO = 0.05;

/** Follows the words of Turn and Hook in the order of the steps; they must come to the planes that the rows say. */
function checkTurns({ run, piece, strokes }: Ticket): void {
  let lie = PICKED_UP;
  let first: { readonly said: number; readonly words: number } | undefined;
  for (const { bend, turn, hook } of strokes) {
    if (turn === undefined) return;
    const who = `run ${run} piece ${piece} bend ${bend}`;
    lie = follow(lie, turn);
    if (lie.atHook !== hook)
      throw new Error(`${who}: the ${lie.atHook} end lies on the hook's side, not the ${hook} end`);
    const said = strokes
      .filter((other) => other.bend > 1 && other.bend <= bend)
      .reduce((sum, { plane }) => sum + plane, 0);
    first ??= { said, words: curl(lie) };
    const off = Math.abs(((said - first.said - (curl(lie) - first.words)) % 360) + 360) % 360;
    if (Math.min(off, 360 - off) > TURNS_TO)
      throw new Error(`${who}: Turn says ${turn}, which is ${off}° off its Plane`);
  }
}
