/** The lines of a table by its headers. */
export function recordsOf<T>(table: readonly (readonly T[])[]): Record<string, T>[] {
  const [headers = [], ...rows] = table;
  return rows.map((row) => Object.fromEntries(headers.map((header, place) => [String(header), row[place] as T])));
}
