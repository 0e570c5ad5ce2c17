import type { NewSheet } from "../../workbook/design/newSheets";
import type { Cell } from "../../workbook/items";
import { sameName } from "../rows/readTables";

/** What stands already of a sheet that was begun. */
export interface Standing {
  /** Its cells, where the new sheet has some. */
  formulas: Cell[][];
  beside: Cell[][];
  /** The tables in it. */
  tables: string[];
}

/** Looks at the sheets of a set-up that are there already, by the sheet to make. */
export async function lookAtBegun(
  context: Excel.RequestContext,
  sheets: readonly NewSheet[],
): Promise<Map<NewSheet, Standing>> {
  if (sheets.length === 0) return new Map();
  const asked = sheets.map((item) => {
    const sheet = context.workbook.worksheets.getItem(item.sheet);
    const { cells, beside } = item;
    return {
      item,
      range: sheet.getRangeByIndexes(0, 0, cells.length, cells[0]?.length ?? 1).load("formulas"),
      beside: beside && sheet.getRangeByIndexes(0, beside.column, beside.cells.length, 1).load("formulas"),
    };
  });
  const tables = context.workbook.tables.load("items/name");
  await context.sync();
  const places = tables.items.map((table) => ({ table, sheet: table.worksheet.load("name") }));
  await context.sync();
  return new Map(
    asked.map(({ item, range, beside }) => [
      item,
      {
        formulas: range.formulas as Cell[][],
        beside: (beside?.formulas ?? []) as Cell[][],
        tables: places.filter(({ sheet }) => sameName(sheet.name, item.sheet)).map(({ table }) => table.name),
      },
    ]),
  );
}

/**
 * The cells of a new sheet that are still to be written: null for one that holds something. A row in which the person
 * wrote gets its formulas and no values.
 */
export function stillToWrite(
  cells: readonly (readonly Cell[])[],
  now: readonly (readonly Cell[])[],
): (Cell | null)[][] {
  return cells.map((row, at) => {
    const isFormula = (place: number) => String(row[place]).startsWith("=");
    const isOpen = at === 0 || row.every((_, place) => isFormula(place) || isEmpty(now[at]?.[place]));
    return row.map((cell, place) => (isEmpty(now[at]?.[place]) && (isOpen || isFormula(place)) ? cell : null));
  });
}

const isEmpty = (cell: Cell | undefined): boolean => cell === undefined || cell === "";
