import { parted, type Part, type Rack, type Stretch } from "./rack";

/** A piece of some runs, alike in each of them, and where it may be parted. Whole steps from its start. */
export interface SplitPiece {
  readonly length: number;
  /** How many there are; all of them are parted alike. */
  readonly copies: number;
  /** What one coupling more costs. */
  readonly coupling: number;
  /** Where a coupling may stand, in order. Empty where the piece has to stay as it is. */
  readonly places: readonly Stretch[];
}

export interface Split {
  readonly piece: number;
  readonly at: number;
}

export interface Splitting {
  readonly pieces: readonly SplitPiece[];
  /** What a part takes of a stick besides its length: the saw's cut and the allowance. */
  readonly more: number;
  /** No part is shorter. */
  readonly shortest: number;
  /** Looks at sticks that are left; none are taken below 0. */
  readonly budget: { looks: number };
}

/**
 * Empties one stick into the room of the others, parting pieces where that is needed, each of them once; the copies of a parted piece are
 * parted where they lie. First come the parts that are hardest to place.
 *
 * @param most what couplings may cost, less than that
 * @returns the sticks without that one, and where pieces were parted; undefined when it was not possible
 */
export function emptyStick(
  from: Rack,
  stick: number,
  most: number,
  splitting: Splitting,
): { rack: Rack; splits: Split[]; cost: number } | undefined {
  const { budget, more, pieces } = splitting;
  if (budget.looks-- < 0 || !mayPay(from, stick, most, splitting)) return undefined;
  const rack = from.copy();
  budget.looks -= rack.count / COPIED;
  let waiting = [...rack.held(stick)];
  rack.remove(stick);
  const splits: Split[] = [];
  let cost = 0;
  while (waiting.length > 0 && budget.looks > 0) {
    waiting.sort((a, b) => a.to - a.from - (b.to - b.from));
    const part = waiting.at(-1)!;
    const needed = part.to - part.from + more;
    const into = rack.smallest(needed);
    if (into !== undefined) {
      waiting.pop();
      rack.put(part, into, needed);
      continue;
    }
    const { copies, coupling, length } = pieces[part.piece]!;
    // A run joined at every other foot is no run: each piece is parted once.
    if (part.to - part.from < length) return undefined;
    // Copies of the part that lie in other sticks are parted there.
    if (copies > 1 && !rack.cutAll(part, more)) return undefined;
    const at = wayToPart(part, rack, splitting);
    if (at === undefined) return undefined;
    cost += copies * coupling;
    if (cost >= most) return undefined;
    splits.push({ piece: part.piece, at });
    if (copies > 1) rack.partAll(part, at);
    waiting = parted(waiting, part, at);
  }
  return waiting.length === 0 ? { rack, splits, cost } : undefined;
}

/** Sticks that are copied in the time of one look. */
const COPIED = 16;

/** Could the couplings be cheap enough, if pieces could be parted anywhere? */
function mayPay(rack: Rack, stick: number, most: number, { pieces, more }: Splitting): boolean {
  const held = rack.held(stick);
  const cheapest = Math.min(...held.map(({ piece }) => pieces[piece]!.coupling * pieces[piece]!.copies));
  const length = held.reduce((sum, { from, to }) => sum + to - from, 0);
  const parts = rack.sticksFor(length, more, held.length + most / cheapest);
  return parts <= held.length || (parts - held.length) * cheapest < most;
}

/** Where to part a part: so that both ends find room and take the least of it; else so that the largest room is filled. */
function wayToPart(part: Part, rack: Rack, { pieces, more, shortest, budget }: Splitting): number | undefined {
  const { places } = pieces[part.piece]!;
  let best: { at: number; taken: number } | undefined;
  let last: number | undefined;
  for (const stick of places.length > 0 ? rack.sizes(shortest + more) : []) {
    budget.looks--;
    const room = rack.room(stick);
    // Whatever the other end takes, it takes some.
    if (best && room >= best.taken) break;
    let isLast = true;
    for (const way of [
      lastPlace(places, part, room - more, shortest),
      firstPlace(places, part, room - more, shortest),
    ]) {
      if (way === undefined) continue;
      const other = rack.smallest(way.rest + more, stick);
      const taken = other === undefined ? Infinity : room + rack.room(other);
      if (taken < (best?.taken ?? Infinity)) best = { at: way.at, taken };
      if (other === undefined && isLast) [last, isLast] = [way.at, false];
    }
  }
  return best?.at ?? last;
}

/** The place farthest along a part that leaves no more than `length` before it. */
function lastPlace(places: readonly Stretch[], { from, to }: Part, length: number, shortest: number) {
  for (const place of [...places].reverse()) {
    const at = Math.min(place.to, from + length, to - shortest);
    if (at >= Math.max(place.from, from + shortest)) return { at, rest: to - at };
  }
  return undefined;
}

/** The place nearest to a part's start that leaves no more than `length` behind it. */
function firstPlace(places: readonly Stretch[], { from, to }: Part, length: number, shortest: number) {
  for (const place of places) {
    const at = Math.max(place.from, to - length, from + shortest);
    if (at <= Math.min(place.to, to - shortest)) return { at, rest: at - from };
  }
  return undefined;
}
