import { atan2, toDegrees, type Degrees } from "../../geometry/angle";
import { InputError } from "../../units/errors";

/**
 * The plain offset that a rolling offset is, and the plane it lies in.
 *
 * @param rise [in] and @param roll [in] square to each other and to the run; negative the other way
 * @returns true offset [in] `√(rise² + roll²)`, and plane [°] from the rise toward the roll `atan2(roll, rise)`
 * @throws InputError when both are 0
 * @example rollingOffset(8, 12) //=> { trueOffset: 14.4222, plane: 56.3099 }
 */
export function rollingOffset(rise: number, roll: number): { trueOffset: number; plane: Degrees } {
  if (rise === 0 && roll === 0) throw new InputError("rise and roll must not both be 0 in.");
  return { trueOffset: Math.hypot(rise, roll), plane: toDegrees(atan2(roll, rise)) };
}
