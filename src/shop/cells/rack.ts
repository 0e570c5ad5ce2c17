import type { Vec3 } from "../../geometry/vector";
import { DIRECTIONS, type Direction } from "../../route/text/types";
import { InputError, quoteValue } from "../../units/errors";
import { toInches } from "../../units/length";
import { toNumber } from "../../units/number";

/** Conduits side by side: how many, center to center [in], and on which side of the first where the run begins. */
export interface Rack {
  readonly count: number;
  readonly spacing: number;
  readonly toward: Direction;
}

/** Most conduits of one rack. */
const MOST = 60;

const CELL = new RegExp(`^(\\d+)\\s+at\\s+(\\S.*?)\\s+(${DIRECTIONS.join("|")})$`);

/**
 * Reads a Rack cell.
 *
 * @throws InputError for anything else
 * @example readRack("4 at 3 north") //=> { count: 4, spacing: 3, toward: "north" }
 */
export function readRack(cell: unknown): Rack {
  const text = String(cell).trim().toLowerCase().replace(/\s+/g, " ");
  const [, count, spacing, toward] = CELL.exec(text) ?? [];
  if (count === undefined) {
    throw new InputError(
      `Rack must be how many conduits, center to center, and to which side, as in 4 at 3 north; got ${quoteValue(cell)}.`,
    );
  }
  return {
    count: toNumber(Number(count), "Rack, conduits,", { min: 2, max: MOST, integer: true }),
    spacing: toInches(spacing, "Rack, spacing,", { above: 0, max: 120 }),
    toward: toward as Direction,
  };
}

/** A conduit of a rack. */
export interface RackMember {
  /** 1 for the conduit that the route is of. */
  readonly place: number;
  readonly count: number;
  /** Center to center [in]. */
  readonly spacing: number;
  /** From where conduit 1 begins to where this one does [in]. */
  readonly offset: Vec3;
  /** True for the longest one: what holds the rack is counted with it. */
  readonly longest: boolean;
  /** From which step on the conduits lie one above the other, if they do. */
  readonly uprightFrom?: number;
}
