import { findColumns, type Column } from "../../src/table/headerTable";
import type { Cell } from "./items";

/** Zero-based place of each column that a header row has, found by the very rules the functions use. */
export const columnPlaces = (headers: readonly Cell[], columns: readonly Column[]): Map<string, number> =>
  findColumns(
    headers,
    "table",
    columns.map((column) => ({ ...column, required: false })),
  );

/** Needed columns that a header row lacks. */
export const missingColumns = (headers: readonly Cell[], columns: readonly Column[]): string[] => {
  const places = columnPlaces(headers, columns);
  return columns.filter(({ name, required }) => required && !places.has(name)).map(({ name }) => name);
};
