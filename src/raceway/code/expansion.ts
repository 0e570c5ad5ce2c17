import { SAME_PLACE } from "../../units/tolerances";
import { NotListedError } from "../../units/errors";
import table from "../data/expansion.json";
import type { Expansion } from "../kinds/record";
import { racewayRecord, type Raceway } from "../raceway";
import { commonRule, racewayRule, type CodeRule, type Edition } from "./rules";

function expansionOf(raceway: Raceway): Expansion {
  const found = racewayRecord(raceway).expansion;
  if (found !== undefined) return found;
  throw new NotListedError(`No expansion is listed for ${raceway}.`);
}

/** True where the expansion of its material is listed. */
export const hasExpansion = (raceway: Raceway): boolean => racewayRecord(raceway).expansion !== undefined;

/** True where the code itself says from what change a fitting is needed: PVC and RTRC. */
export const hasExpansionLimit = (raceway: Raceway): boolean => {
  const { expansion } = racewayRecord(raceway);
  return expansion !== undefined && expansion.rule !== "metalExpansion";
};

/**
 * Expansion of a raceway's material [in/(in·°F)].
 *
 * @throws NotListedError where none is listed
 * @example expansionRate("PVC 40") //=> 0.0000338
 */
export const expansionRate = (raceway: Raceway): number => expansionOf(raceway).rate;

/**
 * By how much a run changes its length; negative when it cools.
 *
 * @param length [in] @param temperatureChange [°F]
 * @returns [in]
 * @throws NotListedError where no expansion is listed
 * @example expansion("PVC 40", 1200, 100) //=> 4.056
 */
export const expansion = (raceway: Raceway, length: number, temperatureChange: number): number =>
  expansionRate(raceway) * length * temperatureChange;

/** The rule for it: with a limit for PVC and RTRC, without one for metal. */
export function expansionRule(raceway: Raceway, edition: Edition): CodeRule & { readonly limit?: number } {
  const { rule } = expansionOf(raceway);
  if (rule === "metalExpansion") return commonRule(rule, edition);
  return { ...racewayRule(rule, raceway, edition), limit: table.takesFitting };
}

/**
 * True when a straight run's change takes a fitting; 0.25 in. does.
 *
 * @param from change that takes one [in]; omitted: that of PVC
 */
export const takesExpansionFitting = (change: number, from: number = table.takesFitting): boolean =>
  Math.abs(change) >= from - SAME_PLACE;
