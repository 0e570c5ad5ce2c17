const PARTS = /(\d+|\D+)/g;

/**
 * Compares two texts the way people sort labels: digits by their value, letters whatever their case; the same on every
 * machine. Texts that differ only in case are told apart, so that an order never depends on the order of rows.
 *
 * @example ["R10", "R2"].sort(naturalOrder) //=> ["R2", "R10"]
 */
export function naturalOrder(a: string, b: string): number {
  const [left, right] = [partsOf(a), partsOf(b)];
  for (let index = 0; index < Math.min(left.length, right.length); index++) {
    const difference = compareParts(left[index]!, right[index]!);
    if (difference !== 0) return difference;
  }
  return left.length - right.length || compareText(a, b);
}

const partsOf = (text: string): string[] => text.toLowerCase().match(PARTS) ?? [];

const isNumber = (part: string): boolean => /^\d/.test(part);

const compareParts = (a: string, b: string): number =>
  isNumber(a) && isNumber(b) ? Number(a) - Number(b) : compareText(a, b);

/** Compares two texts character by character. */
export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
