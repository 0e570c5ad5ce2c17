/** Degrees at the public edge, radians inside trigonometry. */

export const toRadians = (degrees: number): number => (degrees * Math.PI) / 180;

export const toDegrees = (radians: number): number => (radians * 180) / Math.PI;

/** Angles nearer than this are the same for the choice of a mark or an elbow [°]. */
const SAME_ANGLE = 1e-6;

/** True when an angle is the wanted one, but for rounding [°]. */
export const isAngle = (angle: number, wanted: number): boolean => Math.abs(angle - wanted) < SAME_ANGLE;
