import type { Degrees } from "../../geometry/angle";
import { arcLength } from "../../geometry/arc";
import { heightMade, threeWays, type Comparison } from "./compare";
import { saddleShrink, saddleSpacing } from "../shapes/saddle";

/**
 * A three-bend saddle by the handbook, with sharp corners and with true arcs: where the outer marks go for the arrow,
 * the crest that bends at those marks reach, and how far the center mark moves ahead. The center mark takes the notch.
 *
 * The handbook does not say which way the hook points, and with true arcs it matters: the arrow stands `arrowLead`
 * before the start of its bend, which is the inner end with the hook toward the center, the outer end with it away.
 *
 * @param height [in] that the crest is to clear @param angle [°] of the center bend @param radius [in]
 * @param arrowLead [in] from the arrow to the start of the bend
 */
export function compareSaddle(height: number, angle: Degrees, radius: number, arrowLead: number): Comparison[] {
  const outerEnd = threeWays("", (form) => saddleSpacing(height, angle, form), radius);
  const hooks = [
    { name: "hook toward center", exact: outerEnd.exact - arcLength(angle / 2, radius) - arrowLead },
    { name: "hook away from center", exact: outerEnd.exact + arrowLead },
  ];
  return [
    ...hooks.flatMap(({ name, exact }) => {
      const marks = { ...outerEnd, quantity: `Outer mark, ${name}`, exact };
      return [marks, heightMade(`Crest it makes, ${name}`, height, angle / 2, marks)];
    }),
    threeWays("Center mark ahead", (form) => saddleShrink(height, angle, form), radius),
  ];
}
