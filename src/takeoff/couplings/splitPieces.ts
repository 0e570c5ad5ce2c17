/** A stretch of whole steps, both ends included. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

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

/** A part of a piece, from one end or coupling to the next. */
export interface Part extends Stretch {
  readonly piece: number;
}

/** The sticks of a plan: what is in each, and what it may still hold. A part takes its length and `more` of it. */
export interface Rack {
  readonly parts: readonly (readonly Part[])[];
  readonly room: readonly number[];
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
}

/**
 * Empties one stick into the room of the others, parting pieces where that is needed; the copies of a parted piece are
 * parted where they lie. First come the parts that are hardest to place.
 *
 * @param most what couplings may cost, less than that
 * @returns the sticks without that one, and where pieces were parted; undefined when it was not possible
 */
export function emptyStick(
  rack: Rack,
  stick: number,
  most: number,
  splitting: Splitting,
): { rack: Rack; splits: Split[]; cost: number } | undefined {
  let room = rack.room.map((room, index) => (index === stick ? -1 : room));
  let parts = rack.parts.map((held, index) => (index === stick ? [] : [...held]));
  let waiting = [...rack.parts[stick]!];
  const splits: Split[] = [];
  let cost = 0;
  while (waiting.length > 0) {
    waiting.sort((a, b) => a.to - a.from - (b.to - b.from));
    const part = waiting.at(-1)!;
    const needed = part.to - part.from + splitting.more;
    const into = smallestRoom(room, needed);
    if (into !== undefined) {
      waiting.pop();
      parts[into]!.push(part);
      room[into]! -= needed;
      continue;
    }
    const { copies, coupling } = splitting.pieces[part.piece]!;
    // Copies of the part that lie in other sticks are parted there.
    const left =
      copies === 1
        ? room
        : room.map((free, index) => free - splitting.more * parts[index]!.filter(isLike(part)).length);
    const at = left.some((free, index) => free < 0 && index !== stick) ? undefined : wayToPart(part, left, splitting);
    if (at === undefined) return undefined;
    cost += copies * coupling;
    if (cost >= most) return undefined;
    splits.push({ piece: part.piece, at });
    room = left;
    if (copies > 1) parts = parts.map((held) => parted(held, part, at));
    waiting = parted(waiting, part, at);
  }
  const isLeft = (_: unknown, index: number): boolean => index !== stick;
  return { rack: { parts: parts.filter(isLeft), room: room.filter(isLeft) }, splits, cost };
}

const isLike =
  (part: Part) =>
  (other: Part): boolean =>
    other.piece === part.piece && other.from === part.from && other.to === part.to;

const parted = (held: readonly Part[], part: Part, at: number): Part[] =>
  held.flatMap((other) =>
    isLike(part)(other)
      ? [
          { ...other, to: at },
          { ...other, from: at },
        ]
      : [other],
  );

/** The stick with the least room that is enough. */
function smallestRoom(room: readonly number[], needed: number, but = -1): number | undefined {
  let best: number | undefined;
  room.forEach((free, stick) => {
    if (free >= needed && stick !== but && (best === undefined || free < room[best]!)) best = stick;
  });
  return best;
}

/** Where to part a part: so that both ends find room and take the least of it; else so that the largest room is filled. */
function wayToPart(part: Part, room: readonly number[], { pieces, more, shortest }: Splitting): number | undefined {
  const { places } = pieces[part.piece]!;
  let best: { at: number; taken: number } | undefined;
  let last: { at: number; room: number } | undefined;
  room.forEach((free, stick) => {
    if (free < shortest + more) return;
    for (const way of [
      lastPlace(places, part, free - more, shortest),
      firstPlace(places, part, free - more, shortest),
    ]) {
      if (way === undefined) continue;
      const { at, rest } = way;
      const other = smallestRoom(room, rest + more, stick);
      if (other !== undefined) {
        const taken = free + room[other]!;
        if (!best || taken < best.taken) best = { at, taken };
      } else if (!last || free > last.room) last = { at, room: free };
    }
  });
  return (best ?? last)?.at;
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
