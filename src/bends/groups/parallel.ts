import type { Degrees } from "../../geometry/angle";
import type { BendForm } from "../shapes/bendForm";
import { offsetSpacing } from "../shapes/offset";
import { stagger } from "./stagger";

/**
 * Marks of kicks on side-by-side conduits that stay evenly spaced. Conduit 1 is on the side that the bend turns toward;
 * marks [in] are counted from its mark.
 *
 * @param angle [°] @param spacing [in] center to center @param count of conduits
 * @example parallelKicks(45, 6, 2)[1] //=> { conduit: 2, mark: 2.4853 }
 */
export const parallelKicks = (angle: Degrees, spacing: number, count: number): { conduit: number; mark: number }[] =>
  Array.from({ length: count }, (_, place) => ({ conduit: place + 1, mark: place * stagger(spacing, angle) }));

/**
 * Marks of side-by-side offsets that stay evenly spaced. Conduit 1 is on the side that the first bend turns toward;
 * marks [in] are counted from its first mark.
 *
 * @param rise [in] @param angle [°] @param spacing [in] center to center @param count of conduits
 * @throws InputError when the bends of an offset overlap; NotListedError when the multiplier is not in print
 * @example parallelOffsets(6, 30, 4, 2)[1] //=> { conduit: 2, first: 1.0718, second: 13.0718 }
 */
export function parallelOffsets(
  rise: number,
  angle: Degrees,
  spacing: number,
  count: number,
  form: BendForm = "sharp",
): { conduit: number; first: number; second: number }[] {
  const apart = offsetSpacing(rise, angle, form);
  return parallelKicks(angle, spacing, count).map(({ conduit, mark }) => ({
    conduit,
    first: mark,
    second: mark + apart,
  }));
}
