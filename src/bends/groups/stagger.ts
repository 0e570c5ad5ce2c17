import { tan, toRadians, type Degrees } from "../../geometry/angle";

/**
 * How far the marks of side-by-side conduits are shifted, one to the next, so that equal bends stay evenly spaced.
 *
 * Derived: the corners lie on the line that halves the bend, which leaves the conduit at `90° − A/2`.
 *
 * @param spacing [in] center to center @param angle [°]
 * @returns [in] `spacing·tan(A/2)`
 * @example stagger(4, 30) //=> 1.0718
 */
export const stagger = (spacing: number, angle: Degrees): number => spacing * tan(toRadians(angle / 2));
