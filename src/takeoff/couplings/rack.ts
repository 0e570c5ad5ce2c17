/** A stretch of whole steps, both ends included. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A part of a piece, from one end or coupling to the next. */
export interface Part extends Stretch {
  readonly piece: number;
}

/** The sticks of a plan: what is in each, and what it may still hold; found by how much that is. */
export class Rack {
  private constructor(
    private readonly parts: (readonly Part[])[],
    private readonly rooms: number[],
    /** Sticks by their room, the smallest first; of equal ones the first. */
    private readonly order: number[],
    /** By piece: the sticks where parts of it may lie, and others. */
    private readonly homes: (readonly number[])[],
  ) {}

  static of(parts: readonly (readonly Part[])[], rooms: readonly number[]): Rack {
    const homes: number[][] = [];
    parts.forEach((held, stick) => {
      for (const { piece } of held) {
        const home = (homes[piece] ??= []);
        if (home.at(-1) !== stick) home.push(stick);
      }
    });
    const order = [...rooms.keys()].sort((a, b) => rooms[a]! - rooms[b]! || a - b);
    return new Rack([...parts], [...rooms], order, homes);
  }

  copy(): Rack {
    const { parts, rooms, order, homes } = this;
    return new Rack([...parts], [...rooms], [...order], [...homes]);
  }

  /** How many sticks there are. */
  get count(): number {
    return this.order.length;
  }

  held(stick: number): readonly Part[] {
    return this.parts[stick]!;
  }

  room(stick: number): number {
    return this.rooms[stick]!;
  }

  /** Takes a stick away with what is in it. */
  remove(stick: number): void {
    this.order.splice(this.rankOf(stick), 1);
    this.parts[stick] = [];
  }

  /** Puts a part into a stick, of which it takes `needed`. */
  put(part: Part, stick: number, needed: number): void {
    this.parts[stick] = [...this.parts[stick]!, part];
    const homes = this.homes[part.piece] ?? [];
    if (!homes.includes(stick)) this.homes[part.piece] = [...homes, stick];
    this.shrink(stick, needed);
  }

  /** The stick with the least room that is enough. */
  smallest(needed: number, but = -1): number | undefined {
    const rank = this.firstWith(needed);
    return this.order[rank] === but ? this.order[rank + 1] : this.order[rank];
  }

  /** Sticks with at least so much room, the smallest first; one of each room. */
  *sizes(least: number): Generator<number, void> {
    let last = -1;
    for (let rank = this.firstWith(least); rank < this.order.length; rank++) {
      const stick = this.order[rank]!;
      if (this.rooms[stick] !== last) yield stick;
      last = this.rooms[stick]!;
    }
  }

  /** How many of the roomiest sticks hold so much conduit in one part each; Infinity where more than `most` would. */
  sticksFor(length: number, more: number, most: number): number {
    const { order, rooms } = this;
    let left = length;
    for (let count = 0; count < order.length && count < most; count++) {
      left -= rooms[order[order.length - 1 - count]!]! - more;
      if (left <= 0) return count + 1;
    }
    return Infinity;
  }

  /** Takes the room for one cut in every part that is like this one; false where a stick has none. */
  cutAll(part: Part, cut: number): boolean {
    for (const [stick, alike] of this.alike(part)) {
      if (this.rooms[stick]! < alike * cut) return false;
      this.shrink(stick, alike * cut);
    }
    return true;
  }

  /** Parts every part that is like this one where it lies. */
  partAll(part: Part, at: number): void {
    for (const [stick] of this.alike(part)) this.parts[stick] = parted(this.parts[stick]!, part, at);
  }

  /** The sticks that hold such parts, and how many. */
  private alike(part: Part): [stick: number, count: number][] {
    return (this.homes[part.piece] ?? []).flatMap((stick): [number, number][] => {
      const count = this.parts[stick]!.filter(isLike(part)).length;
      return count > 0 ? [[stick, count]] : [];
    });
  }

  private shrink(stick: number, needed: number): void {
    this.order.splice(this.rankOf(stick), 1);
    this.rooms[stick]! -= needed;
    this.order.splice(this.rankOf(stick), 0, stick);
  }

  private firstWith = (room: number): number => this.rank((stick) => this.rooms[stick]! < room);

  private rankOf(wanted: number): number {
    const room = this.rooms[wanted]!;
    return this.rank((stick) => this.rooms[stick]! < room || (this.rooms[stick] === room && stick < wanted));
  }

  /** The first place whose stick is not before. */
  private rank(isBefore: (stick: number) => boolean): number {
    let [from, to] = [0, this.order.length];
    while (from < to) {
      const middle = (from + to) >> 1;
      if (isBefore(this.order[middle]!)) from = middle + 1;
      else to = middle;
    }
    return from;
  }
}

const isLike =
  (part: Part) =>
  (other: Part): boolean =>
    other.piece === part.piece && other.from === part.from && other.to === part.to;

/** The parts with every one that is like this parted. */
export const parted = (held: readonly Part[], part: Part, at: number): Part[] =>
  held.flatMap((other) =>
    isLike(part)(other)
      ? [
          { ...other, to: at },
          { ...other, from: at },
        ]
      : [other],
  );
