import { isUserError } from "../../units/errors";
import type { BuiltRun } from "../run/builtRun";
import { endsOf, groundingBushings } from "./ends";
import type { Finding } from "./finding";
import { readFittingStyle } from "./fittingStyle";

/** Cells about a run's ends that the take-off cannot read: it then leaves the whole run out. */
export function unreadableEnds(built: BuiltRun): Finding[] {
  const { run } = built;
  return [
    () => readFittingStyle(run.fittings, run.raceway),
    () => groundingBushings(run.groundingBushing, endsOf(built).ends),
  ].flatMap((read): Finding[] => {
    try {
      read();
      return [];
    } catch (error) {
      if (!isUserError(error)) throw error;
      return [
        {
          run: run.name,
          weight: "stop",
          rule: "what is counted at a run's ends must be readable",
          finding: error.message,
          fix: "Correct the cell; until then the take-off leaves the run out.",
        },
      ];
    }
  });
}
