import { remember } from "../../memory/remember";
import { toInches } from "../../units/length";
import { isOmitted } from "../../units/limits";
import type { RuleBook } from "../../rules/rules";

/** What the saw takes, and what is worth keeping of a stick. */
export interface Saw {
  /** Width of the cut [in]. */
  readonly kerf: number;
  /** Shortest offcut that is kept [in]. */
  readonly keep: number;
}

/** Widest saw cut that is taken for one [in]. */
const WIDEST_KERF = 1;

/**
 * Reads kerf and shortest offcut; what is omitted comes from the rules.
 * @throws InputError naming the argument, the limit and the value
 */
export function readSaw(kerf: unknown, keep: unknown, rules: RuleBook): Saw {
  return sawOf(
    rules,
    isOmitted(kerf) ? rules.number("Saw kerf") : toInches(kerf, "kerf", { min: 0, max: WIDEST_KERF }),
    isOmitted(keep) ? rules.number("Shortest offcut to keep") : toInches(keep, "keep", { min: 0 }),
  );
}

const sawOf = remember((_: RuleBook, kerf: number, keep: number): Saw => ({ kerf, keep }));
