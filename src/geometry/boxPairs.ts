import type { Vec3 } from "./vector";

/** A straight-sided room along the axes [in]. */
export interface Room3 {
  readonly low: Vec3;
  readonly high: Vec3;
}

/** True when two rooms have a point in common. */
export const roomsMeet = (a: Room3, b: Room3): boolean =>
  a.low[0] <= b.high[0] &&
  b.low[0] <= a.high[0] &&
  a.low[1] <= b.high[1] &&
  b.low[1] <= a.high[1] &&
  a.low[2] <= b.high[2] &&
  b.low[2] <= a.high[2];

/**
 * Every two of some things that have rooms which meet, by their places, the lower first; each pair once.
 *
 * Rooms are put into the cells of a grid that they reach into. A cell is as wide as the usual room, so that their number
 * grows with that of the rooms; one that reaches into many cells stands in each of them.
 *
 * @param rooms those of each thing
 */
export function* boxPairs(rooms: readonly (readonly Room3[])[]): Generator<readonly [number, number]> {
  const sides = rooms.flatMap((own) =>
    own.map(({ low, high }) => Math.max(high[0] - low[0], high[1] - low[1], high[2] - low[2])),
  );
  const cell = Math.max(1, sides.reduce((sum, side) => sum + side, 0) / Math.max(1, sides.length));
  const grid = new Map<string, { thing: number; room: Room3 }[]>();
  const told = new Set<number>();
  for (const [thing, own] of rooms.entries()) {
    for (const room of own) {
      for (const key of cellsOf(room, cell)) {
        const there = grid.get(key);
        const entry = { thing, room };
        if (!there) grid.set(key, [entry]);
        else {
          for (const { thing: other, room: beside } of there) {
            if (other === thing || !roomsMeet(room, beside)) continue;
            const pair = other * rooms.length + thing;
            if (told.has(pair)) continue;
            told.add(pair);
            yield [other, thing];
          }
          there.push(entry);
        }
      }
    }
  }
}

function* cellsOf({ low, high }: Room3, cell: number): Generator<string> {
  const [from, to] = [low.map((value) => Math.floor(value / cell)), high.map((value) => Math.floor(value / cell))];
  for (let x = from[0]!; x <= to[0]!; x++)
    for (let y = from[1]!; y <= to[1]!; y++) for (let z = from[2]!; z <= to[2]!; z++) yield `${x} ${y} ${z}`;
}
