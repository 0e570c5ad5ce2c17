import type { BuiltRun } from "../../shop/run/builtRun";
import { movements } from "../../shop/code/movements";
import { someOf, type Amount } from "./amount";
import { sizedItem } from "./item";
import type { RuleBook } from "../../rules/rules";

/** Expansion fittings of a run, in the straight stretches that take them. */
export function expansionAmounts(built: BuiltRun, rules: RuleBook): Amount[] {
  const fittings = movements(built, rules).reduce((sum, movement) => sum + movement.fittings, 0);
  return someOf([{ item: sizedItem(built.run, "expansion fitting"), each: fittings }]);
}
