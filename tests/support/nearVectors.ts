/** Exact paths are held to this [in or °]. */
export const EXACT = 1e-9;

/** Fails unless both lists have the same shape and every number differs by at most `tolerance`. */
export function expectNear(actual: readonly unknown[], expected: readonly unknown[], tolerance = EXACT): void {
  const flat = (list: readonly unknown[]): number[] =>
    list.flatMap((item) => (Array.isArray(item) ? flat(item) : [item as number]));
  const [got, wanted] = [flat(actual), flat(expected)];
  expect(got).toHaveLength(wanted.length);
  const worst = Math.max(...wanted.map((value, index) => Math.abs(value - got[index]!)));
  if (!(worst <= tolerance)) throw new Error(`expected ${JSON.stringify(expected)}, got ${JSON.stringify(actual)}`);
}
