import type { Degrees } from "../../geometry/angle";
import { arcLength, setback } from "../../geometry/arc";

/**
 * What a bend saves of conduit against the lengths measured to its corner, on the centerline; with an outside diameter,
 * against the lengths measured to its back.
 *
 * Derived: two setbacks at the radius measured to, less the arc of the centerline.
 *
 * @param angle [°] @param radius [in] on the centerline @param outsideDiameter [in]
 * @returns [in] `2(R + OD/2)·tan(A/2) − R·A`
 * @example bendGain(90, 4) //=> 1.7168
 */
export const bendGain = (angle: Degrees, radius: number, outsideDiameter = 0): number =>
  2 * setback(angle, radius + outsideDiameter / 2) - arcLength(angle, radius);
