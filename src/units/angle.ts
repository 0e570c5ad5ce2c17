import { InputError, quoteValue } from "./errors";
import { withinLimits, type Limits } from "./limits";
import { MIXED_NUMBER, mixedNumber } from "./mixedNumber";
import { plainMarks } from "./plainMarks";

const ANGLE_TEXT = new RegExp(String.raw`^([+-]?)\s*(${MIXED_NUMBER})\s*(?:°|º|deg\.?|degrees?)?$`);

/** A bend turns, and does not turn back on itself. */
const BEND_ANGLE: Limits = { above: 0, below: 180 };

/**
 * Reads an angle argument: a number of degrees, or text such as `22-1/2` or `30°`.
 *
 * @param argument its name in messages
 * @param limits [°] what it may be; omitted: above 0° and below 180°
 * @returns angle [°]
 * @throws InputError naming the argument, the limit and the value
 * @example toAngle("22½°", "angle") //=> 22.5
 */
export function toAngle(value: unknown, argument: string, limits: Limits = BEND_ANGLE): number {
  const angle = asDegrees(value, argument);
  if (angle === undefined) throw new InputError(`${argument} must be an angle in degrees; got ${quoteValue(value)}.`);
  return withinLimits(angle, argument, limits, "°");
}

function asDegrees(value: unknown, argument: string): number | undefined {
  if (typeof value === "number") return Number.isFinite(value) ? value : undefined;
  if (typeof value !== "string" || value.length > 100) return undefined;
  const text = ANGLE_TEXT.exec(plainMarks(value));
  if (!text) return undefined;
  const size = mixedNumber(text[2] as string, argument);
  return text[1] === "-" ? 0 - size : size;
}
