import { InputError, quoteValue } from "./errors";
import { LENGTH_IN_WORDS, readLengthText } from "./lengthText";
import { withinLimits, type Limits } from "./limits";

export { formatLength } from "./formatLength";

/**
 * Reads a length argument: a number of inches, or text with or without units.
 *
 * @param argument its name in messages
 * @param limits [in] what it may be; omitted: any finite length
 * @returns length [in]
 * @throws InputError naming the argument, the limit and the value
 * @example toInches("3' 4-1/2\"", "rise", { above: 0 }) //=> 40.5
 */
export function toInches(value: unknown, argument: string, limits: Limits = {}): number {
  return withinLimits(asInches(value, argument), argument, limits, " in.");
}

function asInches(value: unknown, argument: string): number {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  if (typeof value === "string" && value.trim() !== "") return readLengthText(value, argument);
  throw new InputError(`${argument} must be ${LENGTH_IN_WORDS}; got ${quoteValue(value)}.`);
}
