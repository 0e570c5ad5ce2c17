import type { Book, CellValue } from "../../../workbench/engine";
import { later, openOffice } from "./openOffice";

/** A sheet "Runs" with a table of the same name, two runs in it, and a formula elsewhere that reads it. */
async function withRuns(): Promise<Book> {
  const book = await openOffice();
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add("Runs");
    const range = sheet.getRange("B2:C4");
    sheet.getRange("C3:C4").numberFormat = [["@"], ["@"]];
    range.formulas = [
      ["Run", "Size"],
      ["A-1", "1/2"],
      ["A-2", "3/4"],
    ];
    sheet.tables.add(range, true).name = "Runs";
    sheet.getRange("C3:C4").dataValidation.rule = { list: { inCellDropDown: true, source: "1/2,3/4,1" } };
    context.workbook.worksheets.getItem("Sheet1").getRange("A1:A3").formulas = [
      ["=PROBE.SEEN.ROWS(Runs[#All])"],
      ["=PROBE.SEEN.ROWS(Runs[Size])"],
      ["=PROBE.SEEN.ROWS(Runs)"],
    ];
    await context.sync();
  });
  await book.settled();
  return book;
}

const seen = (book: Book): unknown[] =>
  book.range("Sheet1!A1:A3").values.map(([text]) => JSON.parse(String(text)) as unknown);

const add = (rows: CellValue[][]): Promise<void> =>
  Excel.run(async (context) => {
    context.workbook.tables.getItem("Runs").rows.add(undefined, rows as string[][]);
    await context.sync();
  });

test("formulas read the whole table, a column, and the body", async () => {
  const book = await withRuns();
  expect(seen(book)).toEqual([
    [
      ["Run", "Size"],
      ["A-1", "1/2"],
      ["A-2", "3/4"],
    ],
    [["1/2"], ["3/4"]],
    [
      ["A-1", "1/2"],
      ["A-2", "3/4"],
    ],
  ]);
});

test("an edit inside the table and a row added under it are followed", async () => {
  const book = await withRuns();
  book.range("Runs!B3").setValues([["A-9"]]);
  await add([["A-3", "1/2"]]);
  await book.settled();
  expect(seen(book)[0]).toEqual([
    ["Run", "Size"],
    ["A-9", "1/2"],
    ["A-2", "3/4"],
    ["A-3", "1/2"],
  ]);
});

test("a table that has grown stays grown, for formulas there and for the same formula written anew", async () => {
  const book = await withRuns();
  // The engine keeps formulas longer than 64 characters another way.
  const long = '=ROWS(Runs[#All])+LEN("a long text that makes this formula longer than sixty-four")*0';
  book.range("'Second sheet'!B1").setFormula(long);
  await book.settled();
  book.calculation.recalculateAll();
  await book.settled();
  await add([["A-3", "1"]]);
  await book.settled();
  book.range("'Second sheet'!A1").setFormula("=PROBE.SEEN.ROWS(Runs[Size])");
  book.range("'Second sheet'!A2").setFormula("=ROWS(Runs)");
  book.range("'Second sheet'!A3").setFormula(long);
  book.calculation.recalculateAll();
  await book.settled();
  expect(seen(book)[1]).toEqual([["1/2"], ["3/4"], ["1"]]);
  expect(book.range("'Second sheet'!A1:A3").values).toEqual([['[["1/2"],["3/4"],["1"]]'], [3], [4]]);
});

test("added rows keep the columns' text format and lists to choose from", async () => {
  const book = await withRuns();
  await add([
    ["A-3", "1/2"],
    ["A-4", "1"],
  ]);
  expect(book.range("Runs!C5:C6").values).toEqual([["1/2"], ["1"]]);
  expect(book.range("Runs!C5:C6").numberFormats).toEqual([["@"], ["@"]]);
  const rule = await Excel.run(async (context) => {
    const validation = context.workbook.worksheets.getItem("Runs").getRange("C6").dataValidation.load("rule");
    await context.sync();
    return validation.rule;
  });
  expect(rule).toEqual({ list: { inCellDropDown: true, source: "1/2,3/4,1" } });
});

test("what lies under a table moves down and is not overwritten; what lies beside it stays", async () => {
  const book = await withRuns();
  book.range("Runs!B6:E6").setValues([["mine", "too", null, "beside"]]);
  await add([
    ["A-3", "1"],
    ["A-4", "1"],
  ]);
  await book.settled();
  expect(book.range("Runs!B4:E8").values).toEqual([
    ["A-2", "3/4", null, null],
    ["A-3", "1", null, null],
    ["A-4", "1", null, "beside"],
    [null, null, null, null],
    ["mine", "too", null, null],
  ]);
  expect(seen(book)[2]).toEqual([
    ["A-1", "1/2"],
    ["A-2", "3/4"],
    ["A-3", "1"],
    ["A-4", "1"],
  ]);
});

test("a row typed under a table becomes part of it, with the columns' formulas; one typed elsewhere does not", async () => {
  const book = await withRuns();
  book.range("Runs!C3:C4").setValues([['=B3&"!"'], ['=B4&"!"']]);
  book.range("Runs!B6").setValues([["not yet"]]);
  await later();
  expect(book.native.getTableList()[0]!.range.endRow).toBe(3);
  book.range("Runs!B5").setValues([["A-3"]]);
  await later();
  await book.settled();
  expect(book.native.getTableList()[0]!.range.endRow).toBe(4);
  expect(book.range("Runs!B5:C5").formulas).toEqual([["", '=B5&"!"']]);
  expect(seen(book)[1]).toEqual([["A-1!"], ["A-2!"], ["A-3!"]]);
  expect(book.range("Runs!C5").numberFormats).toEqual([["@"]]);
  await book.undo();
  expect(book.native.getTableList()[0]!.range.endRow).toBe(3);
  // One step: what was typed goes with the row it made.
  expect(book.range("Runs!B5:C5").values).toEqual([[null, null]]);
});

test("undo takes an added row out again, and the formulas follow", async () => {
  const book = await withRuns();
  await add([["A-3", "1"]]);
  await book.undo();
  await book.settled();
  expect(seen(book)[1]).toEqual([["1/2"], ["3/4"]]);
  expect(book.range("Runs!B5:C5").values).toEqual([[null, null]]);
});

test("undo takes the sheet and its table away, redo brings both back", async () => {
  const book = await withRuns();
  await book.undo();
  await book.settled();
  expect(book.findSheet("Runs")).toBeNull();
  expect(book.native.getTableList()).toEqual([]);
  await book.redo();
  await book.settled();
  expect(book.native.getTableList()[0]).toMatchObject({ name: "Runs" });
  expect(seen(book)[1]).toEqual([["1/2"], ["3/4"]]);
});

test("a table's parts, its sheet and its rows are read", async () => {
  await withRuns();
  const read = await Excel.run(async (context) => {
    const { tables } = context.workbook;
    tables.load("items/name");
    const table = tables.getItem("RUNS");
    const parts = [table.getRange(), table.getHeaderRowRange(), table.getDataBodyRange()];
    for (const part of parts) part.load("address");
    const sheet = table.worksheet.load("name");
    const rows = table.rows.load("count");
    await context.sync();
    return [tables.items.map(({ name }) => name), parts.map(({ address }) => address), sheet.name, rows.count];
  });
  expect(read).toEqual([["Runs"], ["Runs!B2:C4", "Runs!B2:C2", "Runs!B3:C4"], "Runs", 2]);
});

test("formulas follow when a table is renamed", async () => {
  const book = await withRuns();
  await Excel.run(async (context) => {
    context.workbook.tables.getItem("Runs").name = "Feeders";
    await context.sync();
  });
  await book.settled();
  expect(book.range("Sheet1!A2").formulas).toEqual([["=PROBE.SEEN.ROWS(Feeders[Size])"]]);
  expect(seen(book)[1]).toEqual([["1/2"], ["3/4"]]);
});

test("the workbook opens again with its table, and formulas still follow", async () => {
  const book = await withRuns();
  const saved = JSON.parse(JSON.stringify(book.snapshot())) as ReturnType<Book["snapshot"]>;
  const again = await openOffice(saved);
  await add([["A-3", "1"]]);
  await again.settled();
  expect(seen(again)[1]).toEqual([["1/2"], ["3/4"], ["1"]]);
});

test.each<[string, string, (context: Excel.RequestContext) => void]>([
  ["a name that is taken", "InvalidArgument", ({ workbook }) => nameNew(workbook, "runs")],
  ["a name that is a cell", "InvalidArgument", ({ workbook }) => nameNew(workbook, "AB12")],
  ["a name with a blank", "InvalidArgument", ({ workbook }) => nameNew(workbook, "My runs")],
  [
    "a table over another",
    "InvalidArgument",
    ({ workbook }) => workbook.tables.add(workbook.worksheets.getItem("Runs").getRange("C4:D9"), true),
  ],
  [
    "a row of another width",
    "InvalidArgument",
    ({ workbook }) => workbook.tables.getItem("Runs").rows.add(undefined, [["A-3"]]),
  ],
])("%s is refused and nothing changes", async (_, code, ask) => {
  const book = await withRuns();
  const before = book.native.getTableList().find(({ name }) => name === "Runs");
  const asking = Excel.run(async (context) => {
    ask(context);
    await context.sync();
  });
  await expect(asking).rejects.toEqual(expect.objectContaining({ code }));
  expect(book.native.getTableList().find(({ name }) => name === "Runs")).toEqual(before);
});

function nameNew(workbook: Excel.Workbook, name: string): void {
  const sheet = workbook.worksheets.getItem("Second sheet");
  sheet.getRange("A1:A2").values = [["Head"], [1]];
  sheet.tables.add("A1:A2", true).name = name;
}
