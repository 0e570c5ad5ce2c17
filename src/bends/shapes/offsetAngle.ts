import { asin, toDegrees } from "../../geometry/angle";
import { InputError, NotListedError } from "../../units/errors";
import { show, showApart, showInches } from "../../units/show";
import { cornerRadius, type BendForm } from "./bendForm";
import { offsetSpacing } from "./offset";
import { printedColumn } from "./printedConstants";
import { falling } from "./solve";

/** Printed multipliers are rounded to a tenth or a hundredth: nearer than this is the same one. */
const SAME_MULTIPLIER = 1e-6;

/**
 * Angle of the two bends of an offset whose marks stand `spacing` apart: the inverse of the spacing.
 *
 * Spacing falls steadily as the angle grows, from the touching arcs' or the right angle's least spacing on, so there is
 * one answer; with true arcs it is found by halving.
 *
 * @param rise [in] @param spacing [in] between the marks
 * @returns angle [°] above 0 to 90
 * @throws InputError when the spacing is too short for the rise; NotListedError when no printed multiplier gives it
 * @example offsetAngle(6, 12) //=> 30
 */
export function offsetAngle(rise: number, spacing: number, form: BendForm = "sharp"): number {
  if (form === "table") return printedAngle(rise, spacing);
  const radius = cornerRadius(form);
  const steepest = steepestAngle(rise, radius);
  const least = offsetSpacing(rise, steepest, form);
  if (spacing < least) {
    const [limit, got] = showApart(least, spacing);
    throw new InputError(`spacing must be at least ${limit} in. for a rise of ${showInches(rise)}; got ${got} in.`);
  }
  if (radius === 0) return toDegrees(asin(rise / spacing));
  return falling((angle) => offsetSpacing(rise, angle, form), spacing, steepest);
}

/** Steepest offset [°]: a right angle, or the angle at which the two arcs touch, `rise = 2R·(1 − cos A)`. */
const steepestAngle = (rise: number, radius: number): number =>
  rise >= 2 * radius ? 90 : 2 * toDegrees(asin(Math.sqrt(rise / (4 * radius))));

function printedAngle(rise: number, spacing: number): number {
  const rows = printedColumn("multiplier");
  const row = rows.find(({ value }) => Math.abs(value - spacing / rise) < SAME_MULTIPLIER);
  if (row) return row.angle;
  throw new NotListedError(
    `No printed multiplier is ${show(spacing / rise)} (spacing over rise); in print are ` +
      `${rows.map(({ angle, value }) => `${show(value)} at ${show(angle)}°`).join(", ")}. ` +
      `Leave radius out for sharp corners, or give the shoe's radius.`,
  );
}
