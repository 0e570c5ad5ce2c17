import type { BuiltRun } from "../../shop/run/builtRun";
import { movements } from "../../shop/code/movements";
import { runBodies, runWhips } from "../../shop/run/pullEnds";
import type { RuleBook } from "../../rules/rules";
import type { Whip } from "../../route/text/types";
import { someOf, type Amount } from "./amount";
import { sizedItem, type OfSize } from "./item";

/** Conduit bodies, unions, expansion fittings and flexible pieces that the route of a run has. */
export function routeFittings(built: BuiltRun): Amount[] {
  const { run } = built;
  const asked = built.pulls.flatMap((pull) => pull.asked.map(({ fitting }) => fitting));
  const count = (fitting: string) => asked.filter((each) => each === fitting).length;
  return [
    ...runBodies(built).map((body) => ({ item: sizedItem(run, "body", `${body} body`), each: 1 })),
    ...someOf([
      { item: sizedItem(run, "union"), each: count("union") },
      { item: sizedItem(run, "expansion fitting"), each: count("expansion") },
    ]),
    ...runWhips(built).flatMap((whip) => whipAmounts(built, whip)),
  ];
}

/**
 * A flexible piece: its feet, a connector at each box, and where it joins the run's own conduit a fitting that takes both.
 * Common practice, no source.
 */
function whipAmounts({ run, pulls }: BuiltRun, whip: Whip): Amount[] {
  const { flex, length } = whip;
  const of: OfSize = { raceway: flex, size: run.size };
  const place = pulls.findIndex(({ pull }) => pull.whip === whip);
  const joined = (pulls[place]!.pull.end === "box" ? 0 : 1) + (whip.toBox || place === pulls.length - 1 ? 0 : 1);
  const style = flex === "FMC" ? "flex" : "liquidtight";
  return [
    { item: sizedItem(of, "conduit"), each: length / 12 },
    ...someOf([
      { item: sizedItem(of, "connector", `${style} connector`), each: 2 - joined },
      { item: sizedItem(run, "coupling", `to ${flex} coupling`), each: joined },
    ]),
  ];
}

/** Joints that a union or an expansion fitting makes, not a coupling. */
export const notCoupled = ({ pulls }: BuiltRun): number =>
  pulls.reduce((sum, { asked }) => sum + asked.filter(({ fitting }) => fitting !== "coupling").length, 0);

/** Expansion fittings of a run, in the straight stretches that take them. */
export function expansionAmounts(built: BuiltRun, rules: RuleBook): Amount[] {
  const fittings = movements(built, rules).reduce((sum, movement) => sum + movement.fittings, 0);
  return someOf([{ item: sizedItem(built.run, "expansion fitting"), each: fittings }]);
}
