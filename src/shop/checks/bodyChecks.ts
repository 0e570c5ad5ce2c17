import type { BuiltRun } from "../run/builtRun";
import { ruleOfBody } from "../../rules/bodyTakeOuts";
import { runBodies } from "../run/pullEnds";
import type { Finding } from "../code/finding";

/** Conduit bodies whose take-out nobody has written: cut lengths beside them are as long as their legs. */
export function takeOutsUnknown(built: BuiltRun): Finding[] {
  const { run, fittings } = built;
  if (fittings.takeOut.body !== 0) return [];
  const unmeasured = [...new Set(runBodies(built))].filter((body) => !fittings.bodies[body]);
  return unmeasured.map((body) => ({
    run: run.name,
    weight: "look",
    rule: "a body takes its length out of the conduit beside it (rule Take-out at a body)",
    finding: `${body}: the take-out of bodies of ${run.raceway} ${run.size} is counted as 0; conduit beside them is cut too long by it.`,
    fix:
      `Measure yours and write a row in Rules: ${ruleOfBody({ body, raceway: run.raceway, size: run.size })}, with its length, ` +
      "or two, as in 1-1/2, 2-1/4: where the run comes in and where it goes on.",
  }));
}
