import { SAME_PLACE } from "../units/tolerances";
import { NotListedError } from "../units/errors";
import table from "./data/expansion.json";
import { racewayRecord, type Raceway } from "./raceway";
import { racewayRule, type Edition, type LimitRule } from "./rules";

/**
 * Expansion of a raceway's material [in/(in·°F)].
 *
 * @throws NotListedError for metal: the code gives PVC's alone
 * @example expansionRate("PVC 40") //=> 0.0000338
 */
export function expansionRate(raceway: Raceway): number {
  const rate = racewayRecord(raceway).expansion;
  if (rate !== undefined) return rate;
  throw new NotListedError(`No expansion is listed for ${raceway}; the code's table is for PVC conduit.`);
}

/**
 * By how much a run changes its length; negative when it cools.
 *
 * @param length [in] @param temperatureChange [°F]
 * @returns [in]
 * @throws NotListedError for metal
 * @example expansion("PVC 40", 1200, 100) //=> 4.056
 */
export const expansion = (raceway: Raceway, length: number, temperatureChange: number): number =>
  expansionRate(raceway) * length * temperatureChange;

/** Change of a straight run from which it takes an expansion fitting [in]. */
export const expansionRule = (raceway: Raceway, edition: Edition): LimitRule => ({
  ...racewayRule("expansion", raceway, edition),
  limit: table.takesFitting,
});

/** True when a straight run's change takes a fitting; 0.25 in. does. */
export const takesExpansionFitting = (change: number): boolean => Math.abs(change) >= table.takesFitting - SAME_PLACE;
