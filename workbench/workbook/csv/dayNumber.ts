import { dayText } from "../../../src/units/day";

const MILLISECONDS = 86_400_000;
/** A workbook's number of 1970-01-01 [days]. */
const EPOCH = 25569;

/**
 * The number that a workbook has for a day written 2008-01-01; undefined for any other text, and for a day there is not.
 *
 * @example dayNumber("2008-01-01") //=> 39448
 */
export function dayNumber(text: string): number | undefined {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return undefined;
  const number = Date.parse(`${text}T00:00:00Z`) / MILLISECONDS + EPOCH;
  return !Number.isNaN(number) && dayText(number) === text ? number : undefined;
}
