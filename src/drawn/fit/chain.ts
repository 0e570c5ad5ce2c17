import { norm, subtract, type Vec3 } from "../../geometry/vector";
import type { Drawing, DrawnLine, NotRead } from "../file/drawing";

/** A run as it is drawn: its pulls one after another, each a chain of points [in]. */
export interface DrawnRun {
  readonly layer: string;
  readonly handles: readonly string[];
  readonly pulls: readonly (readonly Vec3[])[];
  readonly endsInBox: boolean;
}

export interface Chained {
  readonly runs: readonly DrawnRun[];
  /** Where it could not be told how lines go on. */
  readonly notRead: readonly NotRead[];
}

/** Ends nearer than this meet [in]; a drawing whose coordinates are rounded more coarsely has its own. */
const MEET = 1 / 32;

/**
 * Puts lines of a layer together whose ends meet: two that meet are one run, with a box between them where a point stands;
 * where three or more meet nothing is joined, and it is told.
 *
 * @param unit inches in a drawing unit
 */
export function chainLines(
  { lines, points, decimals }: Drawing,
  unit: number,
  takes: (layer: string) => boolean,
): Chained {
  const near = Math.max(MEET, 2 * unit * 10 ** -decimals);
  const inInches = (point: Vec3): Vec3 => [point[0] * unit, point[1] * unit, point[2] * unit];
  const runs: DrawnRun[] = [];
  const notRead: NotRead[] = [];
  const layers = new Map<string, DrawnLine[]>();
  for (const line of lines) if (takes(line.layer)) layers.set(line.layer, [...(layers.get(line.layer) ?? []), line]);
  const boxes = new Spots(near);
  for (const { layer, at } of points) boxes.add(layer, inInches(at));
  for (const [layer, own] of layers) {
    const chains = own
      .map((line): Chain => ({ handles: [line.handle], points: withoutRepeats(line.points.map(inInches), near / 16) }))
      .filter((chain) => chain.points.length > 1);
    const { joined, knots } = join(chains, near, (at) => boxes.has(layer, at));
    for (const { at, count } of knots) {
      const why = `${count} lines meet: say where the box is`;
      notRead.push({ layer, what: "lines", why, at: at.map((value) => value / unit) as unknown as Vec3, times: 1 });
    }
    for (const links of joined) {
      const end = links.at(-1)!.points.at(-1)!;
      runs.push({
        layer,
        handles: links.flatMap(({ handles }) => handles),
        pulls: links.map((link) => link.points),
        endsInBox: boxes.has(layer, end),
      });
    }
  }
  return { runs, notRead };
}

interface Chain {
  readonly handles: readonly string[];
  readonly points: readonly Vec3[];
}

interface End {
  readonly chain: number;
  readonly last: boolean;
}

/** Follows ends that meet two by two; a chain of links for each run, a link ending at a box. */
function join(chains: readonly Chain[], near: number, isBox: (at: Vec3) => boolean) {
  const spots = new Map<string, { at: Vec3; ends: End[] }>();
  const grid = new Spots(near);
  const spotOf = chains.map(({ points }, chain) =>
    [false, true].map((last) => {
      const at = last ? points.at(-1)! : points[0]!;
      const key = grid.keyOf("", at);
      const spot = spots.get(key) ?? { at, ends: [] };
      spots.set(key, spot);
      spot.ends.push({ chain, last });
      return spot;
    }),
  );
  const taken = new Set<number>();
  const follow = (chain: number, last: boolean): Chain[] => {
    const links: Chain[] = [];
    for (let end: End | undefined = { chain, last: !last }; end && !taken.has(end.chain);) {
      taken.add(end.chain);
      const { handles, points } = chains[end.chain]!;
      const own = { handles, points: end.last ? [...points].reverse() : points };
      const spot: { at: Vec3; ends: End[] } = spotOf[end.chain]![end.last ? 0 : 1]!;
      const before = links.at(-1);
      if (!before || isBox(before.points.at(-1)!)) links.push(own);
      else {
        links[links.length - 1] = {
          handles: [...before.handles, ...handles],
          points: [...before.points, ...own.points.slice(1)],
        };
      }
      const here: End = end;
      const other: End | undefined =
        spot.ends.length === 2
          ? spot.ends.find(({ chain, last }) => chain !== here.chain || last === here.last)
          : undefined;
      end = other;
    }
    return links;
  };
  const joined: Chain[][] = [];
  // From open ends first, in the order of the drawing; what is left are rings.
  chains.forEach((_, chain) => {
    if (taken.has(chain)) return;
    for (const last of [false, true]) {
      if (!taken.has(chain) && spotOf[chain]![last ? 1 : 0]!.ends.length !== 2) joined.push(follow(chain, !last));
    }
  });
  chains.forEach((_, chain) => {
    if (!taken.has(chain)) joined.push(follow(chain, true));
  });
  const knots = [...spots.values()]
    .filter(({ ends }) => ends.length > 2)
    .map(({ at, ends }) => ({ at, count: ends.length }));
  return { joined, knots };
}

/** Places that count as one when they are near each other. */
class Spots {
  private readonly cells = new Map<string, { at: Vec3; key: string }[]>();
  constructor(private readonly near: number) {}

  add(layer: string, at: Vec3): void {
    this.keyOf(layer, at);
  }

  has = (layer: string, at: Vec3): boolean => this.find(layer, at) !== undefined;

  /** The key of the place that is near, or of a new one. */
  keyOf(layer: string, at: Vec3): string {
    const found = this.find(layer, at);
    if (found) return found;
    const cell = this.cellOf(layer, at, [0, 0, 0]);
    const key = `${cell} ${this.cells.get(cell)?.length ?? 0}`;
    this.cells.set(cell, [...(this.cells.get(cell) ?? []), { at, key }]);
    return key;
  }

  private find(layer: string, at: Vec3): string | undefined {
    for (let side = 0; side < 27; side += 1) {
      const shift = [(side % 3) - 1, (Math.floor(side / 3) % 3) - 1, Math.floor(side / 9) - 1] as const;
      const own = this.cells.get(this.cellOf(layer, at, shift));
      const found = own?.find((spot) => norm(subtract(spot.at, at)) <= this.near);
      if (found) return found.key;
    }
    return undefined;
  }

  private cellOf(layer: string, at: Vec3, shift: Vec3): string {
    return [layer, ...at.map((value, axis) => Math.floor(value / this.near) + shift[axis]!)].join(" ");
  }
}

const withoutRepeats = (points: readonly Vec3[], near: number): Vec3[] => {
  const kept: Vec3[] = [];
  for (const point of points) if (kept.length === 0 || norm(subtract(point, kept.at(-1)!)) > near) kept.push(point);
  return kept;
};
