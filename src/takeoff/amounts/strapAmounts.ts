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
  const { run } = built;
  if (!standsFree(run.place)) return [];
  const spacing = spacingOf(run, rules);
  const supports = supportsOf(built, rules);
  if (run.rack) return rackAmounts(built, run.rack, supports, spacing.limit, rules);
  return someOf([{ item: sizedItem(run, "strap"), each: supports * rules.number("Straps per support") }]);
}

const spacingOf = ({ raceway, size }: BuiltRun["run"], rules: RuleBook) =>
  supportRule(raceway, size, readEdition(rules.number("Support edition")));

/** Supports of a run from box to box; of a rack those of its longest conduit, which carry them all. */
export function supportsOf({ run, pulls }: BuiltRun, rules: RuleBook): number {
  if (!standsFree(run.place) || run.rack?.longest === false) return 0;
  const spacing = spacingOf(run, rules);
  return pulls.reduce((sum, pull) => sum + countSupports(pull.parts.developed, spacing), 0);
}
