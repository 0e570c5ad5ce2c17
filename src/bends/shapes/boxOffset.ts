import type { Degrees } from "../../geometry/angle";
import type { CornerForm } from "./bendForm";
import { offsetShrink } from "./offset";
import { offsetAngle } from "./offsetAngle";

/** First mark of a box offset from the end of the conduit, and second from first: Modern Residential Wiring (2015), p. 91 [in]. */
export const BOX_OFFSET_MARKS = { first: 2, apart: 6 };

/**
 * The small offset that brings a conduit on a surface into a box's knockout: two marks near the end, both bends of the
 * angle that gives the rise.
 *
 * @param rise [in] from the surface's conduit to the knockout
 * @param first [in] and @param second [in] marks from the end of the conduit
 * @returns angle [°] of both bends, and shrink [in]
 * @throws InputError when the marks stand too close for the rise
 * @example boxOffset(0.523, 2, 8).angle //=> 5.0007
 */
export function boxOffset(
  rise: number,
  first: number,
  second: number,
  form: CornerForm = "sharp",
): { angle: Degrees; shrink: number } {
  const angle = offsetAngle(rise, second - first, form);
  return { angle, shrink: offsetShrink(rise, angle, form) };
}
