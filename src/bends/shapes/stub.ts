import { InputError } from "../../units/errors";
import { show, showApart } from "../../units/show";

/**
 * Deduct of a shoe: what is taken off a stub's height for the arrow's mark.
 *
 * Derived: the back of a 90 stands `R + OD/2` past the start of the bend, the arrow `arrowLead` before it.
 *
 * @param radius [in] on the centerline @param outsideDiameter [in]
 * @param arrowLead [in] from the arrow to the start of the bend; below 0 for an arrow past it
 * @throws InputError when the arrow lies farther past the start than the radius
 * @example stubDeduct(4, 0.706, 0.647) //=> 5
 */
export function stubDeduct(radius: number, outsideDiameter: number, arrowLead = 0): number {
  if (arrowLead >= -radius) return radius + outsideDiameter / 2 + arrowLead;
  const [limit, got] = showApart(-radius, arrowLead);
  throw new InputError(
    `arrow lead must be at least ${limit} in., or the arrow would lie past the back of the conduit bent around the shoe; ` +
      `got ${got} in.`,
  );
}

/**
 * Where to mark the conduit for a stub, from the end that becomes its top.
 *
 * @param stub [in] from the end to the back of the finished 90
 * @throws InputError when the stub is not above the deduct
 * @example stubMark(10, 5) //=> 5
 */
export function stubMark(stub: number, deduct: number): number {
  return lessDeduct(stub, deduct, "stub");
}

/**
 * Where to mark the conduit for the second 90 of a back-to-back, from the back of the first.
 *
 * The star is lined up with the distance itself, the bender turned end for end. Bending the same way round as the first
 * 90, the arrow's mark is the distance less the deduct.
 *
 * @param distance [in] back to back @param deduct [in] given for the arrow; left out for the star
 * @throws InputError when the distance is not above the deduct
 * @example backMark(20) //=> 20
 */
export function backMark(distance: number, deduct?: number): number {
  return deduct === undefined ? distance : lessDeduct(distance, deduct, "distance");
}

function lessDeduct(length: number, deduct: number, argument: string): number {
  if (length > deduct) return length - deduct;
  const [limit, got] = length === deduct ? [show(deduct), show(length)] : showApart(deduct, length);
  throw new InputError(`${argument} must be above the deduct of ${limit} in.; got ${got} in.`);
}
