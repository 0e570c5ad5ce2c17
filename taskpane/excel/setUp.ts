import type { Cell } from "../workbook/items";
import { batch } from "./batch";

/** A sheet to make with a table in it: header row first. */
export interface NewTable {
  sheet: string;
  table: string;
  cells: Cell[][];
  /** Number format of each cell, of the same shape; "@" keeps 1/2 from becoming a date. */
  formats: string[][];
  /** Allowed values of a column, by its zero-based place. */
  choices: { column: number; list: string[] }[];
}

/** A sheet to make with one formula that spills from A1. */
export interface NewResult {
  sheet: string;
  formula: string;
}

/**
 * Makes sheets that do not exist yet, all of them in one round trip. Every table gets its name before any cell gets a
 * formula: Excel refuses a formula that names a table it does not know.
 */
export function setUp(tables: readonly NewTable[], results: readonly NewResult[]): Promise<void> {
  return batch(async (context) => {
    const { worksheets } = context.workbook;
    const ranges = tables.map((item) => addTable(worksheets.add(item.sheet), item));
    tables.forEach((item, index) => fillTable(ranges[index] as Excel.Range, item));
    for (const { sheet, formula } of results) worksheets.add(sheet).getRange("A1").formulas = [[formula]];
    const first = tables[0];
    if (first) {
      const sheet = worksheets.getItem(first.sheet);
      sheet.activate();
      sheet.getRange("A2").select();
    }
    await context.sync();
  });
}

function addTable(sheet: Excel.Worksheet, { table, cells, formats, choices }: NewTable): Excel.Range {
  const columns = cells[0]?.length ?? 0;
  const range = sheet.getRangeByIndexes(0, 0, cells.length, columns);
  range.numberFormat = formats;
  sheet.getRangeByIndexes(0, 0, 1, columns).formulas = cells.slice(0, 1);
  sheet.tables.add(range, true).name = table;
  for (const { column, list } of choices) {
    const body = sheet.getRangeByIndexes(1, column, cells.length - 1, 1);
    body.dataValidation.rule = { list: { inCellDropDown: true, source: list.join(",") } };
  }
  return range;
}

function fillTable(range: Excel.Range, { cells }: NewTable): void {
  range.formulas = cells;
  range.format.autofitColumns();
}
