import { sin, tan, toRadians, type Degrees } from "../../geometry/angle";
import { arcLength, cornerHeight, gain, setback } from "../../geometry/arc";
import { InputError } from "../../units/errors";
import { showApart, showDegrees, showInches } from "../../units/show";

/** What a saddle's height is measured to: the crest of the center bend's arc, or the corner above it. */
export type HeightTo = "crest" | "corner";

/** Centerline of one half of a three-bend saddle. All [in]. */
export interface SaddleShape {
  /** Height of the center bend's corner and of its crest. */
  readonly corner: number;
  readonly crest: number;
  /** From the outer bend's corner to the center bend's. */
  readonly slant: number;
  readonly straight: number;
  /** From the outer bend's outer end to the middle of the center bend, along the conduit. */
  readonly spacing: number;
  /** By how much the conduit is longer than the distance it covers, up to the middle of the center bend. */
  readonly shrink: number;
}

/**
 * A three-bend saddle of true arcs: center bend `A`, two outer bends `A/2`.
 *
 * Derived: the center bend's corner stands over its crest by `R·(1/cos(A/2) − 1)`; the slant is `corner / sin(A/2)`; from
 * the outer end of the outer arc (setback `T'`, gain `g'`) to the middle of the center arc (gain `g`) the conduit is
 * `T' + slant − g' − g/2` long.
 *
 * @param height [in] above 0, to the crest or to the corner
 * @param angle [°] of the center bend, above 0 and below 180
 * @param radius [in] on the centerline, 0 for sharp corners
 * @throws InputError when the height has no room for the arcs
 */
export function saddleShape(height: number, angle: Degrees, radius: number, heightTo: HeightTo = "crest"): SaddleShape {
  const outer = angle / 2;
  const lift = cornerHeight(angle, radius);
  const corner = heightTo === "crest" ? height + lift : height;
  const slant = corner / sin(toRadians(outer));
  const straight = slant - setback(outer, radius) - setback(angle, radius);
  if (straight < -1e-12 * (slant + radius)) throw tooLow(height, angle, radius, heightTo);
  return {
    corner,
    crest: corner - lift,
    slant,
    straight,
    spacing: arcLength(outer, radius) + straight + arcLength(angle, radius) / 2,
    shrink: corner * tan(toRadians(outer / 2)) - gain(outer, radius) - gain(angle, radius) / 2,
  };
}

function tooLow(height: number, angle: Degrees, radius: number, heightTo: HeightTo): InputError {
  const corner = (setback(angle / 2, radius) + setback(angle, radius)) * sin(toRadians(angle / 2));
  const least = heightTo === "crest" ? corner - cornerHeight(angle, radius) : corner;
  const [limit, got] = showApart(least, height);
  return new InputError(
    `height must be at least ${limit} in., or the bends of ${showDegrees(angle)} and ${showDegrees(angle / 2)} ` +
      `with radius ${showInches(radius)} overlap; got ${got} in.`,
  );
}
