import { toDegrees, toRadians } from "../geometry/angle";
import { arcLength, gain, setback } from "../geometry/arc";
import { InputError } from "../units/errors";
import { show, showDegrees, showInches } from "../units/show";
import { cornerRadius, type BendForm } from "./bendForm";
import { offsetMultiplier } from "./offset";
import { printed } from "./printedConstants";
import { falling } from "./solve";

/*
 * A kick is one bend of less than a right angle. Derived, for a bend that starts `length` before the conduit's end:
 * the arc rises `R·(1 − cos A)`, what is left of the length rises by its sine.
 */

const arcRise = (angle: number, radius: number): number => radius * (1 - Math.cos(toRadians(angle)));

/**
 * How far a kick moves the end of the conduit aside.
 *
 * @param length [in] from the start of the bend to the end, along the conduit
 * @param angle [°] above 0 to 90
 * @param form radius for true arcs, sharp corners, or the printed multiplier (length over multiplier)
 * @returns rise [in]
 * @throws InputError when the arc is longer than the length; NotListedError when the multiplier is not in print
 * @example kickRise(24, 30) //=> 12
 */
export function kickRise(length: number, angle: number, form: BendForm = "sharp"): number {
  if (form === "table") return length / printed("multiplier", angle);
  const radius = cornerRadius(form);
  const arc = arcLength(angle, radius);
  if (length < arc) {
    throw new InputError(
      `length must be at least ${showInches(arc)}, the arc of ${showDegrees(angle)} at radius ${showInches(radius)}; ` +
        `got ${show(length)} in.`,
    );
  }
  return arcRise(angle, radius) + (length - arc) * Math.sin(toRadians(angle));
}

/**
 * How far from the end a kick starts so that it moves the end aside by `rise`: the inverse of the rise.
 *
 * @returns length [in] from the start of the bend to the end, along the conduit
 * @throws InputError when the arc alone rises more; NotListedError when the multiplier is not in print
 * @example kickLength(12, 30) //=> 24
 */
export function kickLength(rise: number, angle: number, form: BendForm = "sharp"): number {
  if (form === "table") return rise * printed("multiplier", angle);
  const radius = cornerRadius(form);
  const least = arcRise(angle, radius);
  if (rise < least) {
    throw new InputError(
      `rise must be at least ${showInches(least)}, which the arc of ${showDegrees(angle)} at radius ` +
        `${showInches(radius)} alone rises; got ${show(rise)} in.`,
    );
  }
  return arcLength(angle, radius) + (rise - least) * offsetMultiplier(angle);
}

/**
 * Angle of the kick that starts `length` before the end and moves it aside by `rise`: the inverse of the rise.
 *
 * @returns angle [°] above 0 to 90
 * @throws InputError when no angle up to 90° reaches the rise
 * @example kickAngle(24, 12) //=> 30
 */
export function kickAngle(length: number, rise: number, form: Exclude<BendForm, "table"> = "sharp"): number {
  const radius = cornerRadius(form);
  const steepest = radius === 0 ? 90 : Math.min(90, toDegrees(length / radius) * (1 - 1e-15));
  const most = kickRise(length, steepest, form);
  if (rise > most) {
    throw new InputError(
      `rise must be at most ${showInches(most)} for a length of ${showInches(length)}; got ${show(rise)} in.`,
    );
  }
  if (radius === 0) return toDegrees(Math.asin(rise / length));
  return falling((angle) => -kickRise(length, angle, form), -rise, steepest);
}

/**
 * How far from the back of a finished 90 to start a kick that moves the 90 aside by `rise`.
 *
 * The rise is that of the stub's centerline, the tape is hooked over the back of the 90 and runs along the kicked leg.
 * Derived: `rise / sin A + T − g + OD/2`, with setback `T` and gain `g` of the kick. Handbook and sharp corners leave
 * out `T` and `g`.
 *
 * @param outsideDiameter [in] of the conduit
 * @returns [in]
 * @example kickNinety(6, 30, 0.706) //=> 12.353
 */
export function kickNinety(rise: number, angle: number, outsideDiameter: number, form: BendForm = "sharp"): number {
  if (form === "table") return rise * printed("multiplier", angle) + outsideDiameter / 2;
  const radius = cornerRadius(form);
  return rise * offsetMultiplier(angle) + setback(angle, radius) - gain(angle, radius) + outsideDiameter / 2;
}
