import { openOffice } from "./openOffice";

const refusedWith = (code: string) => expect.objectContaining({ name: "RichApi.Error", code });

/** What a batch throws. */
async function refusal(batch: (context: Excel.RequestContext) => Promise<unknown>): Promise<unknown> {
  return Excel.run(batch).then(
    () => "nothing was refused",
    (error: unknown) => error,
  );
}

describe("nothing can be read before load and sync", () => {
  test.each<[string, (context: Excel.RequestContext) => Promise<unknown>]>([
    [
      "without load",
      async (context) => {
        const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
        await context.sync();
        return range.values;
      },
    ],
    ["without sync", async (context) => context.workbook.getSelectedRange().load("rowIndex").rowIndex],
    [
      "when another property was loaded",
      async (context) => {
        const range = context.workbook.getSelectedRange().load("rowIndex");
        await context.sync();
        return range.columnIndex;
      },
    ],
    ["the items of a collection", async (context) => context.workbook.tables.load("items/name").items],
    [
      "of an item, what was not asked for",
      async (context) => {
        const { worksheets } = context.workbook;
        worksheets.load("items/name");
        await context.sync();
        return worksheets.items[0]!.id;
      },
    ],
    ["whether a null object is one", async (context) => context.workbook.tables.getItemOrNullObject("T").isNullObject],
    [
      "through another object that stands for the same cells",
      async (context) => {
        const sheet = context.workbook.worksheets.getItem("Sheet1");
        sheet.getRange("A1").load("values");
        const same = sheet.getRange("A1");
        await context.sync();
        return same.values;
      },
    ],
  ])("%s", async (_, batch) => {
    await openOffice();
    expect(await refusal(batch)).toEqual(refusedWith("PropertyNotLoaded"));
  });

  test("what is loaded and synced is there, whichever way it is asked for", async () => {
    const book = await openOffice();
    book.range("Sheet1!B2:C3").setValues([
      ["a", 1],
      [true, null],
    ]);
    const read = await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("sheet1");
      const ranges = ["values", ["values", "rowIndex"], { values: true, worksheet: { name: true } }].map((names) =>
        sheet.getRange("B2:C3").load(names as string),
      );
      const nested = sheet.getRange("B2").load("worksheet/name,format/font/bold");
      await context.sync();
      return {
        values: ranges.map((range) => range.values),
        row: ranges[1]!.rowIndex,
        sheet: [ranges[2]!.worksheet.name, nested.worksheet.name],
        bold: nested.format.font.bold,
      };
    });
    const values = [
      ["a", 1],
      [true, ""],
    ];
    expect(read).toEqual({ values: [values, values, values], row: 1, sheet: ["Sheet1", "Sheet1"], bold: false });
  });
});

describe("nothing is written before sync", () => {
  test("the cell is as it was until the sync, and reads back at once in the batch", async () => {
    const book = await openOffice();
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
      range.values = [["new"]];
      expect(range.values).toEqual([["new"]]);
      expect(book.range("Sheet1!A1").values).toEqual([[null]]);
      await context.sync();
      expect(book.range("Sheet1!A1").values).toEqual([["new"]]);
    });
  });

  test("a read that follows a write in the same batch sees what the formulas made of it", async () => {
    await openOffice();
    const values = await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      sheet.getRange("A1").values = [[20]];
      sheet.getRange("B1").formulas = [["=A1*2+2"]];
      const range = sheet.getRange("A1:B1").load("values,formulas");
      await context.sync();
      return [range.values, range.formulas];
    });
    expect(values).toEqual([[[20, 42]], [[20, "=A1*2+2"]]]);
  });

  test("after a refusal the rest of the batch is not done, and the next batch works", async () => {
    const book = await openOffice();
    const error = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Nowhere").getRange("A1").values = [[1]];
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").values = [[2]];
      await context.sync();
    });
    expect(error).toEqual(refusedWith("ItemNotFound"));
    expect(book.range("Sheet1!A1").values).toEqual([[null]]);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").values = [[3]];
      await context.sync();
    });
    expect(book.range("Sheet1!A1").values).toEqual([[3]]);
  });
});

describe("what is not there", () => {
  test("a null object is an answer and its properties are undefined", async () => {
    await openOffice();
    const seen = await Excel.run(async (context) => {
      const { worksheets, tables, settings } = context.workbook;
      const objects = [
        worksheets.getItemOrNullObject("Nowhere").load("name"),
        tables.getItemOrNullObject("Nowhere").load("name"),
        settings.getItemOrNullObject("nowhere").load("value"),
        worksheets.getItem("Sheet1").getUsedRangeOrNullObject(true).load("rowIndex"),
        worksheets.getItemOrNullObject("Sheet1").load("name"),
      ] as const;
      await context.sync();
      return {
        nulls: objects.map(({ isNullObject }) => isNullObject),
        rowIndex: objects[3].rowIndex,
        name: objects[4].name,
      };
    });
    expect(seen).toEqual({ nulls: [true, true, true, true, false], rowIndex: undefined, name: "Sheet1" });
  });

  test.each<[string, string, (workbook: Excel.Workbook) => void]>([
    ["a sheet", "ItemNotFound", (workbook) => workbook.worksheets.getItem("Nowhere")],
    ["a table", "ItemNotFound", (workbook) => workbook.tables.getItem("Nowhere")],
    ["a setting", "ItemNotFound", (workbook) => workbook.settings.getItem("nowhere")],
    ["an address", "InvalidArgument", (workbook) => workbook.worksheets.getItem("Sheet1").getRange("12X")],
    ["a row before the first", "InvalidArgument", (workbook) => workbook.worksheets.getItem("Sheet1").getCell(-1, 0)],
    ["a property", "InvalidArgument", (workbook) => workbook.getSelectedRange().load("colour")],
    [
      "room for the rows written",
      "InvalidArgument",
      (workbook) => (workbook.worksheets.getItem("Sheet1").getRange("A1:B2").values = [[1, 2]]),
    ],
    ["a second sheet of a name", "ItemAlreadyExists", (workbook) => workbook.worksheets.add("SHEET1")],
    ["a sheet named so", "InvalidArgument", (workbook) => workbook.worksheets.add("a/b")],
  ])("%s", async (_, code, ask) => {
    await openOffice();
    const error = await refusal(async (context) => {
      ask(context.workbook);
      await context.sync();
    });
    expect(error).toEqual(refusedWith(code));
  });

  test("a member the local page does not have is refused by name, not undefined", async () => {
    await openOffice();
    const error = await refusal(async (context) => context.workbook.getSelectedRange().hyperlink);
    expect(error).toEqual(refusedWith("ApiNotFound"));
    expect((error as Error).message).toContain("Range.hyperlink");
  });
});
