import { showDegrees } from "../../units/show";
import { racewayRecord } from "../../raceway/raceway";
import type { BuiltRun } from "../run/builtRun";
import type { Finding } from "../code/finding";

/** A run of a size no shoe is listed for: its bends are counted as factory elbows, and this says how to change it. */
export function noShoeListed(built: BuiltRun): Finding[] {
  const { run, unlisted, pulls } = built;
  // An elbow that the route asks for is meant.
  const elbows = pulls.flatMap((pull) => pull.elbows).filter(({ corner }) => corner.elbow === undefined).length;
  if (!unlisted || elbows === 0) return [];
  const size = `${run.raceway} ${run.size}`;
  const rule = `Factory elbows above size, ${racewayRecord(run.raceway).elbows === "PVC" ? "PVC" : "metal"}`;
  const odd = unlisted.map((angle) => showDegrees(angle)).join(", ");
  const isUsual = racewayRecord(run.raceway).elbows === "PVC" && unlisted.length === 0;
  if (isUsual) return [];
  return [
    {
      run: run.name,
      weight: unlisted.length > 0 ? "stop" : "look",
      rule: `no shoe: bends are bought (rule "${rule}")`,
      finding:
        `no shoe is listed for ${size}: its ${elbows === 1 ? "bend is" : `${elbows} bends are`} counted as factory ` +
        `elbows${odd === "" ? "" : `, though there is none of ${odd}`}.`,
      fix:
        `To bend it in the shop, give ${size} a row in Shoes.` +
        (odd === "" ? "" : " Else use angles that elbows are made in, or name yours in the rule Factory elbow angles."),
    },
  ];
}
