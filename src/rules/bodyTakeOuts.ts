import type { Raceway } from "../raceway/raceway";
import type { TradeSize } from "../raceway/tradeSize";
import { InputError, quoteValue } from "../units/errors";
import { toInches } from "../units/length";
import { forWhat } from "./sizedLengths";

/** What a conduit body takes of the conduit on either side: from the crossing of the centerlines to the conduit's end [in]. */
export interface TakeOut {
  /** On the side the run comes in by. */
  readonly in: number;
  /** On the side it goes on by. */
  readonly out: number;
}

/** The same as a shop measured it, for a body of a raceway and a size, or of all of them. */
export interface BodyTakeOut extends TakeOut {
  readonly body: string;
  readonly raceway?: Raceway;
  readonly size?: TradeSize;
}

/** Farther than this no body reaches [in]. */
const LONGEST = 24;

const NAME = /^take-out\s+(lb|ll|lr|t|c|x)(?:\s+(.*\S))?$/i;

/** The body, raceway and size that a rule is of, by its name: `Take-out LB EMT 1`. Undefined for every other name. */
export function bodyOfRule(name: unknown): Omit<BodyTakeOut, keyof TakeOut> | undefined {
  const [, body, what = ""] = NAME.exec(String(name ?? "").trim()) ?? [];
  return body === undefined ? undefined : { body: body.toUpperCase(), ...forWhat(what, `Take-out ${body}`) };
}

/** The same in words, in one spelling: `Take-out LB EMT 1`. */
export const ruleOfBody = ({ body, raceway, size }: Omit<BodyTakeOut, keyof TakeOut>): string =>
  ["Take-out", body, raceway, size].filter((word) => word !== undefined).join(" ");

/**
 * Reads a take-out: one length for both sides, or two, first where the run comes in.
 *
 * @throws InputError naming the rule, what is expected and what was read
 * @example readTakeOut("1-1/2, 2-1/4", "Take-out LB EMT 1") //=> { in: 1.5, out: 2.25 }
 */
export function readTakeOut(cell: unknown, name: string): TakeOut {
  const words = String(cell ?? "").split(/,|;|\band\b/);
  const parts = typeof cell === "number" ? [cell] : words.map((part) => part.trim());
  if (parts.length > 2 || parts.some((part) => part === "")) {
    throw new InputError(
      `"${name}" must be a length, or two for where the run comes in and where it goes on, as in 1-1/2, 2-1/4; got ${quoteValue(cell)}.`,
    );
  }
  const [first, second] = parts.map((part) => toInches(part, `"${name}"`, { min: 0, max: LONGEST }));
  return { in: first!, out: second ?? first! };
}

/** The take-outs of the bodies of a raceway and size, the nearest row for each; none where no row is for them. */
export function takeOutsFor(rows: readonly BodyTakeOut[], raceway: Raceway, size: TradeSize): Record<string, TakeOut> {
  const nearness = (row: BodyTakeOut) => (row.raceway ? 2 : 0) + (row.size ? 1 : 0);
  const own = rows.filter((row) => (row.raceway ?? raceway) === raceway && (row.size ?? size) === size);
  own.sort((a, b) => nearness(a) - nearness(b));
  return Object.fromEntries(own.map((row) => [row.body, { in: row.in, out: row.out }]));
}
