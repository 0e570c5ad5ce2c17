import { sin, toRadians, type Degrees } from "../../geometry/angle";
import { toAngle } from "../../units/angle";
import { cornerRadius, type BendForm } from "./bendForm";
import { offsetShape } from "./offsetShape";
import { printed } from "./printedConstants";

/** Reads the angle of an offset's or a kick's bends [°]: past a right angle the conduit would run back. */
export const readOffsetAngle = (value: unknown, argument = "angle"): number =>
  toAngle(value, argument, { above: 0, max: 90 });

/**
 * What the rise is multiplied by for the spacing of an offset's marks: the cosecant of the angle, unrounded, or the
 * printed constant.
 *
 * @param angle [°] above 0 to 90
 * @throws NotListedError when the multiplier is not in print
 * @example offsetMultiplier(30) //=> 2
 */
export const offsetMultiplier = (angle: Degrees, form: "sharp" | "table" = "sharp"): number =>
  form === "table" ? printed("multiplier", angle) : 1 / sin(toRadians(angle));

/**
 * Distance between the two marks of an offset, for bends lined up the same way.
 *
 * @param rise [in] @param angle [°] of each bend
 * @param form radius for true arcs, sharp corners, or the printed multiplier
 * @returns [in] `rise / sin A − g`, with `g` the gain of one bend
 * @throws InputError when the bends overlap; NotListedError when the multiplier is not in print
 * @example offsetSpacing(6, 30, 4) //=> 11.9508
 */
export function offsetSpacing(rise: number, angle: Degrees, form: BendForm = "sharp"): number {
  if (form === "table") return rise * printed("multiplier", angle);
  return offsetShape(rise, angle, cornerRadius(form)).spacing;
}

/**
 * By how much an offset shortens the conduit's reach.
 *
 * @param rise [in] @param angle [°] of each bend
 * @param form radius for true arcs, sharp corners, or the printed shrink per inch
 * @returns [in] `rise·tan(A/2) − 2g`, with `g` the gain of one bend
 * @throws InputError when the bends overlap; NotListedError when the shrink is not in print
 * @example offsetShrink(6, 30, 4) //=> 1.5093
 */
export function offsetShrink(rise: number, angle: Degrees, form: BendForm = "sharp"): number {
  if (form === "table") return rise * printed("shrink", angle);
  return offsetShape(rise, angle, cornerRadius(form)).shrink;
}
