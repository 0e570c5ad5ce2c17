import { tan, toRadians, type Degrees } from "../../geometry/angle";
import { gain } from "../../geometry/arc";
import type { Lengths } from "../../units/formatLength";
import { lengthsOf } from "../../rules/lengthsRule";
import { builtRows, type Job } from "../job/job";
import { runBends } from "../run/runTotals";
import { measuredWords } from "../shoe/measured";
import type { Shoe } from "../shoe/shoe";
import type { Finding } from "../code/finding";

/** Every shoe that bends a run of the job and was never measured, with what that does to the marks. */
export function unmeasuredShoes(job: Job): Finding[] {
  const bending = builtRows(job).filter(({ built }) => runBends(built) > 0);
  const shoes = new Map(bending.map(({ built: { shoe } }) => [`${shoe.raceway} ${shoe.size}`, shoe]));
  return [...shoes].flatMap(([name, shoe]) =>
    shoe.measured === undefined ? [unmeasured(name, shoe, lengthsOf(job.rules))] : [],
  );
}

const unmeasured = (name: string, shoe: Shoe, { show }: Lengths): Finding => ({
  run: "Shoes",
  weight: "look",
  rule: "a shoe is measured before its marks are trusted (common practice)",
  finding:
    `${name} is ${measuredWords(shoe)}: radius ${show(shoe.radius)}, deduct ${show(shoe.deduct)} (${shoe.source}). ` +
    `For each inch the radius is larger at the same deduct, a stub-up's mark stays, its conduit is cut ` +
    `${show(gain(90, 1), 2)} too long, and the arrow's mark of a 30 lies ${show(markPerInch(30), 2)}, of a 45 ` +
    `${show(markPerInch(45), 2)} too near the hooked end.`,
  fix: "Bend one test 90 and keep it (The shoe in the pane, or SHOE.CALIBRATE); write the date and ± under Measured in Shoes.",
});

/**
 * What an inch of radius does to the arrow's mark [in/in].
 *
 * Derived: the mark stands at `corner − R·tan(A/2) − (deduct − R − OD/2)` from the hooked end.
 */
const markPerInch = (angle: Degrees): number => 1 - tan(toRadians(angle / 2));
