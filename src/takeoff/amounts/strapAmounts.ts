import { countSupports, supportRule } from "../../raceway/code/supports";
import { readEdition } from "../../raceway/code/edition";
import type { BuiltRun } from "../../shop/run/builtRun";
import { someOf, type Amount } from "./amount";
import { rackAmounts } from "./rackAmounts";
import { sizedItem } from "./item";
import type { RuleBook } from "../../rules/rules";
import { standsFree } from "../../wiring/place";

/**
 * Straps of a run: the fewest supports the code allows from box to box, by the spacing for a run as it comes. None in the
 * ground and in concrete.
 */
export function strapAmounts(built: BuiltRun, rules: RuleBook): Amount[] {
  const { run, pulls } = built;
  if (!standsFree(run.place)) return [];
  const spacing = supportRule(run.raceway, run.size, readEdition(rules.number("Support edition")));
  const supports = pulls.reduce((sum, pull) => sum + countSupports(pull.parts.developed, spacing), 0);
  if (run.rack) return rackAmounts(built, run.rack, supports, spacing.limit, rules);
  return someOf([{ item: sizedItem(run, "strap"), each: supports * rules.number("Straps per support") }]);
}
