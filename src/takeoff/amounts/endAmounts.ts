import type { BuiltRun } from "../../shop/run/builtRun";
import type { Run } from "../../shop/run/runsTable";
import { endsOf, groundingBushings } from "../../shop/code/ends";
import { hasThroats } from "../../shop/code/throats";
import { someOf, type Amount } from "./amount";
import type { FittingStyle } from "../../raceway/kinds/record";
import { sizedItem, type Item } from "./item";
import { endRule, type EndPart } from "../../rules/endRules";
import type { RuleBook } from "../../rules/rules";

/**
 * Fittings at the ends of a run: two terminations for each pull, less the ends that are left open, in a body or at a flexible piece.
 *
 * @throws InputError when the Grounding bushing cell cannot be read or asks for more than there are ends
 */
export function endAmounts(built: BuiltRun, style: FittingStyle, rules: RuleBook): Amount[] {
  const { run } = built;
  const { open, ends } = endsOf(built);
  const grounding = groundingBushings(run.groundingBushing, ends);
  const perEnd = (part: EndPart): number => rules.number(endRule(part, run.raceway, style));
  const throats = hasThroats(run);
  // A terminal adapter has no throat of its own: with large conductors a bushing goes onto it. Common practice, no source.
  const onAdapter = throats && style === "cement" ? 1 : 0;
  const bushings = Math.max(0, ends * Math.max(onAdapter, perEnd("Bushings")) - grounding);
  return someOf([
    { item: connectorItem(run, style, throats), each: ends * perEnd("Connectors") },
    { item: sizedItem(run, "locknut"), each: ends * perEnd("Locknuts") },
    { item: sizedItem(run, "bushing"), each: open + (throats ? 0 : bushings) },
    { item: sizedItem(run, "bushing", "insulating bushing"), each: throats ? bushings : 0 },
    { item: sizedItem(run, "grounding bushing", `${throats ? "insulating " : ""}grounding bushing`), each: grounding },
  ]);
}

function connectorItem(run: Run, style: FittingStyle, throats: boolean): Item {
  if (style === "cement") return sizedItem(run, "connector", "terminal adapter");
  return sizedItem(run, "connector", `${style} connector${throats ? ", insulated throat" : ""}`);
}

/** A coupling of a run's style. PVC has one kind. */
export const couplingItem = (run: Run, style: FittingStyle): Item =>
  sizedItem(run, "coupling", style === "cement" ? "coupling" : `${style} coupling`);
