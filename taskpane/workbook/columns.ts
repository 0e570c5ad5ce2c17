import { readTable, type Column } from "../../src/table/headerTable";
import type { Cell } from "./items";

/** Zero-based place of each column that a header row has, found by the very rules the functions use. */
export function columnPlaces(headers: readonly Cell[], columns: readonly Column[]): Map<string, number> {
  const anyOf = columns.map((column) => ({ ...column, required: false }));
  // From 1: a 0 may count as an empty cell.
  const row = readTable([headers, headers.map((_, place) => place + 1)], "table", anyOf).rows[0];
  return new Map(
    columns.flatMap(({ name }): [string, number][] => {
      const place = row?.get(name);
      return typeof place === "number" ? [[name, place - 1]] : [];
    }),
  );
}

/** Needed columns that a header row lacks. */
export const missingColumns = (headers: readonly Cell[], columns: readonly Column[]): string[] => {
  const places = columnPlaces(headers, columns);
  return columns.filter(({ name, required }) => required && !places.has(name)).map(({ name }) => name);
};
