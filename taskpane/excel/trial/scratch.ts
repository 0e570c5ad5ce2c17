import type { Cell } from "../../workbook/items";
import { batch, ExcelProblem, reading } from "../batch";
import { inParts } from "../inParts";
import { sameName } from "../rows/readTables";
import { strings } from "../../strings";

/** A cell as Excel gives it back: errors are texts such as `#VALUE!`. */
export type Read = string | number | boolean;

/** A sheet that was made to try things on. Everything here stays on it. */
export interface Scratch {
  readonly sheet: string;
  /** Writes values and formulas from a cell on, in parts, or all of it with one request. */
  enter(row: number, column: number, cells: readonly (readonly Cell[])[], atOnce?: boolean): Promise<void>;
  read(row: number, column: number, rows: number, columns: number): Promise<Read[][]>;
  readFormulas(row: number, column: number, rows: number, columns: number): Promise<Read[][]>;
  /** Makes a table of cells that stand there, the first row its headers. */
  addTable(name: string, row: number, column: number, rows: number, columns: number): Promise<void>;
  /** Rows of a table, its header row too. */
  rowsOf(table: string): Promise<number>;
  /** Gives a table so many rows, its header row too. */
  resize(table: string, row: number, column: number, rows: number, columns: number): Promise<void>;
  /** Does something with the sheet in a round trip of its own. */
  act(work: (sheet: Excel.Worksheet) => void): Promise<void>;
}

/** Makes an empty sheet behind the others; the one at the front stays there. */
export async function makeScratch(name: string): Promise<Scratch> {
  await batch(async (context, commit) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    if (worksheets.items.some((sheet) => sameName(sheet.name, name)))
      throw new ExcelProblem(strings.start.names.sheetTaken(name));
    worksheets.add(name);
    await commit();
  });
  return scratchOn(name);
}

function scratchOn(sheet: string): Scratch {
  const place = (context: Excel.RequestContext) => context.workbook.worksheets.getItem(sheet);
  const act = (work: (sheet: Excel.Worksheet, context: Excel.RequestContext) => void): Promise<void> =>
    batch(async (context, commit) => {
      work(place(context), context);
      await commit();
    });
  const readAs = (what: "values" | "formulas") => (row: number, column: number, rows: number, columns: number) =>
    reading(async (context) => {
      const range = place(context).getRangeByIndexes(row, column, rows, columns).load(what);
      await context.sync();
      return range[what] as Read[][];
    });
  return {
    sheet,
    act,
    read: readAs("values"),
    readFormulas: readAs("formulas"),
    enter: (row, column, cells, atOnce = false) =>
      batch(async (context, commit) => {
        let next = row;
        for (const part of atOnce ? [cells.map((line) => [...line])] : inParts(cells)) {
          place(context).getRangeByIndexes(next, column, part.length, part[0]!.length).formulas = part;
          await commit();
          next += part.length;
        }
      }),
    addTable: (name, row, column, rows, columns) =>
      act((own) => {
        own.tables.add(own.getRangeByIndexes(row, column, rows, columns), true).name = name;
      }),
    rowsOf: (table) =>
      reading(async (context) => {
        const range = context.workbook.tables.getItem(table).getRange().load("rowCount");
        await context.sync();
        return range.rowCount;
      }),
    resize: (table, row, column, rows, columns) =>
      act((own, context) =>
        context.workbook.tables.getItem(table).resize(own.getRangeByIndexes(row, column, rows, columns)),
      ),
  };
}
