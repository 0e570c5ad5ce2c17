import { asin, cos, sin, toDegrees, toRadians, type Degrees, arcAngle } from "../../geometry/angle";
import { arcLength } from "../../geometry/arc";
import { InputError } from "../../units/errors";
import { showApart, showDegrees, showInches } from "../../units/show";
import { cornerRadius, type BendForm, type CornerForm } from "./bendForm";
import { offsetMultiplier } from "./offset";
import { printed } from "./printedConstants";
import { falling } from "./solve";

/*
 * A kick is one bend of less than a right angle. Derived, for a bend that starts `length` before the conduit's end:
 * the arc rises `R·(1 − cos A)`, what is left of the length rises by its sine.
 */

const arcRise = (angle: Degrees, radius: number): number => radius * (1 - cos(toRadians(angle)));

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
export function kickRise(length: number, angle: Degrees, form: BendForm = "sharp"): number {
  if (form === "table") return length / printed("multiplier", angle);
  const radius = cornerRadius(form);
  const arc = arcLength(angle, radius);
  if (length < arc) {
    const [limit, got] = showApart(arc, length);
    throw new InputError(
      `length must be at least ${limit} in., the arc of ${showDegrees(angle)} at radius ${showInches(radius)}; ` +
        `got ${got} in.`,
    );
  }
  return endRise(length, angle, radius);
}

const endRise = (length: number, angle: Degrees, radius: number): number =>
  arcRise(angle, radius) + (length - arcLength(angle, radius)) * sin(toRadians(angle));

/**
 * How far from the end a kick starts so that it moves the end aside by `rise`: the inverse of the rise.
 *
 * @returns length [in] from the start of the bend to the end, along the conduit
 * @throws InputError when the arc alone rises more; NotListedError when the multiplier is not in print
 * @example kickLength(12, 30) //=> 24
 */
export function kickLength(rise: number, angle: Degrees, form: BendForm = "sharp"): number {
  if (form === "table") return rise * printed("multiplier", angle);
  const radius = cornerRadius(form);
  const least = arcRise(angle, radius);
  if (rise < least) {
    const [limit, got] = showApart(least, rise);
    throw new InputError(
      `rise must be at least ${limit} in., which the arc of ${showDegrees(angle)} at radius ` +
        `${showInches(radius)} alone rises; got ${got} in.`,
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
export function kickAngle(length: number, rise: number, form: CornerForm = "sharp"): number {
  const radius = cornerRadius(form);
  const steepest = radius === 0 ? 90 : Math.min(90, toDegrees(arcAngle(length, radius)));
  const most = endRise(length, steepest, radius);
  if (rise > most) {
    const [limit, got] = showApart(most, rise);
    throw new InputError(`rise must be at most ${limit} in. for a length of ${showInches(length)}; got ${got} in.`);
  }
  if (radius === 0) return toDegrees(asin(rise / length));
  return falling((angle) => -endRise(length, angle, radius), -rise, steepest);
}
