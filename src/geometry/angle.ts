import { SAME_ANGLE } from "../units/tolerances";
/**
 * Angles: degrees wherever people meet them, radians inside trigonometry only. A plain number is taken for degrees;
 * radians come from {@link toRadians} and the inverse functions here, and nothing else goes into a sine.
 */
export type Degrees = number & { readonly unit?: "degrees" };
export type Radians = number & { readonly unit: "radians" };

export const toRadians = (degrees: Degrees): Radians => ((degrees * Math.PI) / 180) as Radians;

export const toDegrees = (radians: Radians): Degrees => (radians * 180) / Math.PI;

export const sin = (angle: Radians): number => Math.sin(angle);
export const cos = (angle: Radians): number => Math.cos(angle);
export const tan = (angle: Radians): number => Math.tan(angle);
export const asin = (ratio: number): Radians => Math.asin(ratio) as Radians;
export const atan2 = (across: number, along: number): Radians => Math.atan2(across, along) as Radians;

/** The angle that an arc of a length spans on a radius, both in one unit. */
export const arcAngle = (length: number, radius: number): Radians => (length / radius) as Radians;

/** A part or a multiple of an angle. */
export const times = (angle: Radians, factor: number): Radians => (angle * factor) as Radians;
export const plus = (one: Radians, other: Radians): Radians => (one + other) as Radians;

/** Degrees without the last digits, which are rounding: 22.5, not 22.500000000000004. */
export const tidyDegrees = (degrees: Degrees): Degrees => Number(degrees.toFixed(9)) + 0;

/** True when an angle is the wanted one, but for rounding [°]. */
export const isAngle = (angle: Degrees, wanted: Degrees): boolean => Math.abs(angle - wanted) < SAME_ANGLE;

/** A rotation above −180° and at most 180°. */
export function halfTurn(degrees: Degrees): Degrees {
  const turned = ((degrees % 360) + 360) % 360;
  return isAngle(turned, 360) ? 0 : turned > 180 && !isAngle(turned, 180) ? turned - 360 : turned;
}
