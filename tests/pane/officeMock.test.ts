/** The calls to Excel against Microsoft's own mock, which refuses a property that was not loaded and synced. */
import { OfficeMockObject } from "office-addin-mock";
import { batch, ExcelProblem, lookAt, readSelection, writeCells } from "../../taskpane/excel";

/** A workbook with one sheet; every range asked for is the same one. */
function mockExcel() {
  const asked: unknown[][] = [];
  const range = {
    rowIndex: 4,
    columnIndex: 2,
    formulas: [
      ["", "=A1"],
      ["taken", ""],
    ],
    worksheet: { name: "Notes" },
  };
  const mock = new OfficeMockObject({
    host: "excel",
    context: {
      workbook: {
        range,
        getSelectedRange() {
          return this.range;
        },
        worksheets: {
          sheet: {
            range,
            used: { isNullObject: false, rowIndex: 1, rowCount: 6 },
            getRangeByIndexes(...place: number[]) {
              asked.push(place);
              return this.range;
            },
            getUsedRangeOrNullObject() {
              return this.used;
            },
          },
          getItem(name: string) {
            asked.push([name]);
            return this.sheet;
          },
        },
        tables: {
          table: { rows: { add: (...added: unknown[]) => asked.push(added) } },
          getItem(name: string) {
            asked.push([name]);
            return this.table;
          },
        },
      },
    },
    async run(this: { context: unknown }, ...given: unknown[]) {
      return (given.at(-1) as (context: unknown) => Promise<unknown>)(this.context);
    },
  });
  Object.assign(globalThis, { Excel: mock });
  return { mock, asked };
}

test("the selection is read with its sheet", async () => {
  mockExcel();
  expect(await readSelection()).toEqual({ sheet: "Notes", row: 4, column: 2 });
});

test("taken cells are counted, and the first free row is two below what is used", async () => {
  const { mock, asked } = mockExcel();
  // isNullObject is known without a load in Excel; the mock wants it loaded.
  (
    mock as unknown as { context: { workbook: { worksheets: { sheet: OfficeMockObject } } } }
  ).context.workbook.worksheets.sheet.load("used/isNullObject");
  expect(await lookAt({ sheet: "Notes", row: 4, column: 2 }, 2, 2)).toMatchObject({ taken: 2, freeRow: 8 });
  expect(asked).toEqual([["Notes"], [4, 2, 2, 2]]);
});

test("cells are written in their place", async () => {
  const { mock, asked } = mockExcel();
  await writeCells({ sheet: "Notes", row: 3, column: 1 }, [["up 4'", 2]], []);
  expect(asked).toEqual([["Notes"], [3, 1, 1, 2]]);
  const { range } = (
    mock as unknown as { context: { workbook: { worksheets: { sheet: { range: { formulas: unknown } } } } } }
  ).context.workbook.worksheets.sheet;
  expect(range.formulas).toEqual([["up 4'", 2]]);
});

test("what Excel refuses is told in words, with what to do", async () => {
  mockExcel();
  const refused = batch(async () => {
    throw Object.assign(new Error("The workbook is busy"), { code: "InvalidOperationInCellEditMode" });
  });
  await expect(refused).rejects.toThrow(ExcelProblem);
  await expect(refused).rejects.toThrow(/Press Enter or Esc in the sheet.*Nothing was changed\.$/);
});
