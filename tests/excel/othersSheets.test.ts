/**
 * Every action of the pane that writes, on a sheet that somebody has protected and on a table that somebody has filtered:
 * through Microsoft's Office.js over the local workbook. What is not ours to write stays, and the words are true.
 */
import { TableColumnFilterTypeEnum } from "@univerjs/sheets-table";
import * as excel from "../../taskpane/excel";
import { strings } from "../../taskpane/strings";
import { appendRows } from "../../taskpane/workbook/appendRows";
import type { ItemName } from "../../taskpane/workbook/items";
import { namedTables } from "../../taskpane/workbook/namedTables";
import { findTable } from "../../workbench/office/table/tableEdits";
import { setUpSheets } from "../support/setUpSheets";
import { openLocalExcel, type LocalExcel } from "./support/localExcel";
import { protect } from "./support/protect";
import { stateOf } from "./support/state";

jest.setTimeout(120_000);

let local: LocalExcel;
afterEach(() => local.close());

const RUN = { Raceway: "EMT", Size: "3/4", Route: "up 10, east 8'" };
const ROWS = {
  Runs: ["A-1", "B-2", "C-3"].map((Run) => ({ Run, ...RUN })),
  Shoes: ["1/2", "3/4", "1"].map((Size) => ({ Raceway: "EMT", Size, Radius: 4, Deduct: 5 })),
  Stock: [
    { Raceway: "EMT", Size: "1/2", Length: 60 },
    { Raceway: "EMT", Size: "1", Length: 80 },
  ],
};

/** Our tables with a few rows each, and a column of somebody's own right of Runs. */
async function prepare(): Promise<void> {
  local = await openLocalExcel();
  await excel.setUp(setUpSheets(["Runs", "Shoes", "Stock"], { rows: ROWS }));
  await local.book.settled();
}

const read = async (name: ItemName) => (await excel.readTables([name]))[0]!;
const columnOf = (table: excel.TableCells, header: string) => table.column + table.cells[0]!.indexOf(header);
const placeOf = (table: excel.TableCells, row: number, header: string) => ({
  sheet: table.sheet,
  row: table.row + row,
  column: columnOf(table, header),
});

/** An action: on which sheet, what comes before it and what it does. */
interface Tried {
  readonly sheet: ItemName;
  first?(): Promise<unknown>;
  act(before: never): Promise<unknown>;
  /** What stands where afterwards. */
  readonly writes: Readonly<Record<string, string>>;
}

const seenOf = (table: excel.TableCells, row: number, header: string) => ({
  ...placeOf(table, row, header),
  value: table.cells[row]![columnOf(table, header) - table.column]!,
});

async function saveShoe(): Promise<excel.Replaced[]> {
  const shoes = await read("Shoes");
  const seen = [seenOf(shoes, 2, "Size"), seenOf(shoes, 2, "Radius")];
  return excel.replaceCells([{ ...placeOf(shoes, 2, "Radius"), cell: 4.625 }], seen);
}

const ACTIONS: Readonly<Record<string, Tried>> = {
  "save a shoe": { sheet: "Shoes", act: saveShoe, writes: { "Shoes!D3": "4.625" } },
  "take a shoe back": {
    sheet: "Shoes",
    first: saveShoe,
    act: (replaced: excel.Replaced[]) => excel.putBack(replaced, []),
    writes: { "Shoes!D3": "4" },
  },
  "write a route": {
    sheet: "Runs",
    act: async () => {
      const runs = await read("Runs");
      return excel.writeCells(placeOf(runs, 2, "Route"), [["up 4', east 9'"]], [seenOf(runs, 2, "Run")]);
    },
    writes: { "Runs!F3": "up 4', east 9'" },
  },
  "add a run": {
    sheet: "Runs",
    act: async () => {
      const runs = await read("Runs");
      const tables = namedTables(excel.defaultNames(), { Runs: runs });
      return appendRows(excel as never, "Runs", runs, [{ Run: "D-4", ...RUN, Quantity: 1 }], tables);
    },
    writes: { "Runs!A5": "D-4", "Runs!D5": "EMT", "Runs!E5": "3/4", "Runs!F5": RUN.Route, "Runs!G5": "1" },
  },
  "take rows in": {
    sheet: "Runs",
    first: async () => {
      await excel.writeCells({ sheet: "Runs", row: 4, column: 0 }, [["E-5", null, null, "EMT", "1/2", "east 9'"]], []);
      return read("Runs");
    },
    act: (runs: excel.TableCells) => excel.takeRowsIn(runs, 1),
    writes: { "Runs!A5": "E-5", "Runs!D5": "EMT", "Runs!E5": "1/2", "Runs!F5": "east 9'" },
  },
  "put a drop into Stock": {
    sheet: "Stock",
    act: async () => {
      const stock = await read("Stock");
      const cells = ["EMT", "1/2", 44];
      return excel.changeRows(
        stock,
        cells.map((cell, column) => ({ row: stock.cells.length, column, cell })),
      );
    },
    writes: { "Stock!A4": "EMT", "Stock!B4": "1/2", "Stock!C4": "44" },
  },
  "put a bend beside the runs": {
    sheet: "Runs",
    act: () => {
      const place = { sheet: "Runs", row: 1, column: 40 };
      return excel.writeBlock(place, { cells: [["Rise"], [6]], formats: [["@"], ["0.00"]], bold: [0] });
    },
    writes: { "Runs!AO2": "Rise", "Runs!AO3": "6" },
  },
};

/** Everything in the workbook, by sheet and cell. */
function contents(): Record<string, string> {
  const { sheets } = stateOf(local.book);
  return Object.fromEntries(
    Object.entries(sheets).flatMap(([sheet, cells]) =>
      cells.map((cell) => {
        const [, row, column, content] = /^(\d+),(\d+): (.*)$/s.exec(cell)!;
        return [`${sheet}!${letters(Number(column))}${Number(row) + 1}`, content!] as const;
      }),
    ),
  );
}
const letters = (column: number): string =>
  (column > 25 ? letters(Math.floor(column / 26) - 1) : "") + String.fromCharCode(65 + (column % 26));

/** The same as one text, tables and settings too. */
const everything = () => JSON.stringify(stateOf(local.book));

const problem = (action: Promise<unknown>) =>
  action.then(
    () => undefined,
    (error: unknown) => error as Error,
  );

describe.each(Object.entries(ACTIONS))("%s", (_, { sheet, first, act, writes }) => {
  test("on a protected sheet: nothing is written, it is said, and goes through once the sheet is open", async () => {
    await prepare();
    const given = (await first?.()) as never;
    const before = everything();
    const open = protect(local.book, sheet);
    const error = await problem(act(given));
    expect(error).toBeInstanceOf(excel.ExcelProblem);
    expect(error!.message).toContain(strings.excel.problems.AccessDenied!);
    expect(everything()).toBe(before);
    open();
    expect(await problem(act(given))).toBeUndefined();
    expect(contents()).toMatchObject(writes);
  });

  test("on a filtered table: no other cell changes, and what the filter hides stays hidden", async () => {
    await prepare();
    const given = (await first?.()) as never;
    const before = contents();
    await filter(sheet);
    const hidden = hiddenRows(sheet);
    expect(hidden.length).toBeGreaterThan(0);
    await act(given);
    await local.book.settled();
    const after = contents();
    const added = Object.fromEntries(Object.entries(after).filter(([at]) => !(at in before) && isFormulaOfRuns(at)));
    expect(after).toEqual({ ...before, ...writes, ...added });
    expect(hiddenRows(sheet)).toEqual(hidden);
  });
});

/** Filters our table by its second row: the rows that say anything else are hidden, the one that is written among them. */
async function filter(sheet: ItemName): Promise<void> {
  const column = sheet === "Runs" ? 0 : 1;
  const kept = String(local.book.sheet(sheet).cells(1, column).values[0]![0]);
  const { id } = findTable(local.book, sheet)!;
  await local.book.native.setTableFilter(id, column, { filterType: TableColumnFilterTypeEnum.manual, values: [kept] });
}

const hiddenRows = (sheet: ItemName): number[] => {
  const grid = local.book.sheet(sheet).native.getSheet();
  return [1, 2, 3, 4, 5].filter((row) => grid.getRowFiltered(row));
};

/** A new row of Runs gets the formulas of its table, in the columns that are worked out. */
const isFormulaOfRuns = (at: string): boolean => {
  const [, letters, row] = /^Runs!([A-Z]+)(\d+)$/.exec(at) ?? [];
  const header = String(contents()[`Runs!${letters}1`]);
  return row === "5" && ["Length in.", "Bends", "Degrees", "Check"].includes(header);
};
