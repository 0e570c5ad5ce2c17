import type { Book } from "../../../workbench/engine";
import { later, openOffice } from "./openOffice";

const run = (change: (sheet: Excel.Worksheet, context: Excel.RequestContext) => void): Promise<void> =>
  Excel.run(async (context) => {
    change(context.workbook.worksheets.getItem("Sheet1"), context);
    await context.sync();
  });

const cell = (book: Book, address: string) => book.range(`Sheet1!${address}`).values[0]![0]!;

describe("cells take what is written as Excel takes it", () => {
  // From Excel's help, "Stop automatically changing numbers to dates": 12/2 becomes 2-Dec; cells formatted as text keep it.
  test("a fraction of a size becomes a date, unless the cell is a text cell", async () => {
    const book = await openOffice();
    await run((sheet) => {
      sheet.getRange("A2").numberFormat = [["@"]];
      sheet.getRange("A1:A2").formulas = [["3/4"], ["3/4"]];
    });
    expect(typeof cell(book, "A1")).toBe("number");
    expect(cell(book, "A2")).toBe("3/4");
  });
  // Common practice in Excel, no source.
  test.each([
    ["12", 12],
    ["1 1/2", 1.5],
    ["-2 1/4", -2.25],
    ["5%", 0.05],
    ["TRUE", true],
    ["'12", "12"],
    ["", null],
    ["EMT", "EMT"],
    ["1-1/2", "1-1/2"],
    [`3' 4-1/2"`, `3' 4-1/2"`],
    [7, 7],
    [false, false],
  ])("%j is kept as %j", async (given, kept) => {
    const book = await openOffice();
    await run((sheet) => {
      sheet.getRange("A1").values = [["before"]];
      sheet.getRange("A1").values = [[given]];
    });
    expect(cell(book, "A1")).toBe(kept);
  });
  test("a formula written into a text cell stays text", async () => {
    const book = await openOffice();
    await run((sheet) => {
      sheet.getRange("A1").numberFormat = [["@"]];
      sheet.getRange("A1").formulas = [["=1+1"]];
    });
    await book.settled();
    expect(cell(book, "A1")).toBe("=1+1");
    expect(book.range("Sheet1!A1").formulas).toEqual([[""]]);
  });
  test("null leaves a cell as it is; one value fills a range", async () => {
    const book = await openOffice();
    await run((sheet) => {
      sheet.getRange("A1:B2").values = 4 as never;
      sheet.getRange("A1:B1").values = [[null, 5]];
    });
    expect(book.range("Sheet1!A1:B2").values).toEqual([
      [4, 5],
      [4, 4],
    ]);
  });
  test("null leaves a formula the formula it is, and what it gives", async () => {
    const book = await openOffice();
    await run((sheet) => (sheet.getRange("A1:C1").formulas = [["=SUM(2,5)", "=A1*3", "old"]]));
    await run((sheet) => (sheet.getRange("A1:C1").formulas = [[null, null, "new"]] as never));
    await book.settled();
    expect(book.range("Sheet1!A1:C1").formulas).toEqual([["=SUM(2,5)", "=A1*3", ""]]);
    expect(book.range("Sheet1!A1:C1").values).toEqual([[7, 21, "new"]]);
  });

  test("a sheet is as large as Excel's: it grows to hold what is written", async () => {
    const book = await openOffice();
    await run((sheet) => (sheet.getRangeByIndexes(4000, 60, 1, 1).values = [["far"]]));
    expect(cell(book, "BI4001")).toBe("far");
  });
});

describe("ranges near a range", () => {
  test("offset, resized and single cells count from the range", async () => {
    await openOffice();
    const addresses = await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("C5:D6");
      const near = [range.getOffsetRange(2, -1), range.getResizedRange(1, 3), range.getCell(1, 0)];
      for (const each of near) each.load("address");
      await context.sync();
      return near.map(({ address }) => address);
    });
    expect(addresses).toEqual(["Sheet1!B7:C8", "Sheet1!C5:G7", "Sheet1!C6"]);
  });
  test("the used range begins at the first cell that holds something", async () => {
    const book = await openOffice();
    book.range("Sheet1!C4").setValues([["x"]]);
    book.range("Sheet1!E3").setValues([[1]]);
    const seen = await Excel.run(async (context) => {
      const used = context.workbook.worksheets
        .getItem("Sheet1")
        .getUsedRangeOrNullObject()
        .load("address,rowIndex,rowCount");
      await context.sync();
      return [used.address, used.rowIndex, used.rowCount];
    });
    expect(seen).toEqual(["Sheet1!C3:E4", 2, 2]);
  });
});

describe("looks and allowed values", () => {
  test("bold is read as it is: mixed is null", async () => {
    await openOffice();
    const seen = await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      sheet.getRange("A1:B1").format.font.bold = true;
      const fonts = ["A1:B1", "A1:A2", "A2"].map((address) => sheet.getRange(address).format.font.load("bold"));
      await context.sync();
      return fonts.map(({ bold }) => bold);
    });
    expect(seen).toEqual([true, null, false]);
  });
  test("a column's width in points, the size of letters and wrapped text are set and read back", async () => {
    const book = await openOffice();
    const seen = await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      const { format } = sheet.getRange("A1:B2");
      format.columnWidth = 72;
      format.font.size = 14;
      sheet.getRange("B2").format.wrapText = true;
      await context.sync();
      format.load("columnWidth,wrapText,font/size");
      const wrapped = sheet.getRange("B2").format.load("wrapText");
      await context.sync();
      return [format.columnWidth, format.font.size, format.wrapText, wrapped.wrapText];
    });
    expect(seen).toEqual([72, 14, null, true]);
    // An inch is 72 points, and 96 of the grid's pixels.
    expect(book.sheet("Sheet1").native.getColumnWidth(1)).toBe(96);
  });
  test("columns are made as wide as their words", async () => {
    const book = await openOffice();
    await run((sheet) => {
      const range = sheet.getRange("A1:B1");
      range.values = [["PVC-coated rigid metal conduit", "1"]];
      range.format.autofitColumns();
    });
    const { native } = book.sheet("Sheet1");
    expect(native.getColumnWidth(0)).toBeGreaterThan(2 * native.getColumnWidth(1));
  });
  test("a list to choose from is set, read back and cleared", async () => {
    await openOffice();
    const seen = await Excel.run(async (context) => {
      const validation = context.workbook.worksheets.getItem("Sheet1").getRange("B2:B9").dataValidation;
      validation.rule = { list: { inCellDropDown: true, source: "EMT,IMC" } };
      await context.sync();
      const again = context.workbook.worksheets.getItem("Sheet1").getRange("B4").dataValidation.load("rule");
      await context.sync();
      const { rule } = again;
      validation.clear();
      again.load("rule");
      await context.sync();
      return [rule, again.rule];
    });
    expect(seen).toEqual([{ list: { inCellDropDown: true, source: "EMT,IMC" } }, {}]);
  });
});

describe("undo", () => {
  test("all that one run writes is one step, also over several syncs", async () => {
    const book = await openOffice();
    book.range("Sheet1!A1").setValues([["by hand"]]);
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      sheet.getRange("A1:A2").values = [["one"], ["two"]];
      await context.sync();
      sheet.getRange("B1").formulas = [["=A1"]];
      sheet.getRange("B1").numberFormat = [["0.00"]];
      context.workbook.worksheets.add("Third");
      await context.sync();
    });
    expect(book.findSheet("Third")).not.toBeNull();
    await book.undo();
    await later();
    expect(book.range("Sheet1!A1:B2").values).toEqual([
      ["by hand", null],
      [null, null],
    ]);
    expect(book.findSheet("Third")).toBeNull();
    await book.redo();
    await book.settled();
    expect(book.range("Sheet1!A1:B2").values).toEqual([
      ["one", "one"],
      ["two", null],
    ]);
    expect(book.findSheet("Third")).not.toBeNull();
  });
  test("runs one after the other are steps of their own, and reading is none", async () => {
    const book = await openOffice();
    for (const value of ["first", "second"]) await run((sheet) => (sheet.getRange("A1").values = [[value]]));
    await run((sheet) => sheet.getRange("A1").load("values"));
    await book.undo();
    expect(cell(book, "A1")).toBe("first");
    await book.undo();
    expect(cell(book, "A1")).toBeNull();
  });
  test("runs that overlap do not mix their batches and do not fail", async () => {
    const book = await openOffice();
    await Promise.all(
      [1, 2, 3].map((number) =>
        run((sheet) => {
          sheet.getRange("A1").values = [[number]];
          sheet.getRange("B1").formulas = [["=A1"]];
          sheet.getRange("B1").load("values");
          sheet.getRangeByIndexes(number, 0, 1, 1).values = [[number]];
        }),
      ),
    );
    expect(book.range("Sheet1!A2:A4").values).toEqual([[1], [2], [3]]);
  });
  test("a run that fails closes its step", async () => {
    const book = await openOffice();
    const failing = Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").values = [["half"]];
      await context.sync();
      throw new Error("the pane's own");
    });
    await expect(failing).rejects.toThrow("the pane's own");
    await run((sheet) => (sheet.getRange("A1").values = [["whole"]]));
    await book.undo();
    expect(cell(book, "A1")).toBe("half");
  });
});
