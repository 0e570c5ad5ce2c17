import { setback, arcLength } from "../../geometry/arc";
import { partsToPath, type Path } from "../../geometry/path";
import type { Vec3 } from "../../geometry/vector";
import type { Piece } from "../run/builtRun";

/** Turning right-handed about this, a first bend goes from ahead (x) to up (z). */
export const FIRST_BEND_UP: Vec3 = [0, -1, 0];

/**
 * The finished piece as one lays it out to check it: the datum end at the origin, its first straight level and pointing
 * ahead (x), the first bend pointing up (z), left (y) to the left.
 */
export function ticketPath({ bends, cutLength }: Piece): Path {
  const ends = bends.map(({ start, angle, radius }) => start + arcLength(angle, radius));
  const setbacks = [0, ...bends.map(({ angle, radius }) => setback(angle, radius)), 0];
  const legs = [...bends.map(({ start }) => start), cutLength].map(
    (to, index) => to - (ends[index - 1] ?? 0) + (setbacks[index] ?? 0) + (setbacks[index + 1] ?? 0),
  );
  const turns = bends.map(({ angle, radius, plane }, index) => ({ angle, radius, rotation: index === 0 ? 0 : plane }));
  return partsToPath(legs, turns, [0, 0, 0], [1, 0, 0], FIRST_BEND_UP);
}
