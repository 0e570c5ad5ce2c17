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

/** Most decimals that a limit and a value are told apart by. */
const FINEST = 12;

/**
 * A limit and a value beside it, with as many decimals as it takes to see that they differ.
 *
 * @example showApart(1.07179677, 1.0718) //=> ["1.071797", "1.0718"]
 */
export function showApart(limit: number, value: number): [limit: string, value: string] {
  for (let digits = 4; digits < FINEST; digits++) {
    const shown: [string, string] = [show(limit, digits), show(value, digits)];
    if (shown[0] !== shown[1]) return shown;
  }
  return [show(limit, FINEST), show(value, FINEST)];
}
