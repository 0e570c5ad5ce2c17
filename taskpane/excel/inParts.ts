/** Rows that go with one round trip hold about so much [characters]: Excel on the web takes 5 MB, and progress shows sooner. */
const PART = 500_000;

/** Rows in parts that are small enough for a round trip. */
export function inParts<T>(rows: readonly (readonly T[])[]): T[][][] {
  const parts: T[][][] = [];
  let size = Infinity;
  for (const row of rows) {
    const own = JSON.stringify(row).length;
    if (size + own > PART) {
      parts.push([]);
      size = 0;
    }
    parts.at(-1)!.push([...row]);
    size += own;
  }
  return parts;
}
