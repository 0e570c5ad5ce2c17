import { racewayRecord } from "../../raceway/raceway";
import { expansion, takesExpansionFitting } from "../../raceway/expansion";
import type { BuiltRun } from "../../shop/run/builtRun";
import { someOf, type Amount } from "./amount";
import { sizedItem } from "./item";
import type { RuleBook } from "../../rules/rules";

/**
 * Expansion fittings of a PVC run: in each straight stretch between bends and boxes that changes enough to take one by
 * the code, as many as its change needs of a fitting's travel. None for metal.
 */
export function expansionAmounts({ run, pulls }: BuiltRun, rules: RuleBook): Amount[] {
  if (racewayRecord(run.raceway).expansion === undefined) return [];
  const temperature = rules.number("Expansion temperature change");
  const travel = rules.number("Expansion fitting travel");
  const changes = pulls.flatMap((pull) =>
    pull.parts.straights.map((straight) => expansion(run.raceway, straight, temperature)),
  );
  const fittings = changes.reduce(
    (sum, change) => sum + (takesExpansionFitting(change) ? Math.ceil(change / travel) : 0),
    0,
  );
  return someOf([{ item: sizedItem(run, "expansion fitting"), each: fittings }]);
}
