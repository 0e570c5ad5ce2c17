import type { Degrees } from "../../geometry/angle";
import { arrowLead, starFromArrow, type MarkedShoe } from "./shoe";
import { arcOf } from "./springback";

/** What on the shoe the pencil mark is lined up with. */
export type LineUp = "arrow" | "star" | "notch";
/** Which end of the piece lies on the hook's side of the shoe. */
export type Hook = "datum" | "far";

/**
 * Where to mark a straight stick for one bend.
 *
 * Derived from the shoe: the arrow stands `lead` before the start of the bend on the hook's side; with the hook toward
 * the far end the bend starts at its far tangent point instead. The star lies `deduct − back gain` from the arrow, and
 * the center notch at half the arc, whichever way the hook points.
 *
 * @param start [in] start of the bend: its tangent point nearer the datum end, along the straight stick
 * @param angle [°] finished angle
 * @returns mark [in] from the datum end
 * @example markFor({ radius: 4, deduct: 5, outsideDiameter: 0.706 }, 5.647, 90, "arrow", "datum") //=> 5
 */
export function markFor(shoe: MarkedShoe, start: number, angle: Degrees, lineUp: LineUp, hook: Hook): number {
  const arc = arcOf(shoe, angle);
  if (lineUp === "notch") return start + arc / 2;
  if (hook === "datum") return start - arrowLead(shoe) + (lineUp === "star" ? starFromArrow(shoe) : 0);
  return start + arc + arrowLead(shoe) - (lineUp === "star" ? starFromArrow(shoe) : 0);
}
