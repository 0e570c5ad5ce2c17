import { CellValueType } from "@univerjs/core";
import type { Book } from "../../../workbench/engine";
import { later, openOffice } from "./openOffice";

/** A table of two runs whose third column counts the letters of the first, by formula; Size is text. */
async function withRuns(): Promise<Book> {
  const book = await openOffice();
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add("Runs");
    sheet.getRange("B2:B3").numberFormat = [["@"], ["@"]];
    const range = sheet.getRange("A1:C3");
    range.formulas = [
      ["Run", "Size", "Letters"],
      ["A-1", "1/2", "=LEN(A2)"],
      ["A-22", "3/4", "=LEN(A3)"],
    ];
    sheet.tables.add(range, true).name = "Runs";
    await context.sync();
  });
  await book.settled();
  book.sheet("Runs").activate();
  return book;
}

async function tableAddress(): Promise<string> {
  return Excel.run(async (context) => {
    const range = context.workbook.tables.getItem("Runs").getRange().load("address");
    await context.sync();
    return range.address;
  });
}

/** Writes as a paste does: cells of any shape, in one go. */
async function paste(book: Book, at: string, rows: readonly (readonly (string | number)[])[]): Promise<void> {
  const { row, column } = book.range(at).place;
  const cells = book.sheet("Runs").cells(row, column, rows.length, rows[0]!.length);
  cells.native.setValues(rows.map((line) => line.map((value) => ({ v: value, t: typeof value === "number" ? 2 : 1 }))));
  await later();
  await book.settled();
}

const shown = (book: Book) => book.sheet("Runs").used()!.values;

test("rows pasted directly under a table join it, with its formulas; blank rows among them too, those after them not", async () => {
  const book = await withRuns();
  await paste(book, "Runs!A4", [
    ["A-333", "1"],
    ["", ""],
    ["A-4444", "1/2"],
    ["", ""],
  ]);
  expect(await tableAddress()).toBe("Runs!A1:C6");
  expect(shown(book).slice(3)).toEqual([
    ["A-333", "1", 5],
    ["", "", 0],
    ["A-4444", "1/2", 6],
  ]);
});

test("a paste that begins in the table and goes on under it joins whole", async () => {
  const book = await withRuns();
  await paste(book, "Runs!A3", [["A-9"], ["A-10"], ["A-11"]]);
  expect(await tableAddress()).toBe("Runs!A1:C5");
  expect(
    shown(book)
      .slice(2)
      .map((row) => row[2]),
  ).toEqual([3, 4, 4]);
});

test("rows with a blank one above them do not join", async () => {
  const book = await withRuns();
  await paste(book, "Runs!A5", [["A-9", "1"]]);
  expect(await tableAddress()).toBe("Runs!A1:C3");
});

test("a size that was read as a date before it joined is the size again", async () => {
  const book = await withRuns();
  const cell = book.range("Runs!B4");
  // As the grid reads 3/4 in a cell without a format: the fourth of March.
  cell.native.setValues([[{ v: 46085, t: CellValueType.NUMBER, s: { n: { pattern: "m/d" } } }]]);
  await later();
  expect(book.range("Runs!B4").values).toEqual([["3/4"]]);
  expect(book.range("Runs!B4").numberFormats).toEqual([["@"]]);
});

test("what joined goes in one step of undo, formats too, and comes back in one", async () => {
  const book = await withRuns();
  const before = shown(book);
  await paste(book, "Runs!A4", [
    ["A-333", "1"],
    ["A-4444", "1/2"],
  ]);
  const after = shown(book);
  await book.undo();
  await later();
  expect(await tableAddress()).toBe("Runs!A1:C3");
  expect(shown(book)).toEqual(before);
  expect(
    book
      .range("Runs!B4:B5")
      .numberFormats.flat()
      .every((format) => format !== "@"),
  ).toBe(true);
  await book.redo();
  await later();
  await book.settled();
  expect(await tableAddress()).toBe("Runs!A1:C5");
  expect(shown(book)).toEqual(after);
});

test("a row inserted between rows gets the formulas, in one step of undo", async () => {
  const book = await withRuns();
  const before = shown(book);
  book.sheet("Runs").native.insertRowsAfter(1, 1);
  await later();
  await book.settled();
  expect(await tableAddress()).toBe("Runs!A1:C4");
  expect(book.range("Runs!C2:C4").formulas).toEqual([["=LEN(A2)"], ["=LEN(A3)"], ["=LEN(A4)"]]);
  await book.undo();
  await later();
  await book.settled();
  expect(shown(book)).toEqual(before);
  expect(await tableAddress()).toBe("Runs!A1:C3");
});

test("a table resized by an add-in takes in the rows under it, a blank one among them, with formulas", async () => {
  const book = await withRuns();
  await paste(book, "Runs!A5", [["A-55", "1"]]);
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Runs");
    context.workbook.tables.getItem("Runs").resize(sheet.getRange("A1:C5"));
    await context.sync();
  });
  await book.settled();
  expect(await tableAddress()).toBe("Runs!A1:C5");
  expect(shown(book).slice(3)).toEqual([
    [null, null, 0],
    ["A-55", "1", 4],
  ]);
});

test("a table resized across its headers is refused", async () => {
  await withRuns();
  const resize = Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Runs");
    context.workbook.tables.getItem("Runs").resize(sheet.getRange("A2:C5"));
    await context.sync();
  });
  await expect(resize).rejects.toMatchObject({ code: "InvalidArgument" });
});
