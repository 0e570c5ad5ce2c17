import { formatLength, readDenominator, readLengthStyle } from "../../src/units/formatLength";
import { toInches } from "../../src/units/length";
import { answer } from "../cell/answer";

/**
 * Inches of a length written the way the trade writes it: feet, inches and fractions, decimals or metric.
 *
 * Example: =CONDUIT.LENGTH("3' 4-1/2""") //=> 40.5
 * Source: 12 in. to the foot; 25.4 mm to the inch (international yard and pound agreement, 1959).
 * @customfunction LENGTH
 * @helpurl https://raceway-ledger.example/help/length.html
 * @param {any} text [in] a number of inches, or text with feet, inches, fractions, mm, cm or m
 * @returns {number} length [in]
 */
export function lengthInches(text: any): number {
  return answer([text], (text) => toInches(text, "text"));
}

/**
 * A length as text, rounded to the nearest part of an inch in feet and inches, in inches only, or to the millimeter.
 *
 * Example: =CONDUIT.LENGTH.TEXT(40.49) //=> 3' 4-1/2"
 * Source: halves round away from zero; 25.4 mm to the inch (international yard and pound agreement, 1959).
 * @customfunction LENGTH.TEXT
 * @helpurl https://raceway-ledger.example/help/length.text.html
 * @param {any} inches [in] length, as a number or as text
 * @param {any} [denominator] parts of an inch: 2, 4, 8, 16, 32 or 64; omitted: 16
 * @param {any} [style] feet, inches or mm; omitted: feet
 * @returns {string} the rounded length
 */
export function lengthText(inches: any, denominator?: any, style?: any): string {
  return answer([inches, denominator, style], (inches, denominator, style) =>
    formatLength(toInches(inches, "inches"), readDenominator(denominator), readLengthStyle(style)),
  );
}
