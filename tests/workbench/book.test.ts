import type { Book } from "../../workbench/engine";
import type { HeadlessBook } from "../../workbench/engine/headless";
import { openProbe } from "./probe";

let open: HeadlessBook;
let book: Book;

beforeEach(async () => {
  open = await openProbe({ A1: 2, B1: "=A1*3", "'Second sheet'!A1": "other" });
  book = open.book;
});

afterEach(() => open.close());

test("sheets are listed, found in any case, added, renamed and deleted", () => {
  expect(book.sheets().map(({ name }) => name)).toEqual(["Sheet1", "Second sheet"]);
  expect(book.findSheet("SECOND SHEET")?.name).toBe("Second sheet");
  expect(book.findSheet("none")).toBeNull();
  expect(() => book.sheet("none")).toThrow("There is no sheet named none.");
  const added = book.addSheet("Third");
  expect(() => book.addSheet("third")).toThrow("There is a sheet named third already.");
  added.rename("Renamed");
  expect(book.sheets().map(({ name }) => name)).toContain("Renamed");
  book.deleteSheet(added);
  expect(book.findSheet("Renamed")).toBeNull();
});

test("values are written as they are: text stays text, a formula computes, null empties", async () => {
  const range = book.range("C1:G1");
  range.setValues([["1/2", true, 0.1, "=A1+1", null]]);
  await book.settled();
  expect(range.values).toEqual([["1/2", true, 0.1, 3, null]]);
  expect(range.formulas).toEqual([["", "", "", "=A1+1", ""]]);
  range.setValues([[null, "", null, 7, null]]);
  await book.settled();
  expect(range.values).toEqual([[null, null, null, 7, null]]);
  expect(range.formulas).toEqual([["", "", "", "", ""]]);
});

test("a block of the wrong shape is refused", () => {
  expect(() => book.range("C1:D2").setValues([[1, 2]])).toThrow("2 × 2 cells; got 1 × 2");
});

test("number formats are read and written; values stay exact", () => {
  const range = book.range("C1");
  range.setValues([[1 / 3]]);
  range.setNumberFormat("0.00");
  expect(range.numberFormats).toEqual([["0.00"]]);
  expect(range.texts).toEqual([["0.33"]]);
  expect(range.values).toEqual([[1 / 3]]);
});

test("a batch is undone as one step", async () => {
  await book.batch(() => {
    book.range("A1").setValues([[5]]);
    book.range("A2").setValues([[6]]);
  });
  await book.undo();
  await book.settled();
  expect(book.range("A1:B1").values).toEqual([[2, 6]]);
  expect(book.range("A2").values).toEqual([[null]]);
  await book.redo();
  await book.settled();
  expect(book.range("A1:B1").values).toEqual([[5, 15]]);
});

test("a selection made by code is told", () => {
  const told: (string | undefined)[] = [];
  const stop = book.onSelection((selection) => told.push(selection?.address));
  book.range("'Second sheet'!B2:C3").select();
  stop();
  book.range("Sheet1!A1").select();
  expect(told.at(-1)).toBe("'Second sheet'!B2:C3");
});

test("changes are told, results of formulas are not", async () => {
  let changes = 0;
  book.onChange(() => (changes += 1));
  book.calculation.recalculateAll();
  await book.settled();
  expect(changes).toBe(0);
  book.range("A1").setValues([[9]]);
  expect(changes).toBeGreaterThan(0);
});

test("a snapshot opens again with values, formulas and formats", () => {
  book.range("C1").setNumberFormat("0.0");
  const { sheets } = book.snapshot();
  expect(sheets.one?.cellData?.[0]?.[1]).toMatchObject({ f: "=A1*3" });
  expect(sheets.two?.cellData?.[0]?.[0]).toMatchObject({ v: "other" });
});

test("the used range counts spilled cells", async () => {
  const sheet = book.addSheet("Spill");
  expect(sheet.used()).toBeNull();
  sheet.range("B2").setFormula("=PROBE.COUNTDOWN(3)");
  await book.settled();
  expect(sheet.used()?.place).toEqual({ row: 0, column: 0, rows: 4, columns: 3 });
});

test("a lookup in a spill sees the new values after the spill changed", async () => {
  book.range("D1").setFormula("=PROBE.COUNTDOWN(A1)");
  book.range("G1").setFormula("=MATCH(1,D:D,0)");
  book.range("G2").setFormula('=COUNTIF(E:E,"row*")');
  await book.settled();
  expect(book.range("G1:G2").values).toEqual([[2], [2]]);
  book.range("A1").setValues([[4]]);
  await book.settled();
  expect(book.range("G1:G2").values).toEqual([[4], [4]]);
});
