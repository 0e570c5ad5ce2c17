import type { BuiltRun } from "../run/builtRun";
import { runBodies } from "../run/pullEnds";
import type { Finding } from "../code/finding";

/** Conduit bodies whose take-out nobody has written: cut lengths beside them are as long as their legs. */
export function takeOutsUnknown(built: BuiltRun): Finding[] {
  const { run, fittings } = built;
  const bodies = runBodies(built);
  if (bodies.length === 0 || fittings.takeOut.body !== 0) return [];
  return [
    {
      run: run.name,
      weight: "look",
      rule: "a body takes its length out of the conduit beside it (rule Take-out at a body)",
      finding: `${bodies.join(", ")}: the take-out of bodies of ${run.raceway} ${run.size} is counted as 0; conduit beside them is cut too long by it.`,
      fix: `Measure yours and write it in the rule Take-out at a body, as in ${run.raceway} ${run.size}: 1-1/2.`,
    },
  ];
}
