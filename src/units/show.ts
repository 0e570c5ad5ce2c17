/** Numbers as messages and notes show them: rounded, without trailing zeros, never "-0". */

/** @example show(11.95080, 4) //=> "11.9508" */
export function show(value: number, digits = 4): string {
  const text = value.toFixed(digits);
  const trimmed = digits > 0 ? text.replace(/\.?0+$/, "") : text;
  return trimmed === "-0" ? "0" : trimmed;
}

/** @example showInches(12) //=> "12 in." */
export const showInches = (inches: number, digits = 4): string => `${show(inches, digits)} in.`;

/** @example showDegrees(22.5) //=> "22.5°" */
export const showDegrees = (degrees: number, digits = 2): string => `${show(degrees, digits)}°`;
