import { InputError } from "../../units/errors";
import { showApart } from "../../units/show";

/**
 * Radius of a finished bend by a straight edge laid into its inside, both ends on the conduit.
 *
 * Derived: half the edge, the inside radius and the radius less the gap make a right triangle; half of the outside diameter leads to
 * the centerline.
 *
 * @param edge [in] length of the straight edge @param gap [in] from its middle to the conduit
 * @param outsideDiameter [in] of the conduit; 0 for the radius on the inside
 * @returns centerline radius [in]
 * @throws InputError when the gap is more than half the edge: more than half a circle
 * @example edgeRadius(24, 2.21875, 2.875) //=> 34.9976
 */
export function edgeRadius(edge: number, gap: number, outsideDiameter: number): number {
  if (gap > edge / 2) {
    const [limit, got] = showApart(edge / 2, gap);
    throw new InputError(`gap must be at most half of the edge, ${limit} in.; got ${got} in.`);
  }
  return ((edge / 2) ** 2 / gap + gap) / 2 + outsideDiameter / 2;
}
