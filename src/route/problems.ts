import { ROUNDING } from "../units/tolerances";
import { pathParts, type Path } from "../geometry/path";
import { AS_WRITTEN, type ShowLength } from "../units/formatLength";
import { RouteError } from "./text/routeError";
import type { Pull, RouteCorner } from "./text/types";

/** The centerline of a pull. */
export const pullPath = ({ points, corners }: Pull): Path => ({ points, radii: corners.map(({ radius }) => radius) });

/**
 * What keeps a pull from being bent: one error for each leg that is shorter than the setbacks of the bends at its
 * ends, with its steps and how much is missing. Empty when all legs are long enough.
 *
 * @example pathProblems(resolveRoute(readRoute("up 3, east 40"), 4).pulls[0]).map(({ message }) => message)
 * //=> ["step 2: the leg before the bend is 3 in. long, but its bends need 4 in. for their setbacks: 1 in. short."]
 */
export function pathProblems(pull: Pull, showLength: ShowLength = AS_WRITTEN.show): RouteError[] {
  const { legs, straights } = pathParts(pullPath(pull));
  return straights.flatMap((straight, index) => {
    if (straight >= -ROUNDING) return [];
    const leg = legs[index]!;
    const [before, after] = [pull.corners[index - 1], pull.corners[index]];
    const words =
      `${whichLeg(before, after)} is ${showLength(leg)} long, but its bends need ` +
      `${showLength(leg - straight)} for their setbacks: ${showLength(-straight)} short.`;
    const step = (before ?? after)!.step;
    const both = before && after && before.group !== after.group;
    return [
      both ? new RouteError(step, words, `steps ${step} and ${after.step}: ${words}`) : new RouteError(step, words),
    ];
  });
}

function whichLeg(before: RouteCorner | undefined, after: RouteCorner | undefined): string {
  if (before && after && before.group === after.group) {
    return `the leg between bends ${before.place} and ${after.place} of the ${before.kind}`;
  }
  if (before && after) return `the leg from the ${before.kind} to the ${after.kind}`;
  return after ? `the leg before the ${after.kind}` : `the leg after the ${before!.kind}`;
}

/** @throws RouteError that tells every leg too short for its bends, at the step of the first */
export function refuseShortLegs(pulls: readonly Pull[], showLength?: ShowLength): void {
  const [first, ...rest] = pulls.flatMap((pull) => pathProblems(pull, showLength));
  if (!first) return;
  const more = rest.map(({ message }) => ` ${message}`).join("");
  throw new RouteError(first.step, first.words + more, first.message + more);
}
