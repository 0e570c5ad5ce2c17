import type { Degrees } from "../../geometry/angle";

/**
 * Radius on the centerline after the conduit is let go.
 *
 * Derived: unloading keeps the arc's length and opens its angle, `Rt·(A + sb) = R·A`.
 *
 * @param toolRadius [in] while held in the shoe @param angle [°] finished @param springback [°]
 * @returns finished radius [in]
 * @example releasedRadius(4, 90, 5) //=> 4.2222
 */
export const releasedRadius = (toolRadius: number, angle: Degrees, springback: Degrees): number =>
  (toolRadius * (angle + springback)) / angle;

/**
 * Radius on the centerline while the conduit is held in the shoe: the inverse of the released radius.
 *
 * @param radius [in] finished @param angle [°] finished @param springback [°]
 * @example heldRadius(4, 90, 5) //=> 3.7895
 */
export const heldRadius = (radius: number, angle: Degrees, springback: Degrees): number =>
  (radius * angle) / (angle + springback);
