import type { Degrees } from "../../geometry/angle";
import { cornerRadius, type BendForm } from "./bendForm";
import { printed } from "./printedConstants";
import { InputError, quoteValue } from "../../units/errors";
import { isOmitted } from "../../units/limits";
import { saddleShape, type HeightTo } from "./saddleShape";

/**
 * Distance from the center mark of a three-bend saddle to either outer mark.
 *
 * With true arcs it runs from the outer bend's outer end to the middle of the center bend, along the conduit.
 *
 * @param height [in] the crest of the center bend clears, unless `heightTo` says "corner"
 * @param angle [°] of the center bend; each outer bend has half of it
 * @param form radius for true arcs, sharp corners, or the printed spacing per inch
 * @returns [in]
 * @throws InputError when the bends overlap; NotListedError when the spacing is not in print
 * @example saddleSpacing(4, 45, 4) //=> 12.0028
 */
export function saddleSpacing(height: number, angle: Degrees, form: BendForm = "sharp", heightTo?: HeightTo): number {
  if (form === "table") return height * printed("saddleMultiplier", angle);
  return saddleShape(height, angle, cornerRadius(form), heightTo).spacing;
}

/**
 * How far the center mark of a three-bend saddle moves ahead of the obstacle's center: the shrink of one half.
 * The whole saddle shortens the conduit's reach by twice as much.
 *
 * @param height [in] the crest of the center bend clears, unless `heightTo` says "corner"
 * @param angle [°] of the center bend
 * @param form radius for true arcs, sharp corners, or the printed shrink per inch
 * @returns [in]
 * @throws InputError when the bends overlap; NotListedError when the shrink is not in print
 * @example saddleShrink(4, 45, "table") //=> 0.75
 */
export function saddleShrink(height: number, angle: Degrees, form: BendForm = "sharp", heightTo?: HeightTo): number {
  if (form === "table") return height * printed("saddleShrink", angle);
  return saddleShape(height, angle, cornerRadius(form), heightTo).shrink;
}

/** Reads what a saddle's height is measured to; left out: the crest. */
export function readHeightTo(value: unknown, argument = "height to"): HeightTo {
  if (isOmitted(value)) return "crest";
  const word = typeof value === "string" ? value.trim().toLowerCase() : "";
  if (word === "crest" || word === "corner") return word;
  throw new InputError(`${argument} must be crest or corner; got ${quoteValue(value)}.`);
}
