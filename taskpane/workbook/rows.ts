import type { Column } from "../../src/table/headerTable";
import { columnPlaces } from "./columns";
import type { Cell } from "./items";

/** Rows of a table (1 for the first under the header) in which anything stands under one of the columns. */
export function writtenRows(cells: readonly (readonly Cell[])[], columns: readonly Column[]): number[] {
  const places = [...columnPlaces(cells[0] ?? [], columns).values()];
  return cells.flatMap((line, row) =>
    row > 0 && places.some((place) => String(line[place] ?? "").trim() !== "") ? [row] : [],
  );
}

/** The first row after the last written one: an empty row of the table, or the one under it. */
export const firstFreeRow = (cells: readonly (readonly Cell[])[], columns: readonly Column[]): number =>
  (writtenRows(cells, columns).at(-1) ?? 0) + 1;
