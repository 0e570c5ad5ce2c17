import { arcLength, setback } from "../../geometry/arc";
import { legsOf, type PathParts } from "../../geometry/path";
import { dot, subtract } from "../../geometry/vector";
import { pullPath } from "../../route/problems";
import { RouteError } from "../../route/text/routeError";
import type { Pull } from "../../route/text/types";
import { showInches } from "../../units/show";
import { ROUNDING } from "../../units/tolerances";
import type { AskedJoint } from "./builtRun";
import type { CouplingZone } from "./pieceEnds";

/**
 * Where along a pull its unions, couplings and expansion fittings stand, in developed positions.
 *
 * @param zones where couplings may stand
 * @throws RouteError for one in a bend, or too near to one or to an end
 */
export function askedJoints(pull: Pull, parts: PathParts, zones: readonly CouplingZone[]): AskedJoint[] {
  if (pull.joints.length === 0) return [];
  const { directions } = legsOf(pullPath(pull));
  return pull.joints.map(({ point, fitting, step }): AskedJoint => {
    let from = 0;
    for (const [index, straight] of parts.straights.entries()) {
      const [before, after] = [parts.bends[index - 1], parts.bends[index]];
      const along = dot(subtract(point, pull.points[index]!), directions[index]!);
      const start = before ? setback(before.angle, before.radius) : 0;
      const isHere =
        along >= start - ROUNDING && along <= start + straight + ROUNDING && isOn(pull, index, along, point);
      if (isHere) {
        const at = from + along - start;
        if (zones.some((zone) => at >= zone.from - ROUNDING && at <= zone.to + ROUNDING)) return { at, fitting, step };
        break;
      }
      from += straight + (after ? arcLength(after.angle, after.radius) : 0);
    }
    throw new RouteError(
      step,
      `${fitting === "expansion" ? "an" : "a"} ${fitting} stands on straight conduit, far enough from bends and ends for its fitting; ` +
        `move it along the leg${nearest(zones)}.`,
    );
  });

  function nearest(free: readonly CouplingZone[]): string {
    const ways = free.map(({ from, to }) => `${showInches(from, 2)} to ${showInches(to, 2)}`);
    return ways.length === 0 ? "" : ` (along the conduit of its pull, from ${ways.join(", or ")})`;
  }
}

/** True when a point lies on the line of a leg. */
function isOn({ points }: Pull, leg: number, along: number, point: Pull["points"][number]): boolean {
  const [from, to] = [points[leg]!, points[leg + 1]!];
  const way = subtract(to, from);
  const length = Math.sqrt(dot(way, way));
  return [0, 1, 2].every((axis) => Math.abs(from[axis]! + (way[axis]! / length) * along - point[axis]!) < ROUNDING);
}
