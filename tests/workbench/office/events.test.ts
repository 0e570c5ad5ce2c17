import type { Book } from "../../../workbench/engine";
import { later, openOffice } from "./openOffice";

/** Listens through Office and notes what is told. */
async function listening(): Promise<{ book: Book; told: string[]; stop: () => Promise<void> }> {
  const book = await openOffice();
  const told: string[] = [];
  const results = await Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    const changed = worksheets.onChanged.add(async ({ address, changeType, worksheetId }) => {
      told.push(`${changeType} ${worksheetId} ${address}`);
    });
    const selected = context.workbook.onSelectionChanged.add(async () => {
      told.push("selected");
    });
    await context.sync();
    return [changed, selected] as const;
  });
  const stop = async () => {
    for (const result of results) {
      await Excel.run(result.context as Excel.RequestContext, async (context) => {
        result.remove();
        await context.sync();
      });
    }
  };
  return { book, told, stop };
}

test("changes by hand, by an add-in and by undo are told, with their place", async () => {
  const { book, told } = await listening();
  book.range("'Second sheet'!B2:C3").setValues([
    [1, 2],
    [3, 4],
  ]);
  await later();
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Sheet1").getRange("D4").values = [["x"]];
    await context.sync();
  });
  await later();
  await book.undo();
  await later();
  expect(told).toEqual(["RangeEdited two B2:C3", "RangeEdited one D4", "RangeEdited one D4"]);
});

test("results of formulas and looks are no changes", async () => {
  const { book, told } = await listening();
  book.range("Sheet1!A1").setValues([["=B1*2"]]);
  await book.settled();
  book.range("Sheet1!B1").setValues([[4]]);
  await book.settled();
  await later();
  expect(told).toEqual(["RangeEdited one A1", "RangeEdited one B1"]);
  book.range("Sheet1!A1").native.setFontWeight("bold");
  await later();
  expect(told).toHaveLength(2);
});

test("a row put in is told", async () => {
  const { book, told } = await listening();
  book.range("Sheet1!A1:A3").setValues([[1], [2], [3]]);
  book.sheet("Sheet1").native.insertRowAfter(0);
  await later();
  expect(told.filter((line) => line.startsWith("Row"))).toEqual([expect.stringMatching(/^RowInserted one /)]);
});

test("a selection is told once, whoever selects", async () => {
  const { book, told } = await listening();
  book.range("Sheet1!C3").select();
  await later();
  expect(told).toEqual(["selected"]);
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Second sheet").getRange("A5:B6").select();
    await context.sync();
  });
  await later();
  expect(told.length).toBeGreaterThan(1);
  expect(book.selection()?.address).toBe("'Second sheet'!A5:B6");
});

test("the selection and its sheet are read where the person is", async () => {
  const { book } = await listening();
  book.range("'Second sheet'!D7").select();
  const read = await Excel.run(async (context) => {
    const range = context.workbook.getSelectedRange().load("rowIndex,columnIndex,worksheet/name");
    await context.sync();
    return [range.worksheet.name, range.rowIndex, range.columnIndex];
  });
  expect(read).toEqual(["Second sheet", 6, 3]);
});

test("after it is removed a handler is told nothing", async () => {
  const { book, told, stop } = await listening();
  await stop();
  book.range("Sheet1!A1").setValues([[1]]);
  book.range("Sheet1!C3").select();
  await later();
  expect(told).toEqual([]);
});
