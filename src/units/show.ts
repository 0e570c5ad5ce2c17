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
    const shown: [string, string] = [written(limit, digits), written(value, digits)];
    if (shown[0] !== shown[1]) return shown;
  }
  return [written(limit, FINEST), written(value, FINEST)];
}

/** A number that is not 0 is not written as 0, and one beyond all others not as a word nobody knows. */
function written(value: number, digits: number): string {
  if (!Number.isFinite(value)) return "more than 1e308";
  const text = show(value, digits);
  return text === "0" && value !== 0 ? String(Number(value.toPrecision(4))) : text;
}
