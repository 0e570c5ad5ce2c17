import { SAME_COUNT } from "../../units/tolerances";
import { InputError, quoteValue } from "../../units/errors";
import { checkSize } from "../dimensions";
import { racewayRule, type Edition, type LimitRule, type CodeRule } from "./rules";
import { racewayRecord, type Raceway } from "../raceway";
import type { TradeSize } from "../tradeSize";

/** "any": a run as it comes; "straight": a straight run with threaded couplings throughout (IMC and RMC). */
export type SupportedRun = "any" | "straight";

export interface SupportRule extends LimitRule {
  /** Farthest the first support may be from each end of the run [in]. */
  readonly fromEnd: number;
}

const FOOT = 12;

/**
 * How far apart supports may be: `limit` and `fromEnd` [in].
 *
 * @throws InputError when a raceway without threaded couplings is given as a straight threaded run; NotListedError when
 *   the raceway is not made in that size
 * @example supportRule("EMT", "1/2", 2023).limit //=> 120
 */
export function supportRule(
  raceway: Raceway,
  size: TradeSize,
  edition: Edition,
  run: SupportedRun = "any",
): SupportRule {
  checkSize(raceway, size);
  const { rule, spacing, fromEnd, straightThreaded } = racewayRecord(raceway).supports;
  if (run === "any") {
    const feet = typeof spacing === "number" ? spacing : spacing[size];
    return withSpacing(racewayRule(rule, raceway, edition), feet, fromEnd);
  }
  if (straightThreaded) {
    return withSpacing(racewayRule("threadedSupports", raceway, edition), straightThreaded[size], fromEnd);
  }
  throw new InputError(`run must be "any" for ${raceway}: only IMC and RMC have threaded couplings; got "straight".`);
}

function withSpacing(rule: CodeRule, feet: number, fromEnd: number): SupportRule {
  const text = rule.text.replace("{fromEnd}", String(fromEnd)).replace("{spacing}", String(feet));
  return { ...rule, text, limit: feet * FOOT, fromEnd: fromEnd * FOOT };
}

/** Reads a kind of supported run; an omitted one is any. @throws InputError */
export function readSupportedRun(value: unknown, argument = "run"): SupportedRun {
  if (value === null || value === undefined || value === "") return "any";
  const run = String(value).trim().toLowerCase();
  if (run === "any" || run === "straight") return run;
  throw new InputError(`${argument} must be any or straight; got ${quoteValue(value)}.`);
}

/**
 * Fewest supports of a run from one box to the next: one within `fromEnd` of each end, which one support in the middle
 * does for a run of twice that, and between those no gap above the spacing. The code's exceptions (short raceways between
 * knockouts, missing structure, risers) are left aside.
 *
 * @param length [in] @returns ⌈(length − 2·fromEnd)/spacing⌉ + 1, at least 1
 * @example countSupports(300, supportRule("EMT", "1/2", 2023)) //=> 3
 */
export const countSupports = (length: number, rule: Pick<SupportRule, "limit" | "fromEnd">): number =>
  Math.max(1, Math.ceil((length - 2 * rule.fromEnd) / rule.limit - SAME_COUNT) + 1);

/**
 * Where that many supports may stand, evenly from the first one near the datum end to the last one near the far end;
 * one alone stands in the middle.
 *
 * @param length [in] @returns distances from the datum end [in]
 * @example supportPlaces(300, supportRule("EMT", "1/2", 2023)) //=> [36, 150, 264]
 */
export function supportPlaces(length: number, rule: Pick<SupportRule, "limit" | "fromEnd">): number[] {
  const count = countSupports(length, rule);
  if (count === 1) return [length / 2];
  const first = Math.min(rule.fromEnd, length / 2);
  const apart = (length - 2 * first) / (count - 1);
  return Array.from({ length: count }, (_, place) => first + place * apart);
}
