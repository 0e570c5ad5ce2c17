import { arcLength } from "../../geometry/arc";
import { expansion, hasExpansion, hasExpansionLimit, takesExpansionFitting } from "../../raceway/code/expansion";
import type { RuleBook } from "../../rules/rules";
import { standsFree } from "../../wiring/place";
import type { BuiltRun } from "../run/builtRun";

/** A straight stretch between bends and boxes that its temperature moves enough to take expansion fittings. */
export interface Movement {
  /** [in] */
  readonly length: number;
  /** [in] */
  readonly change: number;
  readonly fittings: number;
}

/**
 * Straight stretches of a run that take expansion fittings, as many as the change needs of a fitting's travel: of PVC by the
 * code's quarter inch; of metal, for which the code names no amount, by a rule and only where the run says its Temperature change.
 * None in the ground and in concrete; those that the route has already are left out.
 */
export function movements({ run, pulls }: BuiltRun, rules: RuleBook): Movement[] {
  const degrees = degreesOf(run, rules);
  if (degrees === undefined || !standsFree(run.place) || !hasExpansion(run.raceway)) return [];
  const from = hasExpansionLimit(run.raceway) ? undefined : rules.number("Expansion fitting from, metal");
  const travel = rules.number("Expansion fitting travel");
  return pulls.flatMap(({ parts, asked }) => {
    let at = 0;
    return parts.straights.flatMap((length, index): Movement[] => {
      const [begin, bend] = [at, parts.bends[index]];
      at += length + (bend ? arcLength(bend.angle, bend.radius) : 0);
      const change = expansion(run.raceway, length, degrees);
      if (!takesExpansionFitting(change, from)) return [];
      const own = asked.filter((each) => each.fitting === "expansion" && each.at > begin && each.at < begin + length);
      const fittings = Math.ceil(change / travel) - own.length;
      return fittings > 0 ? [{ length, change, fittings }] : [];
    });
  });
}

/** From the coldest to the hottest [°F]: the run's own, or for PVC the one of the rules. */
export const degreesOf = ({ raceway, temperatureChange }: BuiltRun["run"], rules: RuleBook): number | undefined =>
  temperatureChange ?? (hasExpansionLimit(raceway) ? rules.number("Expansion temperature change") : undefined);
