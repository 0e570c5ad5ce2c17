import { setUpSheets } from "../support/setUpSheets";
import * as excel from "../../taskpane/excel";
import { FakeBook } from "./support/fakeBook";
import { useFakeExcel } from "./support/fakeExcel";

/** A workbook with many tables: round trips must not grow with them. */
function bookOf(tables: number): FakeBook {
  const book = new FakeBook();
  for (let number = 1; number <= tables; number++) {
    const sheet = book.addSheet(`S${number}`, [
      ["Item", "Price"],
      [`part ${number}`, number],
    ]);
    book.addTable(`T${number}`, sheet, 0, 0, 2, 2);
  }
  return useFakeExcel(book);
}

const syncsOf = async (book: FakeBook, body: () => Promise<unknown>): Promise<number> => {
  const before = book.syncs;
  await body();
  return book.syncs - before;
};

const TABLE = setUpSheets(["Prices"])[0]!;

test.each([
  ["contents", (_: number) => excel.readContents(), 2],
  ["tables", (count: number) => excel.readTables(Array.from({ length: count }, (_, n) => `T${n + 1}`)), 2],
  ["settings", (_: number) => excel.readSettings(["a", "b", "c"]), 1],
  [
    "set-up",
    (count: number) =>
      excel.setUp(Array.from({ length: count }, (_, n) => ({ ...TABLE, sheet: `N${n}`, table: `N${n}` }))),
    2,
  ],
])("%s takes the same round trips for 2 tables and for 40", async (_, body, expected) => {
  for (const count of [2, 40]) {
    const book = bookOf(count);
    expect(await syncsOf(book, () => body(count))).toBe(expected);
  }
});

test("tables are found whatever the case of their name; one that is not there is undefined", async () => {
  bookOf(2);
  const [second, none] = await excel.readTables(["t2", "Nowhere"]);
  expect(second).toEqual({
    name: "T2",
    sheet: "S2",
    row: 0,
    column: 0,
    cells: [
      ["Item", "Price"],
      ["part 2", 2],
    ],
  });
  expect(none).toBeUndefined();
});

test("a property that was not loaded cannot be read: the stand-in keeps Excel's discipline", async () => {
  bookOf(1);
  const unloaded = Excel.run(async (context) => {
    const range = context.workbook.getSelectedRange();
    await context.sync();
    return range.rowIndex;
  });
  await expect(unloaded).rejects.toThrow("rowIndex was not loaded");
});

test("a sheet that is there already is not replaced", async () => {
  const book = bookOf(1);
  const again = excel.setUp([{ ...TABLE, sheet: "S1", table: "Other" }]);
  await expect(again).rejects.toThrow("There is a sheet named S1 already.");
  expect(book.sheet("S1").at(0, 0)).toBe("Item");
});

test("handlers stop when they are asked to", async () => {
  const book = bookOf(1);
  let told = 0;
  const stop = await excel.onSelection(() => told++);
  book.select(book.sheet("S1"), 1, 1);
  await stop();
  book.select(book.sheet("S1"), 2, 1);
  expect(told).toBe(1);
});
