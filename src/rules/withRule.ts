import { lookUpKey } from "../units/names/lookUpKey";

/**
 * A Rules range with another value for one rule: its row's, where it has one, else a row more.
 *
 * @param range with a header row, or nothing
 */
export function withRule(range: unknown, rule: string, value: string | number): unknown[][] {
  const rows = Array.isArray(range) && range.every(Array.isArray) ? (range as unknown[][]) : [];
  const top = rows.findIndex((row) => ["rule", "value"].every((name) => row.some((cell) => lookUpKey(cell) === name)));
  if (top < 0)
    return [
      ["Rule", "Value"],
      [rule, value],
    ];
  const [at, valueAt] = ["rule", "value"].map((name) => rows[top]!.findIndex((cell) => lookUpKey(cell) === name));
  const place = rows.findIndex((row) => lookUpKey(row[at!]) === lookUpKey(rule));
  const own = [...(rows[place] ?? rows[top]!.map(() => null))];
  own[at!] = rule;
  own[valueAt!] = value;
  return place < 0 ? [...rows, own] : rows.map((row, each) => (each === place ? own : row));
}
