import { cos, tan, toRadians, type Degrees } from "./angle";

/**
 * The three lengths of a bend on its centerline. Derived: the corner, the two tangent points and the center of the arc
 * make two right triangles with the half angle at the center.
 */

/** Setback, or tangent length [in]: from the corner to where the arc begins. `R·tan(A/2)` for an angle `A` [°]. */
export const setback = (angle: Degrees, radius: number): number => radius * tan(toRadians(angle / 2));

/** Length of the arc [in]: `R·A`. */
export const arcLength = (angle: Degrees, radius: number): number => radius * toRadians(angle);

/** Gain [in]: what the arc saves against going round by the corner, `2·R·tan(A/2) − R·A`. */
export const gain = (angle: Degrees, radius: number): number => 2 * setback(angle, radius) - arcLength(angle, radius);

/** Corner stands off its arc [in]: from the corner to the middle of the arc, `R·(1/cos(A/2) − 1)`. */
export const cornerHeight = (angle: Degrees, radius: number): number => radius * (1 / cos(toRadians(angle / 2)) - 1);
