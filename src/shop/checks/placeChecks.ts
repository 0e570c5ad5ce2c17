import { nameRule, racewayRule, type Edition } from "../../raceway/code/rules";
import { racewayRecord } from "../../raceway/raceway";
import type { BuiltRun } from "../run/builtRun";
import type { Finding } from "../code/finding";

/** A raceway where the code does not let it be. */
export function wrongPlace({ run }: BuiltRun, edition: Edition): Finding[] {
  const { notIn = [] } = racewayRecord(run.raceway);
  const { place } = run;
  const where = place && notIn.find((each) => each === place.main || (each === "wet" && place.wet));
  if (!where) return [];
  return [
    {
      run: run.name,
      weight: "stop",
      rule: nameRule(racewayRule("uses", run.raceway, edition)),
      finding: `${run.raceway} may not be ${where === "wet" ? "in a wet place" : where}.`,
      fix: "Take another raceway there, or correct Where.",
    },
  ];
}
