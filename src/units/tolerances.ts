/**
 * The tolerances of the trade code, each with its unit. Exact arithmetic is held to the first ones, so that a value is not
 * refused for its last digit; what a tape, a saw or a dial can tell apart is held to the others. The solver of the cutting
 * plans works in whole numbers and has its own, beside its simplex.
 */

/** Places nearer than this are one place; less than this is nothing [in]. */
export const SAME_PLACE = 1e-9;
/** Directions [rad] nearer than this are one direction. */
export const SAME_DIRECTION = 1e-9;
/** Directions [rad] nearer than this to parallel or square are taken for it: what a route's words mean. */
export const NEAR_DIRECTION = 1e-6;
/** A count or a share is not one more by this [1]. */
export const SAME_COUNT = 1e-9;
/** A length [in] or an angle [°] may pass its limit by this. */
export const ROUNDING = 1e-6;
/** Angles nearer than this are one angle for a mark, an elbow or a printed constant [°]. */
export const SAME_ANGLE = 1e-6;

/** Straight conduit no longer than this beside an elbow is none [in]: the saw's nearest sixteenth is nothing. */
export const NO_CONDUIT = 1 / 32;
/** A piece this near to its stick is the whole stick [in]: less than half a sixteenth. */
export const WHOLE_STICK = 1 / 64;
/** Lengths this near are the same for a piece that is put up [in], and so are angles [°]. Our choice, no source. */
export const PUT_UP_LENGTH = 1 / 16;
export const PUT_UP_ANGLE = 0.25;
