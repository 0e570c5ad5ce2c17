/**
 * Makes a run from its printed tickets: each stick is marked, laid on the shoe, rolled and swapped as the words say, and
 * the pieces are coupled as the notes say. It knows nothing but the text.
 */
import { angleLeft, bentStretch, radiusLeft } from "./bench";
import { endOf, measure, type Centerline, type Segment } from "./centerline";
import { BENCH, type Frame } from "./frame";
import { curl, follow, PICKED_UP } from "./handling";
import { readTicket, type PrintedTicket } from "./readTicket";

/** Overlaps up to here are a pencil's [in]: two marks rounded to 1/16 in. or to a millimeter. */
const PENCIL = 1 / 16 + 1e-9;

interface MadeBend {
  readonly from: number;
  readonly to: number;
  readonly angle: number;
  readonly radius: number;
  readonly azimuth: number;
}

/** The pulls of a run, from the texts of all its tickets in order. */
export function followTickets(texts: readonly string[]): Centerline[] {
  const pulls: PrintedTicket[][] = [];
  for (const ticket of texts.map(readTicket)) {
    if (ticket.coupledTo === undefined) pulls.push([ticket]);
    else if (pulls.at(-1)?.at(-1)?.piece === ticket.coupledTo) pulls.at(-1)!.push(ticket);
    else throw new Error(`piece ${ticket.piece} couples to piece ${ticket.coupledTo}, which is not before it`);
  }
  return pulls.map(couple);
}

/** A bend that is bought: no ticket is printed for it. */
export interface BoughtBend {
  readonly angle: number;
  /** From the bend before it [°], clockwise seen from the datum end. */
  readonly plane: number;
  readonly radius: number;
  /** Straight conduit before and after its arc [in]. */
  readonly straight: { readonly before: number; readonly after: number };
}

/** A pull with bought bends between its pieces: the texts of its tickets and those bends, in order. */
export const followPull = (parts: readonly (string | BoughtBend)[]): Centerline =>
  couple(parts.map((part) => (typeof part === "string" ? readTicket(part) : part)));

function couple(parts: readonly (PrintedTicket | BoughtBend)[]): Centerline {
  const segments: Segment[] = [];
  let end: Frame = BENCH;
  let last: number | undefined;
  for (const ticket of parts) {
    if ("plane" in ticket) {
      const { angle, radius, plane, straight } = ticket;
      last = (last ?? 0) + plane;
      const arc = { angle, radius, azimuth: last };
      const bend = { length: (radius * angle * Math.PI) / 180, arc };
      for (const part of [{ length: straight.before }, bend, { length: straight.after }]) {
        const segment = { begin: end, ...part };
        segments.push(segment);
        end = endOf(segment);
      }
      continue;
    }
    const bends = makeBends(ticket);
    // The piece is rolled in its coupling until bend 1 points as the note says.
    const rolled = last === undefined || !bends[0] ? 0 : last + ticket.join - bends[0].azimuth;
    let reached = 0;
    const put = (segment: Segment): void => {
      segments.push(segment);
      end = endOf(segment);
    };
    for (const { from, to, angle, radius, azimuth } of bends) {
      put({ begin: end, length: from - reached });
      put({ begin: end, length: to - from, arc: { angle, radius, azimuth: azimuth + rolled } });
      [reached, last] = [to, azimuth + rolled];
    }
    put({ begin: end, length: ticket.cutLength - reached });
  }
  return measure(segments, BENCH);
}

/** The bends of one ticket, made stroke by stroke in the order printed; they come back in their order along the stick. */
function makeBends({ bends, shoe, dialStart, cutLength, run, piece }: PrintedTicket): MadeBend[] {
  let lie = PICKED_UP;
  const made = bends.map(({ number, turn, hook, mark, lineUp, dial }) => {
    const who = `run ${run} piece ${piece} bend ${number}`;
    lie = follow(lie, turn);
    if (lie.atHook !== hook)
      throw new Error(`${who}: the ${lie.atHook} end lies on the hook's side, not the ${hook} end`);
    const angle = angleLeft(shoe, dial - dialStart);
    const { from, to } = bentStretch(shoe, { mark, lineUp, hook, angle, plane: 0 });
    if (to > cutLength + PENCIL) throw new Error(`${who} runs off the stick`);
    return { number, from, to, angle, radius: radiusLeft(shoe, angle), azimuth: curl(lie) };
  });
  made.sort((a, b) => a.number - b.number);
  made.forEach(({ from, number }, index) => {
    const reached = made[index - 1]?.to ?? 0;
    if (from < reached - PENCIL)
      throw new Error(`run ${run} piece ${piece} bend ${number} starts in the bend before it`);
  });
  return made;
}
