import { InputError, quoteValue } from "../../units/errors";
import { lookUpKey } from "../../units/names/lookUpKey";

/** What a price is for: of what, and of how many at once. */
export interface PriceUnit {
  /** Null when the Unit cell does not say: whatever the take-off counts. */
  readonly of: "ft" | "each" | null;
  readonly per: 1 | 100 | 1000;
}

const COUNTS: Record<string, PriceUnit["per"]> = { "": 1, per: 1, "1": 1, c: 100, "100": 100, m: 1000, "1000": 1000 };

/**
 * Reads the Unit of a price: each, ft, or the trade's C (a hundred) and M (a thousand) of either.
 *
 * @throws InputError for any other unit
 * @example readPriceUnit("C ft") //=> { of: "ft", per: 100 }
 */
export function readPriceUnit(cell: unknown): PriceUnit {
  const words = /^(?:per )?([cm]|1|100|1000)? ?(ft|foot|feet|lf|each|ea|e|pc|pcs|piece|stick)?$/.exec(lookUpKey(cell));
  if (!words) throw new InputError(`Unit must be each, ft, C, M, C ft or M ft; got ${quoteValue(cell)}.`);
  const [, count = "", of = ""] = words;
  return { of: of === "" ? null : /^(f|lf)/.test(of) ? "ft" : "each", per: COUNTS[count]! };
}
