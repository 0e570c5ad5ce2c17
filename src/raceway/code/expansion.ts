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

/** True where the code itself says from what change a fitting is needed: PVC. */
export const hasExpansionLimit = (raceway: Raceway): boolean => racewayRecord(raceway).expansion?.rule === "expansion";

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

/** The rule for it: with a limit for PVC, without one for metal. */
export const expansionRule = (raceway: Raceway, edition: Edition): CodeRule & { readonly limit?: number } =>
  expansionOf(raceway).rule === "expansion"
    ? { ...racewayRule("expansion", raceway, edition), limit: table.takesFitting }
    : commonRule("metalExpansion", edition);

/**
 * True when a straight run's change takes a fitting; 0.25 in. does.
 *
 * @param from change that takes one [in]; omitted: that of PVC
 */
export const takesExpansionFitting = (change: number, from: number = table.takesFitting): boolean =>
  Math.abs(change) >= from - SAME_PLACE;
