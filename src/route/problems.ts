import { pathParts, type Path } from "../geometry/path";
import { showInches } from "../units/show";
import type { Pull, RouteCorner } from "./types";

/** A leg may miss its setbacks by this much, for rounding [in]. */
const ROUNDING = 1e-6;

/** The centerline of a pull. */
export const pullPath = ({ points, corners }: Pull): Path => ({ points, radii: corners.map(({ radius }) => radius) });

/**
 * What keeps a pull from being bent: one sentence for each leg that is shorter than the setbacks of the bends at its
 * ends, with its steps and how much is missing. Empty when all legs are long enough.
 *
 * @example pathProblems(resolveRoute(readRoute("up 3, east 40"), 4).pulls[0])
 * //=> ["step 2: the leg before the bend is 3 in. long, but its bends need 4 in. for their setbacks: 1 in. short."]
 */
export function pathProblems(pull: Pull): string[] {
  const { legs, straights } = pathParts(pullPath(pull));
  return straights.flatMap((straight, index) => {
    if (straight >= -ROUNDING) return [];
    const leg = legs[index]!;
    return [
      `${whichLeg(pull.corners[index - 1], pull.corners[index])} is ${showInches(leg)} long, but its bends need ` +
        `${showInches(leg - straight)} for their setbacks: ${showInches(-straight)} short.`,
    ];
  });
}

function whichLeg(before: RouteCorner | undefined, after: RouteCorner | undefined): string {
  if (before && after && before.group === after.group) {
    return `step ${before.step}: the leg between bends ${before.place} and ${after.place} of the ${before.kind}`;
  }
  if (before && after) {
    return `steps ${before.step} and ${after.step}: the leg from the ${before.kind} to the ${after.kind}`;
  }
  if (after) return `step ${after.step}: the leg before the ${after.kind}`;
  return `step ${before!.step}: the leg after the ${before!.kind}`;
}
