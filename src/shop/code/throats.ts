import { commonRule, nameRule, type Edition } from "../../raceway/code/rules";
import { needsThroat } from "../../wiring/roles";
import type { BuiltRun } from "../run/builtRun";
import type { Run } from "../run/runsTable";
import type { Finding } from "./finding";
import { runConductors } from "./runConductors";

const SAID = /[,\s]*\binsulated(?:\s+throats?)?\b[,\s]*/i;

/** A Fittings cell without the word insulated, and whether it had it. @example splitFittings("compression, insulated").style //=> "compression" */
export const splitFittings = (fittings: string): { readonly style: string; readonly insulated: boolean } => ({
  style: fittings.replace(SAID, " ").trim(),
  insulated: SAID.test(fittings),
});

/** True when the ends of a run take insulated throats or bushings: its conductors ask for them, or its Fittings cell does. */
export const hasThroats = (run: Run): boolean =>
  splitFittings(run.fittings).insulated || needsThroat(runConductors(run));

/** Conductors 4 AWG and larger at boxes and panels. The take-off counts what they take; Fittings says that it is known. */
export function throatsNeeded({ run }: BuiltRun, edition: Edition): Finding[] {
  if (splitFittings(run.fittings).insulated || !needsThroat(runConductors(run))) return [];
  return [
    {
      run: run.name,
      weight: "look",
      rule: nameRule(commonRule("throat", edition)),
      finding: `${run.conductors}: conductors 4 AWG and larger take an insulated throat or bushing at each box and panel; the take-off counts them.`,
      fix: "Write insulated under Fittings when it is seen to. Hubs with a rounded entry of their own need none.",
    },
  ];
}
