import { isFlexible } from "../../raceway/raceway";
import { expansionRule, hasExpansion } from "../../raceway/code/expansion";
import { commonRule, nameRule, type Edition } from "../../raceway/code/rules";
import type { RuleBook } from "../../rules/rules";
import { show } from "../../units/show";
import type { BuiltRun } from "../run/builtRun";
import type { Run } from "../run/runsTable";
import type { Finding } from "./finding";
import { degreesOf, movements } from "./movements";

const notListed = ({ name, raceway }: Run, edition: Edition): Finding => ({
  run: name,
  weight: "look",
  rule: nameRule(commonRule("metalExpansion", edition)),
  finding: `no expansion is listed for ${raceway}: how far its straights move is not known.`,
  fix: "Work it out from its maker's figure; the take-off counts no expansion fitting.",
});

/** Straight stretches that take expansion fittings; the take-off counts them. */
export function expansionNeeded(built: BuiltRun, edition: Edition, rules: RuleBook): Finding[] {
  const { run } = built;
  if (run.temperatureChange !== undefined && !hasExpansion(run.raceway))
    return isFlexible(run.raceway) ? [] : [notListed(run, edition)];
  const found = movements(built, rules);
  if (found.length === 0) return [];
  const most = found.reduce((a, b) => (b.change > a.change ? b : a));
  const fittings = found.reduce((sum, movement) => sum + movement.fittings, 0);
  return [
    {
      run: run.name,
      weight: "look",
      rule: nameRule(expansionRule(run.raceway, edition)),
      finding:
        `a straight of ${built.lengths.tape(most.length)} of ${run.raceway} moves ${built.lengths.show(most.change, 2)} over ` +
        `${show(degreesOf(run, rules)!, 0)} °F; the take-off counts ${fittings === 1 ? "one expansion fitting" : `${fittings} expansion fittings`}.`,
      fix:
        (run.place ? "" : "Write buried, in concrete or exposed under Where. ") +
        "Write this run's own Temperature change [°F], where it is another.",
    },
  ];
}
