import type { Column, TableRow } from "../../table/headerTable";
import { quoteValue, InputError } from "../../units/errors";
import { toInches } from "../../units/length";
import { asNumber, toNumber } from "../../units/number";

/** Columns of Runs that a bid is told apart by, and its labor made harder by. */
export const BID_RUN_COLUMNS: readonly Column[] = [
  { name: "Phase" },
  { name: "Floor" },
  { name: "Height" },
  { name: "Alternate" },
  { name: "Typical" },
];

/** What a row says for the bid, as far as it does. */
export interface BidCells {
  readonly phase?: string;
  /** 1 for the ground floor. */
  readonly floor?: number;
  /** Where the work is above the floor one stands on [ft]. */
  readonly height?: number;
  /** The alternate it belongs to, or `not` and the one that takes its place. */
  readonly alternate?: string;
  /** The typical it is a part of: a room or a floor that rules place so many times. */
  readonly typical?: string;
  /** Of a row that was placed with its typical: how many times; its quantity has them in it. */
  readonly placed?: number;
}

/** Reads those cells of a row. @throws InputError naming the column */
export function readBidCells(row: TableRow): BidCells {
  const [phase, floor, height, alternate, typical] = BID_RUN_COLUMNS.map(({ name }) => row.get(name));
  return {
    ...(phase === null || phase === undefined ? {} : { phase: String(phase).trim() }),
    ...(floor === null || floor === undefined
      ? {}
      : { floor: toNumber(floor, "Floor", { min: -20, max: 300, integer: true }) }),
    ...(height === null || height === undefined ? {} : { height: readHeight(height) }),
    ...(alternate === null || alternate === undefined ? {} : { alternate: String(alternate).trim() }),
    ...(typical === null || typical === undefined ? {} : { typical: String(typical).trim() }),
  };
}

/** A plain number is feet here, as ladders are spoken of. */
function readHeight(cell: unknown): number {
  const feet = asNumber(cell) ?? toInches(cell, "Height") / 12;
  if (feet > 0 && feet <= 1000) return feet;
  throw new InputError(`Height must be above 0 and at most 1,000 ft; got ${quoteValue(cell)}.`);
}
