import { InputError } from "../units/errors";
import { lookUpKey } from "../units/names/lookUpKey";
import { toNumber } from "../units/number";

/** How often a typical (a room, a floor) is placed in an area. */
export interface Placing {
  /** As the rule names it. */
  readonly typical: string;
  /** Empty: in the area that its rows say. */
  readonly area: string;
  /** Whole; 0 for nowhere yet. */
  readonly times: number;
}

/** Most places of one typical in one area that are taken for meant. */
const MOST = 10_000;

const RULE = /^typical\s+([^,]+?)\s*(?:,\s*(\S.*?)\s*)?$/i;

/**
 * Reads a rule that places a typical; undefined for any other rule.
 *
 * @throws InputError naming the typical where Value is not how often it is placed
 * @example readPlacing("Typical ROOM-A, North", 3) //=> { typical: "ROOM-A", area: "North", times: 3 }
 */
export function readPlacing(rule: unknown, value: unknown): Placing | undefined {
  const [, typical, area = ""] = RULE.exec(String(rule ?? "").trim()) ?? [];
  if (typical === undefined) return undefined;
  const name = `Value of "${String(rule).trim()}"`;
  if (value === null || value === "") {
    throw new InputError(`${name} is empty; write how many times it is placed, 0 for nowhere yet.`);
  }
  return { typical, area, times: toNumber(value, name, { min: 0, max: MOST, integer: true }) };
}

/** The rule of a placing, as a table of rules has it. */
export const placingRule = ({ typical, area, times }: Placing) => ({
  rule: `Typical ${typical}${area === "" ? "" : `, ${area}`}`,
  value: times,
  unit: "times",
});

/** The placings of one typical, in their order. */
export const placingsOf = (placings: readonly Placing[], typical: string): readonly Placing[] =>
  placings.filter((placing) => lookUpKey(placing.typical) === lookUpKey(typical));
