import type { Book, CellValue } from "../../../workbench/engine";
import { RUN_COLUMNS } from "../../../src/shop/run/runsTable";
import { openHeadless } from "../../../workbench/engine/headless";
import { makeWorkbook, openXlsx, runsFromCsv, saveXlsx } from "../../../workbench/workbook";
import { builtFunctions, demoWorkbook } from "./demoFile";
import { readWithExcelJs, shownValues } from "./otherReader";

jest.setTimeout(120_000);

const functions = builtFunctions();

/** Opens a file's bytes in the engine, waits for every result, and closes it again. */
async function withBook<T>(bytes: Uint8Array, look: (book: Book) => T | Promise<T>): Promise<T> {
  const { book, close } = openHeadless(functions, await openXlsx(bytes, functions));
  try {
    await book.settled();
    return await look(book);
  } finally {
    close();
  }
}

const valuesOf = (book: Book): [string, CellValue[][]][] =>
  book
    .sheets()
    .map((sheet) => [sheet.name, sheet.used()?.values.map((row) => row.map((v) => (v === "" ? null : v))) ?? []]);

/** A sheet without the empty rows and columns at its ends. */
function trimmed(rows: readonly (readonly unknown[])[]): unknown[][] {
  const filled = (row: readonly unknown[]) => row.reduce((last: number, v, at) => (v === null ? last : at + 1), 0);
  const width = Math.max(0, ...rows.map(filled));
  const height = rows.reduce((last: number, row, at) => (filled(row) > 0 ? at + 1 : last), 0);
  return rows.slice(0, height).map((row) => Array.from({ length: width }, (_, at) => row[at] ?? null));
}

test("a written workbook, opened again, works out every value anew and the same", async () => {
  const bytes = await demoWorkbook();
  const file = await readWithExcelJs(bytes);
  await withBook(bytes, (book) => {
    for (const [name, values] of valuesOf(book)) {
      const inFile = shownValues(file, name).map((row) => row.map((v) => (v === "" ? null : v)));
      expect([name, trimmed(values)]).toEqual([name, trimmed(inFile)]);
    }
    // Worked out, not read: a changed run changes the schedule.
    expect(book.sheet("Schedule").range("A1").formulas[0]![0]).toBe(
      `=CONDUIT.JOB.SCHEDULE(Runs[[#All],[Run]:[${RUN_COLUMNS.at(-1)!.name}]],Shoes[#All],Rules[#All])`,
    );
  });
});

test("what changes after opening changes the results", async () => {
  const bytes = await demoWorkbook();
  await withBook(bytes, async (book) => {
    const cut = () => book.sheet("Schedule").range("C2").values[0]![0] as number;
    const before = cut();
    // One leg of the first run, up 10 and east 8 ft, made 7 in. longer.
    book
      .sheet("Runs")
      .range("F2")
      .setValues([["up 17, east 8'"]]);
    await book.settled();
    expect(cut() - before).toBeCloseTo(7, 9);
  });
});

test("saved from the engine and opened again, twice over, tables and lists are still there", async () => {
  const once = await withBook(await demoWorkbook(), (book) => saveXlsx(book, "Demo"));
  const file = await readWithExcelJs(once);
  expect(file.worksheets.flatMap((sheet) => sheet.getTables())).toHaveLength(10);
  const twice = await withBook(once, (book) => saveXlsx(book, "Demo"));
  const again = await readWithExcelJs(twice);
  for (const { name } of file.worksheets) expect(shownValues(again, name)).toEqual(shownValues(file, name));
});

test("a file that is no workbook is told in words", async () => {
  await expect(openXlsx(new TextEncoder().encode("Run,Route"), functions)).rejects.toThrow(/^This is not a workbook/);
});

test("a bad run hides no good one, in the file too", async () => {
  const list = runsFromCsv(
    "Run,Raceway,Size,Route\nA-1,EMT,1/2,up 40\nB-2,EMT,1/2,sideways 3\nC-3,EMT,1/2,up 50",
    "runs.csv",
  );
  const { bytes } = await makeWorkbook(list, functions, { title: "Job" });
  const schedule = shownValues(await readWithExcelJs(bytes), "Schedule");
  expect(schedule.slice(1).map((row) => row[0])).toEqual(["A-1", "B-2", "C-3"]);
  expect(schedule[2]!.join(" ")).toContain("step 1");
});
