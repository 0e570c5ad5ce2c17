import { remember } from "../../memory/remember";
import type { RuleBook } from "../../rules/rules";
import { readOperations, type Operation } from "../../rules/operations";
import { endsOf } from "../../shop/code/ends";
import { readFittingStyle } from "../../shop/code/fittingStyle";
import type { BuiltRun } from "../../shop/run/builtRun";
import { sawnEndsOf } from "../../shop/schedule/sawnEnds";
import type { Run } from "../../shop/run/runsTable";
import { someOf, type Amount } from "./amount";
import { sizedItem, type OfSize } from "./item";

/** Work that the rule "Work counted besides" names. */
export const operationsIn: (rules: RuleBook) => readonly Operation[] = remember((rules) =>
  readOperations(rules.text("Work counted besides"), '"Work counted besides"'),
);

/**
 * Cuts, threads and reams of one piece: a whole stick has none, any other piece one cut and as many sawn ends as the rule
 * says; they are threaded where the conduit is and its fittings are, and reamed, flexible conduit apart.
 *
 * @param cutLength [in]
 */
export function sawnAmounts(run: Run, cutLength: number, rules: RuleBook): Amount[] {
  const asked = operationsIn(rules);
  const ends = sawnEndsOf(run, cutLength);
  if (asked.length === 0 || ends === "none") return [];
  const sawn = rules.number("Sawn ends of a cut piece");
  const isThreaded = ends === "threaded and reamed" && readFittingStyle(run.fittings, run.raceway) === "threaded";
  return someOf([
    { item: sizedItem(run, "cut"), each: asked.includes("cuts") ? 1 : 0 },
    { item: sizedItem(run, "thread"), each: asked.includes("threads") && isThreaded ? sawn : 0 },
    { item: sizedItem(run, "ream"), each: asked.includes("reams") && ends !== "trimmed" ? sawn : 0 },
  ]);
}

/**
 * Ends at boxes, one termination each, those of flexible pieces by their connectors; and supports from box to box, a trapeze
 * as one.
 */
export function endAndSupportWork(
  built: BuiltRun,
  amounts: readonly Amount[],
  supports: number,
  rules: RuleBook,
): Amount[] {
  const { run } = built;
  const asked = operationsIn(rules);
  const termination = (of: OfSize, each: number): Amount => ({ item: sizedItem(of, "termination"), each });
  const flexible = amounts.flatMap(({ item: { kind, raceway, size }, each }) =>
    kind === "connector" && raceway && size && raceway !== run.raceway ? [termination({ raceway, size }, each)] : [],
  );
  return someOf([
    ...(asked.includes("terminations") ? [termination(run, endsOf(built).ends), ...flexible] : []),
    { item: sizedItem(run, "support"), each: asked.includes("supports") ? supports : 0 },
  ]);
}

/** Two ends of each conductor of a run, one termination each; what is spliced on its way is not known. */
export const wireTerminations = (conductors: readonly Amount[], rules: RuleBook): Amount[] =>
  operationsIn(rules).includes("wire terminations")
    ? conductors.map(({ item, each }) => ({
        item: { name: `${item.name} termination`, kind: "wire termination", unit: "each", bought: false },
        each: 2 * each,
      }))
    : [];
