import type { Run } from "../../shop/run/runsTable";
import { hasThroats } from "../../shop/code/throats";
import { InputError, quoteValue } from "../../units/errors";
import { toNumber } from "../../units/number";
import { someOf, type Amount } from "./amount";
import type { FittingStyle } from "../../raceway/kinds/record";
import { sizedItem, type Item } from "./item";
import { lookUpKey } from "../../units/lookUpKey";
import { endRule, type EndPart } from "../../rules/endRules";
import type { RuleBook } from "../../rules/rules";

/** An end so named has no box and no connector: a stub left open, with a bushing. */
const OPEN = "open";

export const isOpen = (end: string): boolean => lookUpKey(end) === OPEN;

/**
 * Fittings at the ends of a run: two terminations for each pull, less the ends that are left open.
 *
 * @param pulls parts of the run between boxes
 * @throws InputError when the Grounding bushing cell cannot be read or asks for more than there are ends
 */
export function endAmounts(run: Run, pulls: number, style: FittingStyle, rules: RuleBook): Amount[] {
  const open = [run.from, run.to].filter(isOpen).length;
  const ends = 2 * pulls - open;
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

/** Grounding bushings by the word in the cell. */
const GROUNDING_WORDS: ReadonlyMap<string, number> = new Map([
  ...["", "no", "none", "false"].map((word) => [word, 0] as const),
  ...["from", "to"].map((word) => [word, 1] as const),
  ...["yes", "true", "both"].map((word) => [word, 2] as const),
  ["all", Infinity],
]);

/** Reads a Grounding bushing cell: no, from, to, both, all (pull boxes too) or a number. */
function groundingBushings(text: string, ends: number): number {
  const asked = GROUNDING_WORDS.get(lookUpKey(text));
  if (asked !== undefined) return Math.min(asked, ends);
  if (Number.isNaN(Number(text))) {
    throw new InputError(
      `Grounding bushing must be no, from, to, both, all or a number up to ${ends}; got ${quoteValue(text)}.`,
    );
  }
  return toNumber(Number(text), "Grounding bushing", { min: 0, max: ends, integer: true });
}
