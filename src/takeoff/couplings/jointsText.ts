import type { BuiltRun } from "../../shop/run/builtRun";
import { formatLength } from "../../units/formatLength";
import { ROUNDING } from "../../units/tolerances";

/** A place along a run as its Joints cell has it: in sixteenths, exactly where these miss it. */
function placeText(inches: number, isMetric: boolean): string {
  if (isMetric && Math.abs(inches * 25.4 - Math.round(inches * 25.4)) < ROUNDING)
    return `${Math.round(inches * 25.4)} mm`;
  const sixteenths = Math.round(inches * 16);
  return Math.abs(inches - sixteenths / 16) < ROUNDING ? formatLength(inches) : String(Number(inches.toFixed(6)));
}

/** Where a run is coupled from its datum end [in], the couplings at factory elbows left out. */
export function runJoints({ pulls }: BuiltRun): number[] {
  let start = 0;
  return pulls.flatMap(({ joints, parts }) => {
    const own = joints.map((joint) => start + joint);
    start += parts.developed;
    return own;
  });
}

/**
 * What stands in the Joints cell of a run that is coupled at more places.
 *
 * @param more from the datum end [in]
 * @example jointsText(built, [50], false) //=> "4' 2\", 10' 0\""
 */
export const jointsText = (built: BuiltRun, more: readonly number[], isMetric: boolean): string =>
  [...runJoints(built), ...more]
    .sort((a, b) => a - b)
    .map((joint) => placeText(joint, isMetric))
    .join(", ");
