import { cos, sin, tan, toRadians, type Degrees } from "../../geometry/angle";
import { gain, setback } from "../../geometry/arc";
import { InputError } from "../../units/errors";
import { showApart, showDegrees, showInches } from "../../units/show";

/** Centerline of an offset: two equal bends that turn opposite ways. All [in]. */
export interface OffsetShape {
  /** From corner to corner. */
  readonly slant: number;
  /** What is straight between the two arcs. */
  readonly straight: number;
  /** From the start of the first bend to the start of the second along the conduit. */
  readonly spacing: number;
  /** By how much the conduit is longer than the distance it covers. */
  readonly shrink: number;
}

/**
 * An offset of true arcs.
 *
 * Derived: the slant is `rise / sin A`. Along the conduit each bend saves its gain `g = 2R·tan(A/2) − R·A`, half of it on
 * either side; from one bend to the other that is `g`, over both bends `2g`. Going by the corners the offset is longer
 * than the ground it covers by `rise / sin A − rise / tan A = rise·tan(A/2)`.
 *
 * @param rise [in] above 0
 * @param angle [°] of each bend, above 0 to 90
 * @param radius [in] on the centerline, 0 for sharp corners
 * @throws InputError when the rise has no room for both arcs
 */
export function offsetShape(rise: number, angle: Degrees, radius: number): OffsetShape {
  const least = leastRise(angle, radius);
  if (rise < least * (1 - 1e-12)) {
    const [limit, got] = showApart(least, rise);
    throw new InputError(
      `rise must be at least ${limit} in., or the two bends of ${showDegrees(angle)} and radius ` +
        `${showInches(radius)} overlap; got ${got} in.`,
    );
  }
  const slant = rise / sin(toRadians(angle));
  return {
    slant,
    straight: slant - 2 * setback(angle, radius),
    spacing: slant - gain(angle, radius),
    shrink: rise * tan(toRadians(angle / 2)) - 2 * gain(angle, radius),
  };
}

/** Least rise [in] that two arcs make when they touch: `2R·(1 − cos A)`. */
export const leastRise = (angle: Degrees, radius: number): number => 2 * radius * (1 - cos(toRadians(angle)));
