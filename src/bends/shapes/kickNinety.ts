import type { Degrees } from "../../geometry/angle";
import { gain, setback } from "../../geometry/arc";
import { InputError } from "../../units/errors";
import { showApart, showDegrees, showInches } from "../../units/show";
import { cornerRadius, type BendForm } from "./bendForm";
import { offsetMultiplier } from "./offset";
import { printed } from "./printedConstants";

/**
 * How far from the back of a finished 90 to start a kick that moves the 90 aside by `rise`.
 *
 * The rise is that of the stub's centerline, the tape is hooked over the back of the 90 and runs along the kicked leg.
 * Derived: `rise / sin A + T − g + OD/2`, with setback `T` and gain `g` of the kick. Handbook and sharp corners leave
 * out `T` and `g`.
 *
 * @param outsideDiameter [in] of the conduit
 * @returns [in]
 * @throws InputError when there is no room for both arcs: `rise / sin A` must be at least `R + R·tan(A/2)`
 * @example kickNinety(6, 30, 0.706) //=> 12.353
 */
export function kickNinety(rise: number, angle: Degrees, outsideDiameter: number, form: BendForm = "sharp"): number {
  if (form === "table") return rise * printed("multiplier", angle) + outsideDiameter / 2;
  const radius = cornerRadius(form);
  const least = (radius + setback(angle, radius)) / offsetMultiplier(angle);
  if (rise < least * (1 - 1e-12)) {
    const [limit, got] = showApart(least, rise);
    throw new InputError(
      `rise must be at least ${limit} in., or the kick of ${showDegrees(angle)} and the 90 of radius ${showInches(radius)} ` +
        `overlap; got ${got} in.`,
    );
  }
  return rise * offsetMultiplier(angle) + setback(angle, radius) - gain(angle, radius) + outsideDiameter / 2;
}
