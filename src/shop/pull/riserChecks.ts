import { legsOf } from "../../geometry/path";
import { commonRule, nameRule, type Edition } from "../../raceway/code/rules";
import { pullPath } from "../../route/problems";
import { formatLength } from "../../units/length";
import { riserSpacing, riserSupports } from "../../wiring/risers";
import { sizeInWords } from "../../wiring/wireSizes";
import { kindInWords } from "../code/circuits";
import type { Finding } from "../code/finding";
import { runConductors } from "../code/runConductors";
import type { BuiltPull, BuiltRun } from "../run/builtRun";
import type { Run } from "../run/runsTable";
import type { Conductors } from "../../wiring/conductors";

/** Conductors hang in a leg that climbs at least so much of its length: steeper than 30°. Our choice, no source. */
const STEEP = 0.5;

/** Conductors in a vertical raceway that rises more than they may hang without a support. */
export function hangingConductors({ run, pulls }: BuiltRun, edition: Edition): Finding[] {
  const worst = worstHanging(run);
  if (!worst) return [];
  const rise = Math.max(...pulls.map(highestRise));
  const spacing = riserSpacing(worst.size, worst.metal);
  const supports = riserSupports(rise, spacing);
  if (supports === 0) return [];
  const name = worst.type === "bare" ? `bare ${sizeInWords(worst.size)}` : kindInWords(worst);
  return [
    {
      run: run.name,
      weight: "look",
      rule: nameRule(commonRule("riserSupports", edition)),
      finding:
        `its conductors rise ${formatLength(rise)} in one stretch; ${name} may hang ${formatLength(spacing)} at most: ` +
        `${supports === 1 ? "a support at the top" : `${supports} supports, one at the top`}.`,
      fix: 'Plan a wedge support at the top or a box with supports ("box" in the route) where the conductors would hang farther.',
    },
  ];
}

/** The conductor of a run that may hang least; of those of one metal the largest. */
const worstHanging = (run: Run): Conductors | undefined =>
  [...runConductors(run)].sort((a, b) => riserSpacing(a.size, a.metal) - riserSpacing(b.size, b.metal))[0];

/** Supports that the conductors of a run need where they hang: those of the highest rise of each pull, one set for all of them. */
export function hangingSupports({ run, pulls }: BuiltRun): number {
  const worst = worstHanging(run);
  if (!worst) return 0;
  const spacing = riserSpacing(worst.size, worst.metal);
  return pulls.reduce((sum, pull) => sum + riserSupports(highestRise(pull), spacing), 0);
}

/** The most that legs of a pull climb one after the other, up or down [in]. */
function highestRise({ pull }: BuiltPull): number {
  const { directions, legs } = legsOf(pullPath(pull));
  let [rise, most] = [0, 0];
  directions.forEach((direction, leg) => {
    const climb = direction[2];
    const goesOn = Math.abs(climb) >= STEEP && (rise === 0 || Math.sign(rise) === Math.sign(climb));
    if (goesOn) rise += climb * legs[leg]!;
    else rise = Math.abs(climb) >= STEEP ? climb * legs[leg]! : 0;
    most = Math.max(most, Math.abs(rise));
  });
  return most;
}
