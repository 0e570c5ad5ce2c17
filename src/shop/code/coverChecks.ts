import { commonRule, nameRule, type Edition } from "../../raceway/code/rules";
import { ROUNDING } from "../../units/tolerances";
import { racewayCover } from "../../wiring/cover";
import type { BuiltRun } from "../run/builtRun";
import type { Finding } from "./finding";

/** Cover of a buried run against the least that the code allows. */
export function tooShallow({ run, lengths: { show } }: BuiltRun, edition: Edition): Finding[] {
  const under = run.place?.under;
  if (under === undefined) return [];
  const least = racewayCover(under, run.raceway);
  if (run.cover === undefined ? least === 0 : run.cover >= least - ROUNDING) return [];
  const where = under === "general" ? "buried" : `buried, ${under}`;
  const common = { run: run.name, rule: nameRule(commonRule("cover", edition)) };
  const needed = `${run.raceway} needs at least ${show(least)} of cover`;
  if (run.cover === undefined) {
    return [
      {
        ...common,
        weight: "look",
        finding: `${where}: ${needed}, from its top to grade.`,
        fix: "Write the planned depth of cover under Cover; under Where, what is over it: a road, a slab, a driveway.",
      },
    ];
  }
  return [
    {
      ...common,
      weight: "stop",
      finding: `${where}: ${show(run.cover)} of cover are planned; ${needed}.`,
      fix: "Bury it deeper, use a metal raceway where the code lets it lie higher, or put concrete over it and say so under Where.",
    },
  ];
}
