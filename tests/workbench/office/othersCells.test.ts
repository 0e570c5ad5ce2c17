/**
 * Other people's cells are theirs: what the pane writes into a workbook with columns, formulas and a filter of somebody's
 * own, and into one that was sorted between reading and writing.
 */
import { addRows, lookAt, putBack, replaceCells, takeBack, writeBlock, writeCells } from "../../../taskpane/excel";
import type { Book } from "../../../workbench/engine";
import { openOffice } from "./openOffice";

const SHOES = [
  ["Bought", "Raceway", "Size", "Radius", "Deduct", "Tag"],
  ["2019", "EMT", "one", 4, "=D2+1", "=B2&C2"],
  ["2021", "IMC", "two", 5, "=D3+1", "=B3&C3"],
];

/** A table of shoes in which Bought and Tag are somebody's own, and Deduct is a formula. */
async function withShoes(): Promise<Book> {
  const book = await openOffice();
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    sheet.getRange("A1:F3").formulas = SHOES;
    context.workbook.tables.add("Sheet1!A1:F3", true).name = "Shoes";
    await context.sync();
  });
  await book.settled();
  return book;
}

const formulasIn = (book: Book, address: string) => {
  const { formulas, values } = book.range(address);
  return formulas.map((row, at) => row.map((formula, column) => formula || values[at]![column]));
};
const at = (row: number, column: number, value: string | number) => ({ sheet: "Sheet1", row, column, value });
/** The row of EMT as it was read: the header over its radius, its own key, and the cells to be written. */
const seen = [at(0, 3, "Radius"), at(1, 1, "EMT"), at(1, 2, "one"), at(1, 3, 4), at(1, 4, 5)];
const edits = [
  { sheet: "Sheet1", row: 1, column: 3, cell: 4.125 },
  { sheet: "Sheet1", row: 1, column: 4, cell: 5.25 },
];

/** What a sort by the first column, newest first, leaves. */
async function sort(book: Book): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Sheet1").getRange("A2:F3").formulas = [
      ["2021", "IMC", "two", 5, "=D2+1", "=B2&C2"],
      ["2019", "EMT", "one", 4, "=D3+1", "=B3&C3"],
    ];
    await context.sync();
  });
  await book.settled();
}

const all = (book: Book) => formulasIn(book, "Sheet1!A1:F3");

test("saving a shoe writes its own cells and no other; Take back gives a formula back as one", async () => {
  const book = await withShoes();
  const before = all(book);
  const replaced = await replaceCells(edits, seen);
  const after = before.map((row) => [...row]);
  [after[1]![3], after[1]![4]] = [4.125, 5.25];
  expect(all(book)).toEqual(after);
  await putBack(replaced, seen.slice(0, 3));
  expect(all(book)).toEqual(before);
  expect(all(book)[1]![4]).toBe("=D2+1");
});

test("after a sort between reading and writing nothing is written, and it is said", async () => {
  const book = await withShoes();
  await sort(book);
  const before = all(book);
  await expect(replaceCells(edits, seen)).rejects.toThrow(/no longer|moved|since/i);
  await expect(writeCells({ sheet: "Sheet1", row: 1, column: 3 }, [[9]], seen)).rejects.toThrow(
    /no longer|moved|since/i,
  );
  expect(all(book)).toEqual(before);
});

test("Take back after a sort puts nothing into another shoe's row", async () => {
  const book = await withShoes();
  const replaced = await replaceCells(edits, seen);
  await sort(book);
  const before = all(book);
  await expect(putBack(replaced, seen.slice(0, 3))).rejects.toThrow(/no longer|moved|since/i);
  expect(all(book)).toEqual(before);
});

test("a row added leaves columns of somebody's own to them, formulas too, and a filter as it is", async () => {
  const book = await withShoes();
  const before = all(book);
  const hide = book.sheet("Sheet1").native;
  hide.hideRows(2, 1);
  await addRows("Shoes", [[null, "RMC", "three", 6, 8, null]]);
  await book.settled();
  expect(all(book)).toEqual(before);
  const [added] = formulasIn(book, "Sheet1!A4:F4");
  expect(added!.slice(0, 5)).toEqual([null, "RMC", "three", 6, 8]);
  expect([null, "=B4&C4"]).toContain(added![5]);
  expect(hide.getSheet().getRowVisible(2)).toBe(false);
  expect(hide.getSheet().getRowVisible(1)).toBe(true);
});

test("a bend goes into the sheet over what was looked at, and over nothing else", async () => {
  const book = await openOffice();
  const place = { sheet: "Sheet1", row: 4, column: 1 };
  const block = { cells: [["Rise", 6], ["Spacing", "=C5*2"]], formats: [["@", "0"], ["@", "0"]], bold: [0] }; // prettier-ignore
  const write = (address: string, cell: string) => book.range(address).setValues([[cell]]);

  write("Sheet1!C6", "mine");
  // Looked at and said so: then it is covered, and comes back.
  const looked = await lookAt(place, 2, 2);
  expect(looked).toMatchObject({ taken: 1, cells: [["", ""], ["", "mine"]] }); // prettier-ignore
  const before = await writeBlock(place, block, looked.cells);
  expect(formulasIn(book, "Sheet1!B5:C6")).toEqual([["Rise", 6], ["Spacing", "=C5*2"]]); // prettier-ignore
  await takeBack(before);
  expect(book.range("Sheet1!C6").values).toEqual([["mine"]]);

  // Written since it was looked at: it stays.
  write("Sheet1!B5", "theirs");
  await expect(writeBlock(place, block, looked.cells)).rejects.toThrow(/no longer|moved|since/i);
  await expect(writeBlock(place, block)).rejects.toThrow(/no longer|moved|since/i);
  expect(formulasIn(book, "Sheet1!B5:C6")).toEqual([["theirs", null], [null, "mine"]]); // prettier-ignore
});
