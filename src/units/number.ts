import { InputError, quoteValue } from "./errors";
import { withinLimits, type Limits } from "./limits";
import { plainMarks } from "./plainMarks";

const DECIMAL = /^[+-]?(\d+\.?\d*|\.\d+)$/;

/** A number as cells hold it: a finite number, or text that is nothing but one. Undefined for anything else. */
export function asNumber(value: unknown): number | undefined {
  if (typeof value === "number") return Number.isFinite(value) ? value : undefined;
  if (typeof value !== "string" || value.length > 100) return undefined;
  const text = plainMarks(value);
  return DECIMAL.test(text) ? Number(text) : undefined;
}

/**
 * Reads a number argument.
 *
 * @param argument its name in messages
 * @throws InputError naming the argument, the limit and the value
 * @example toNumber("12.5", "shots") //=> 12.5
 */
export function toNumber(value: unknown, argument: string, limits: Limits = {}): number {
  const number = asNumber(value);
  if (number === undefined) throw new InputError(`${argument} must be a number; got ${quoteValue(value)}.`);
  return withinLimits(number, argument, limits);
}
