import type { Cell } from "../workbook/items";
import { batch } from "./batch";

/** A sheet to make with a table in it: header row first. */
export interface NewTable {
  sheet: string;
  table: string;
  cells: Cell[][];
  /** Number format of each column; "@" keeps 1/2 from becoming a date. */
  formats: string[];
  /** Allowed values of a column, by its zero-based place. */
  choices: { column: number; list: string[] }[];
}

/** A sheet to make with one formula that spills from A1. */
export interface NewResult {
  sheet: string;
  formula: string;
}

/** Makes sheets that do not exist yet, all of them in one round trip. */
export function setUp(tables: readonly NewTable[], results: readonly NewResult[]): Promise<void> {
  return batch(async (context) => {
    const { worksheets } = context.workbook;
    for (const item of tables) addTable(worksheets.add(item.sheet), item);
    for (const { sheet, formula } of results) {
      const range = worksheets.add(sheet).getRange("A1");
      range.formulas = [[formula]];
    }
    const first = tables[0];
    if (first) {
      const sheet = worksheets.getItem(first.sheet);
      sheet.activate();
      sheet.getRange("A2").select();
    }
    await context.sync();
  });
}

function addTable(sheet: Excel.Worksheet, item: NewTable): void {
  const { cells, formats } = item;
  const columns = formats.length;
  const range = sheet.getRangeByIndexes(0, 0, cells.length, columns);
  range.numberFormat = cells.map(() => formats);
  range.formulas = cells;
  const table = sheet.tables.add(range, true);
  table.name = item.table;
  for (const { column, list } of item.choices) {
    const body = sheet.getRangeByIndexes(1, column, cells.length - 1, 1);
    body.dataValidation.rule = { list: { inCellDropDown: true, source: list.join(",") } };
  }
  range.format.autofitColumns();
}
