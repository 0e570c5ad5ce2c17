import { InputError } from "./errors";

/**
 * Pattern of a number as the trade writes it, without sign: `40.5`, `3/8`, `4 1/2` or `4-1/2`. To be set into a larger
 * pattern between its own ends; the text must have plain marks.
 */
export const MIXED_NUMBER = String.raw`\d+(?:\s*-\s*|\s+)\d+\s*/\s*\d+|\d+\s*/\s*\d+|\d+\.?\d*|\.\d+`;

/**
 * Value of text that matches MIXED_NUMBER.
 *
 * @throws InputError when the fraction is not below 1: `41/2` is more likely a `4-1/2` written without its gap
 * @example mixedNumber("4-1/2") //=> 4.5
 */
export function mixedNumber(text: string, argument: string): number {
  const parts = /^(?:(\d+)(?:\s*-\s*|\s+))?(\d+)\s*\/\s*(\d+)$/.exec(text);
  if (!parts) return Number(text);
  const [, whole = "0", top, bottom] = parts;
  if (Number(top) >= Number(bottom)) {
    throw new InputError(
      `${argument}: the fraction ${top}/${bottom} must be below 1; write whole and fraction apart, like 4-1/2.`,
    );
  }
  return Number(whole) + Number(top) / Number(bottom);
}
