import type { Cell } from "../../workbook/items";
import { reading } from "../batch";

/** A table's cells, header row first, and where it stands (zero-based row and column of its header). */
export interface TableCells {
  name: string;
  sheet: string;
  row: number;
  column: number;
  cells: Cell[][];
}

/** Reads several tables in two round trips; undefined for one the workbook does not have. */
export function readTables(names: readonly string[]): Promise<(TableCells | undefined)[]> {
  return reading(async (context) => {
    const { tables } = context.workbook;
    tables.load("items/name");
    await context.sync();
    const asked = names.map((name) => {
      const table = tables.items.find((item) => sameName(item.name, name));
      if (!table) return undefined;
      const range = table.getRange().load("values,rowIndex,columnIndex");
      return { table, range, sheet: table.worksheet.load("name") };
    });
    await context.sync();
    return asked.map(
      (found) =>
        found && {
          name: found.table.name,
          sheet: found.sheet.name,
          row: found.range.rowIndex,
          column: found.range.columnIndex,
          cells: found.range.values as Cell[][],
        },
    );
  });
}

/** Excel takes two names that differ only in case for the same. */
export const sameName = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();
