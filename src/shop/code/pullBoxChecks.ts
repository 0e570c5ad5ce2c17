import { SAME_DIRECTION } from "../../units/tolerances";
import { legsOf } from "../../geometry/path";
import { dot } from "../../geometry/vector";
import { pullBoxDimension } from "../../raceway/code/pullBox";
import { commonRule, nameRule, type Edition } from "../../raceway/code/rules";
import { pullPath } from "../../route/problems";
import { needsThroat } from "../../wiring/roles";
import type { BuiltPull, BuiltRun } from "../run/builtRun";
import { bodyOf } from "../run/pullEnds";
import type { Finding } from "./finding";
import { runConductors } from "./runConductors";

/** Boxes along a run whose conductors are 4 AWG or larger: how large each must be, by how the conduit goes on from it. */
export function pullBoxSizes({ run, pulls, lengths }: BuiltRun, edition: Edition): Finding[] {
  if (pulls.length < 2 || !needsThroat(runConductors(run))) return [];
  let boxes = 0;
  return pulls.slice(1).flatMap((after, index): Finding[] => {
    const { end, whip } = pulls[index]!.pull;
    if (whip) return [];
    const name = bodyOf(end) ?? `box ${(boxes += 1)}`;
    const turn = turnBetween(pulls[index]!, after);
    const size = (rows: readonly (typeof run.size)[]) =>
      lengths.show(pullBoxDimension([rows], turn === "straight" ? "straight" : "angle"));
    const words = {
      straight: () => `a straight pull: at least ${size([run.size])} long`,
      angle: () =>
        `an angle pull: at least ${size([run.size])} from each entry to the wall across and between the entries`,
      U: () => `a U pull: at least ${size([run.size, run.size])} from the wall of the entries to the one across`,
    }[turn]();
    return [
      {
        run: run.name,
        weight: "look",
        rule: nameRule(commonRule(turn === "straight" ? "straightPull" : "anglePull", edition)),
        finding: `${name} of ${run.raceway} ${run.size}, ${words}.`,
        fix: "Smaller ones only where the box or body is listed for these conductors, or an entry faces a removable cover (PULLBOX).",
      },
    ];
  });
}

function turnBetween(before: BuiltPull, after: BuiltPull): "straight" | "angle" | "U" {
  const [last, first] = [legsOf(pullPath(before.pull)).directions.at(-1), legsOf(pullPath(after.pull)).directions[0]];
  const along = last && first ? dot(last, first) : 1;
  if (along > 1 - SAME_DIRECTION) return "straight";
  return along < SAME_DIRECTION - 1 ? "U" : "angle";
}
