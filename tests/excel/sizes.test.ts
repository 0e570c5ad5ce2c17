/** The limit of a request is really kept: what sends too much is seen, and refused as Excel on the web does. */
import { batch } from "../../taskpane/excel";
import { openLocalExcel, OURS, type LocalExcel } from "./support/localExcel";

let local: LocalExcel;
beforeEach(async () => (local = await openLocalExcel()));
afterEach(() => local.close());

const write = (rows: number) =>
  batch(async (context, commit) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    sheet.getRangeByIndexes(0, 0, rows, 1).formulas = Array.from({ length: rows }, () => ["x".repeat(10_000)]);
    await commit();
  });

test("4.2 MB in one request are seen to be too much", async () => {
  await write(420);
  expect(Math.max(...local.sizes)).toBeGreaterThan(OURS);
  expect(() => expect(Math.max(...local.sizes)).toBeLessThan(OURS)).toThrow();
});

test("more than 5 MB are refused whole, in words", async () => {
  await expect(write(600)).rejects.toThrow(
    "That is more than Excel takes at once. Take fewer rows or pieces. Nothing was changed.",
  );
  expect(local.book.sheet("Sheet1").range("A1").values).toEqual([[null]]);
});
