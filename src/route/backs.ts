import { dot } from "../geometry/vector";
import type { ShowLength } from "../units/formatLength";
import { directionVector } from "./directions";
import { keepWords, lengthsAsIn, wordsOf } from "./text/ownWords";
import { RouteError, stepError } from "./text/routeError";
import type { LegStep, RouteStep } from "./text/types";

/**
 * The steps with every leg that was measured to the back of its 90° bends (a stub-up, a back-to-back) told from corner
 * to corner instead: half the outside diameter shorter for each such bend. Derived: the back of a 90 lies half a
 * diameter beyond the centerline of the leg that follows.
 *
 * @throws InputError where the leg does not end at a 90 between two of the six directions
 */
export function centerlineLegs(
  steps: readonly RouteStep[],
  outsideDiameter: number | undefined,
  show: ShowLength,
): RouteStep[] {
  return steps.map((step, index) => {
    if (step.kind !== "leg" || !step.back) return step;
    const bends = backsOf(step, index + 1, steps[index - 1], steps[index + 1]);
    if (outsideDiameter === undefined) {
      throw new RouteError(index + 1, `a length to the back of a bend needs the conduit's outside diameter.`);
    }
    const length = step.length - (bends * outsideDiameter) / 2;
    if (length > 0) return keepWords({ kind: "leg", direction: step.direction, length }, wordsOf(step));
    throw stepError(
      index + 1,
      wordsOf(step),
      `a length above ${lengthsAsIn(steps, show)((bends * outsideDiameter) / 2)}`,
    );
  });
}

/** How many of a leg's ends are a 90: one or two. */
function backsOf(leg: LegStep, number: number, before?: RouteStep, after?: RouteStep): number {
  const squares = [before, after].map((neighbor) => {
    if (neighbor === undefined || neighbor.kind === "box") return 0;
    if (neighbor.kind === "leg" && square(leg, neighbor)) return 1;
    return NaN;
  });
  const count = squares[0]! + squares[1]!;
  if (count > 0) return count;
  throw stepError(number, wordsOf(leg), "only plain legs square to it before and after, since it is measured to a 90");
}

const square = (a: LegStep, b: LegStep): boolean =>
  dot(directionVector(a.direction), directionVector(b.direction)) === 0;
