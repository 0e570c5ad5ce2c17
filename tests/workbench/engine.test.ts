import type { Book, CellValue } from "../../workbench/engine";
import type { HeadlessBook } from "../../workbench/engine/headless";
import { openProbe } from "./probe";

let open: HeadlessBook | undefined;

afterEach(() => {
  open?.close();
  open = undefined;
});

async function workbook(cells: Record<string, CellValue>): Promise<Book> {
  open = await openProbe(cells);
  return open.book;
}

async function valueOf(formula: string, cells: Record<string, CellValue> = {}): Promise<CellValue> {
  const book = await workbook({ ...cells, T50: formula });
  return book.range("T50").values[0]![0]!;
}

describe("arguments reach a function the way Excel hands them over", () => {
  test("a text stays text: no dates, no percentages", async () => {
    expect(await valueOf('=PROBE.SEEN("3/8","5%","007")')).toBe('["3/8","5%","007"]');
  });
  test("an omitted argument and a blank cell are null", async () => {
    expect(await valueOf("=PROBE.SEEN(1,,A9)")).toBe("[1,null,null]");
    open?.close();
    expect(await valueOf("=PROBE.SEEN(1)")).toBe("[1,null,null]");
  });
  test("numbers, booleans and doubled quotes", async () => {
    expect(await valueOf('=PROBE.SEEN(-2.5,TRUE,"3\' 4-1/2""")')).toBe('[-2.5,true,"3\' 4-1/2\\""]');
  });
  test("a range is rows of columns, blanks null, errors kept in their place", async () => {
    const cells = { A1: "Size", B1: "Rise", A2: "1/2", B2: 6, A3: true, B3: "=1/0" };
    expect(await valueOf("=PROBE.SEEN.ROWS(A1:C3)", cells)).toBe(
      '[["Size","Rise",null],["1/2",6,null],[true,"#DIV/0!",null]]',
    );
  });
  test("a range on another sheet, with blanks in its name", async () => {
    expect(await valueOf("=PROBE.SEEN.ROWS('Second sheet'!B2:B3)", { "'Second sheet'!B3": 7 })).toBe("[[null],[7]]");
  });
  test("whole columns end at the last used cell", async () => {
    expect(await valueOf("=PROBE.SEEN.ROWS(A:B)", { A1: "x", B3: 3 })).toBe('[["x",null],[null,null],[null,3]]');
  });
  test("a spilled range is seen in full", async () => {
    expect(await valueOf("=PROBE.SEEN.ROWS(A1:B2)", { A1: "=PROBE.COUNTDOWN(2)" })).toBe('[[2,"row 1"],[1,"row 2"]]');
  });
  test("an array constant keeps commas, semicolons and fractions inside its texts", async () => {
    expect(await valueOf('=PROBE.SEEN.ROWS({"Run","Route";"A-1","up 4\', east 3; north 1/2"})')).toBe(
      '[["Run","Route"],["A-1","up 4\', east 3; north 1/2"]]',
    );
  });
  test("an array constant holds numbers, booleans, fractions as text and doubled quotes", async () => {
    expect(await valueOf('=PROBE.SEEN.ROWS({1,-2.5;TRUE,"1/2";"4"" x","5%"})')).toBe(
      '[[1,-2.5],[true,"1/2"],["4\\" x","5%"]]',
    );
  });
  test("repeated arguments come as one list", async () => {
    expect(await valueOf('=PROBE.SEEN.LIST(1,"b",3)')).toBe('[1,"b",3]');
  });
  test("a range given for a single value is worked through cell by cell", async () => {
    const book = await workbook({ A1: 4, A2: 5, C1: "=PROBE.SEEN(A1:A2,9)" });
    expect(book.range("C1:C2").values).toEqual([["[4,9,null]"], ["[5,9,null]"]]);
  });
  test("too many arguments are refused with the usage", async () => {
    const book = await workbook({ A1: "=PROBE.SEEN(1,2,3,4)" });
    expect(book.range("A1").errors[0]![0]).toEqual({
      code: "#VALUE!",
      message: "PROBE.SEEN(value, [more], [more]) was given 4 arguments.",
    });
  });
});

describe("answers come out exact and as they are", () => {
  test("a number keeps every bit", async () => {
    expect(await valueOf("=PROBE.THIRD()")).toBe(1 / 3);
  });
  test("texts that look like dates stay texts, also in a spill", async () => {
    const book = await workbook({ A1: "=PROBE.FRACTION()" });
    expect(book.range("A1:B1").values).toEqual([["3/8", "5%"]]);
  });
  test("functions nest in built-in ones and in each other", async () => {
    expect(await valueOf("=SUM(PROBE.COUNTDOWN(4))")).toBe(10);
    open?.close();
    expect(await valueOf("=ROUND(PROBE.THIRD()*300,1)")).toBe(100);
  });
  test("nothing shows as 0, as in Excel; an empty text stays empty", async () => {
    const book = await workbook({ A1: "=PROBE.NOTHING()" });
    expect(book.range("A1:B1").values).toEqual([[0, ""]]);
  });
  test("a lower-case name works", async () => {
    expect(await valueOf("=probe.third()")).toBe(1 / 3);
  });
});

describe("errors keep their words", () => {
  test.each([
    ["=PROBE.REFUSE(7)", "#VALUE!", "value must not be 7."],
    ["=PROBE.REFUSE(7)+1", "#VALUE!", "value must not be 7."],
    ["=PROBE.CRASH()", "#VALUE!", "The function failed: a fault"],
    ["=PROBE.LATE()", "#VALUE!", "This page runs only functions that answer at once."],
    ["=PROBE.NAN()", "#NUM!", "The function returned NaN."],
    ["=PROBE.SEEN.ROWS(Nowhere!A1:A2)", "#REF!", "There is no sheet named Nowhere."],
    ["=1/0", "#DIV/0!", "The formula divides by zero."],
  ])("%s", async (formula, code, message) => {
    const book = await workbook({ A1: formula });
    expect(book.range("A1").errors[0]![0]).toEqual({ code, message });
  });
  test("one bad cell of a spilled table has its own message", async () => {
    const book = await workbook({ A1: "=PROBE.HALF.BAD()" });
    expect(book.range("A1:B1").errors).toEqual([[null, { code: "#N/A", message: "no such row." }]]);
  });
  test("the message goes when the formula is mended", async () => {
    const book = await workbook({ A1: "=PROBE.REFUSE(7)" });
    book.range("A1").setFormula("=PROBE.THIRD()");
    await book.settled();
    expect(book.range("A1").errors).toEqual([[null]]);
    expect(book.range("A1").values).toEqual([[1 / 3]]);
  });
  test("a crash stops no other formula, now or later", async () => {
    const book = await workbook({ A1: "=PROBE.CRASH()", A2: "=PROBE.LATE()", A3: "=A4*2", A4: 5 });
    expect(book.range("A3").values).toEqual([[10]]);
    book.range("A4").setValues([[6]]);
    await book.settled();
    expect(book.range("A3").values).toEqual([[12]]);
  });
});

describe("spills", () => {
  const cells = { A1: 4, B1: "=PROBE.COUNTDOWN(A1)", E1: "=SUM(B1:B9)", E2: "=B4", E3: "=COUNT(B:B)" };

  test("dependents follow when a spill shrinks, and nothing stale stays", async () => {
    const book = await workbook(cells);
    expect(book.range("E1:E3").values).toEqual([[10], [1], [4]]);
    book.range("A1").setValues([[2]]);
    await book.settled();
    expect(book.range("B1:C4").values).toEqual([
      [2, "row 1"],
      [1, "row 2"],
      [null, null],
      [null, null],
    ]);
    expect(book.range("E1").values).toEqual([[3]]);
    expect(book.range("E2").values).toEqual([[0]]);
    expect(book.range("E3").values).toEqual([[2]]);
  });
  test("dependents follow when a spill grows", async () => {
    const book = await workbook(cells);
    book.range("A1").setValues([[6]]);
    await book.settled();
    expect(book.range("E1:E3").values).toEqual([[21], [3], [6]]);
  });
  test("dependents follow when the formula is cleared", async () => {
    const book = await workbook(cells);
    book.range("B1").clear();
    await book.settled();
    expect(book.range("E1:E3").values).toEqual([[0], [0], [0]]);
    expect(book.range("B1:B4").values).toEqual([[null], [null], [null], [null]]);
  });
  test("a cell in the way gives #SPILL! and loses nothing; clearing it brings the table back", async () => {
    const book = await workbook({ ...cells, C3: "mine" });
    expect(book.range("B1").errors[0]![0]?.code).toBe("#SPILL!");
    expect(book.range("C3").values).toEqual([["mine"]]);
    book.range("C3").clear();
    await book.settled();
    expect(book.range("B4:C4").values).toEqual([[1, "row 4"]]);
    expect(book.range("E1").values).toEqual([[10]]);
  });
  test("a value typed into a spill blocks it, and its dependents follow", async () => {
    const book = await workbook(cells);
    book.range("B3").setValues([[100]]);
    await book.settled();
    expect(book.range("B1").errors[0]![0]?.code).toBe("#SPILL!");
    expect(book.range("E2").values).toEqual([[0]]);
  });
  test("a chain of spills settles", async () => {
    const book = await workbook({
      A1: 3,
      B1: "=PROBE.COUNTDOWN(A1)",
      D1: "=PROBE.COUNTDOWN(COUNT(B:B))",
      F1: "=COUNT(D:D)",
    });
    expect(book.range("F1").values).toEqual([[3]]);
    book.range("A1").setValues([[1]]);
    await book.settled();
    expect(book.range("F1").values).toEqual([[1]]);
    expect(book.range("D1:D3").values).toEqual([[1], [null], [null]]);
  });
});
