import { InputError, quoteValue } from "./errors";
import { MIXED_NUMBER, mixedNumber } from "./mixedNumber";
import { plainMarks } from "./plainMarks";

/** Inches in each metric unit; an inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
const METRIC: Readonly<Record<string, number>> = { mm: 1 / 25.4, cm: 10 / 25.4, m: 1000 / 25.4 };

const METRIC_LENGTH = /^([+-]?)\s*(\d+\.?\d*|\.\d+)\s*(mm|cm|m)$/;
const INCH_MARK = String.raw`(?:"|inches|inch|in\.?)`;
const FOOT_MARK = String.raw`(?:'|feet|foot|ft\.?)`;
const INCHES = new RegExp(String.raw`^([+-]?)\s*(${MIXED_NUMBER})\s*${INCH_MARK}?$`);
const FEET = new RegExp(String.raw`^([+-]?)\s*(${MIXED_NUMBER})\s*${FOOT_MARK}$`);
const FEET_INCHES = new RegExp(
  String.raw`^([+-]?)\s*(\d+)\s*${FOOT_MARK}(?:\s*-\s*|\s*)(${MIXED_NUMBER})\s*${INCH_MARK}?$`,
);

/** Longer text than this is not a length; it is refused before any matching. */
const LONGEST_TEXT = 100;

/**
 * Reads a length written as text: feet, inches and fractions, decimals, or metric.
 *
 * A sign in front holds for the whole length; a hyphen after the feet or before the fraction only joins.
 *
 * @param argument its name in messages
 * @returns length [in]
 * @throws InputError when the text is not a length, a fraction is not below 1, or inches after feet are not below 12
 * @example readLengthText(`3' 4-1/2"`, "rise") //=> 40.5
 */
export function readLengthText(text: string, argument: string): number {
  const plain = text.length > LONGEST_TEXT ? "" : plainMarks(text);
  const metric = METRIC_LENGTH.exec(plain);
  if (metric) return signed(metric[1], Number(metric[2]) * (METRIC[metric[3] as string] as number));
  const inches = INCHES.exec(plain);
  if (inches) return signed(inches[1], mixedNumber(inches[2] as string, argument));
  const feet = FEET.exec(plain);
  if (feet) return signed(feet[1], 12 * mixedNumber(feet[2] as string, argument));
  const both = FEET_INCHES.exec(plain);
  if (both) return signed(both[1], 12 * Number(both[2]) + inchesAfterFeet(both[3] as string, argument, text));
  throw new InputError(`${argument} must be ${LENGTH_IN_WORDS}; got ${quoteValue(text)}.`);
}

/** What a length argument takes, for messages. */
export const LENGTH_IN_WORDS = `a length: a number of inches, or text like 3' 4-1/2", 40.5 or 1028 mm`;

function inchesAfterFeet(part: string, argument: string, text: string): number {
  const inches = mixedNumber(part, argument);
  if (inches < 12) return inches;
  throw new InputError(`${argument}: inches after feet must be below 12; got ${quoteValue(text)}.`);
}

const signed = (sign: string | undefined, size: number): number => (sign === "-" ? 0 - size : size);
