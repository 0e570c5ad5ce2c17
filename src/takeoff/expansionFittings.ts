import type { BuiltRun } from "../shop/buildRun";
import type { Amount } from "./amount";
import { sizedItem } from "./item";
import type { RuleBook } from "./rules";

/** Expansion of PVC [in/(in·°F)], and the change in a straight run that asks for a fitting [in]: NEC 352.44 (2023). */
const PVC_EXPANSION = 3.38e-5;
const NEEDS_FITTING = 0.25;

/**
 * Expansion fittings of a PVC run: in each straight stretch between bends and boxes that grows or shrinks by 1/4 in. or
 * more, as many as its change needs of a fitting's travel. None for metal.
 */
export function expansionAmounts(built: BuiltRun, rules: RuleBook): Amount[] {
  if (!built.run.raceway.startsWith("PVC 4") && !built.run.raceway.startsWith("PVC 8")) return [];
  const [rise, travel] = [rules.number("Expansion temperature change"), rules.number("Expansion fitting travel")];
  const fittings = built.pulls
    .flatMap((pull) => pull.parts.straights)
    .map((straight) => straight * PVC_EXPANSION * rise)
    .reduce((sum, change) => sum + (change >= NEEDS_FITTING ? Math.ceil(change / travel) : 0), 0);
  return fittings > 0 ? [{ item: sizedItem(built.run, "expansion fitting"), each: fittings }] : [];
}
