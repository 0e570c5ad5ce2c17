import type { Degrees } from "../../geometry/angle";
import { arcLength } from "../../geometry/arc";
import type { BendForm } from "./bendForm";
import { offsetShrink, offsetSpacing } from "./offset";

/** One mark of a four-bend saddle [in]: where it stands from the first, and what the saddle shortens up to it. */
export interface SaddleMark {
  readonly at: number;
  readonly shrink: number;
}

/**
 * A four-bend saddle: two equal offsets, back to back over an obstacle.
 *
 * The conduit runs straight at full height over the whole width: with true arcs, marks 2 and 3 stand apart by the
 * width and one arc; in the handbook and with sharp corners, by the width alone.
 *
 * @param height [in] @param width [in] of the obstacle with its clearance @param angle [°] of each bend
 * @param form radius for true arcs, sharp corners, or the printed constants
 * @throws InputError when the bends of an offset overlap; NotListedError when the constants are not in print
 * @example fourBendSaddle(3, 12, 30).map(({ at }) => at) //=> [0, 6, 18, 24]
 */
export function fourBendSaddle(height: number, width: number, angle: Degrees, form: BendForm = "sharp"): SaddleMark[] {
  const spacing = offsetSpacing(height, angle, form);
  const top = width + (typeof form === "number" ? arcLength(angle, form) : 0);
  const shrink = offsetShrink(height, angle, form);
  return [
    { at: 0, shrink: 0 },
    { at: spacing, shrink },
    { at: spacing + top, shrink },
    { at: 2 * spacing + top, shrink: 2 * shrink },
  ];
}
