import { openHeadless } from "../../../workbench/engine/headless";
import { makeWorkbook, openXlsx, readCsv, runsFromCsv, saveXlsx, tableToCsv } from "../../../workbench/workbook";
import { builtFunctions } from "./demoFile";
import { readWithExcelJs, shownValues } from "./otherReader";

jest.setTimeout(120_000);

/** What spreadsheet programs run as formulas when it stands first (OWASP, "CSV Injection"), and a few disguises. */
const names = [
  "=1+1",
  "+1+1",
  "-1+1",
  "@SUM(1)",
  "\t=1+1",
  "\r=1+1",
  " =1+1",
  "'=1+1",
  "＝1+1",
  '=HYPERLINK("http://x.example","y")',
];
const csv = tableToCsv([
  ["Run", "Raceway", "Size", "Route", "=note()"],
  ...names.map((name) => [name, "EMT", "1/2", "up 40", "=2+2"]),
]);
const functions = builtFunctions();

test("no cell of a CSV file begins like a formula", () => {
  const cells = csv
    .replace("\uFEFF", "")
    .trimEnd()
    .split("\r\n")
    .flatMap((line) => line.split(","));
  expect(cells.map((cell) => cell.replace(/^"/, "")).filter((cell) => /^\s*[=+\-@＝]/.test(cell))).toEqual([]);
});

test("names that look like formulas come back from CSV as they were", () => {
  expect(
    readCsv(csv)
      .slice(1)
      .map(([name]) => name),
  ).toEqual(names);
});

test("in a workbook they are texts, in the table and in the schedule, and stay texts in the engine", async () => {
  const { bytes } = await makeWorkbook(runsFromCsv(csv, "runs.csv"), functions, { title: "=1+1" });
  const file = await readWithExcelJs(bytes);
  expect(
    shownValues(file, "Runs")
      .slice(1)
      .map(([name]) => name),
  ).toEqual(names);
  const formulas: string[] = [];
  file.eachSheet((sheet) =>
    sheet.eachRow((row) => row.eachCell((cell) => cell.formula && formulas.push(cell.formula))),
  );
  expect(
    formulas.filter(
      (formula) =>
        !/^(_xldudf_CONDUIT_JOB_|IF\((Runs\[\[#This Row\],\[Route\]\]=""|COUNTA\(Runs\[\[#This Row\],[^()]*\]\)=0),"",_xldudf_CONDUIT_RUN_|IF\(COUNTA\(Made\[Piece\]\)=0,"[^"]*",_xldudf_CONDUIT_JOB_)/.test(
          formula,
        ),
    ),
  ).toEqual([]);
  // A text format keeps them text when somebody edits the cell.
  names.forEach((_, row) => expect(file.getWorksheet("Runs")!.getCell(row + 2, 1).numFmt).toBe("@"));

  const { book, close } = openHeadless(functions, await openXlsx(bytes, functions));
  await book.settled();
  const shown = (sheet: string) =>
    book
      .sheet(sheet)
      .used()!
      .values.slice(1)
      .map(([name]) => name);
  const [inRuns, inSchedule] = [shown("Runs"), shown("Schedule")];
  const formulasIn = book
    .sheet("Runs")
    .used()!
    .formulas.map(([formula]) => formula);
  close();
  expect(inRuns).toEqual(names);
  // The functions take blanks off both ends of a name.
  expect(inSchedule).toEqual(names.map((name) => name.trim()));
  expect(formulasIn.filter((formula) => formula !== "")).toEqual([]);
});

test("a text that looks like a formula is kept as text when a workbook is saved, whatever its format was", async () => {
  const cellData = { 0: { 0: { v: "=1+1", t: 1 }, 1: { v: "plain", t: 1 } } };
  const sheets = { s: { id: "s", name: "Sheet1", cellData } };
  const { book, close } = openHeadless(functions, { id: "w", sheetOrder: ["s"], sheets });
  await book.settled();
  const sheet = (await readWithExcelJs(await saveXlsx(book, "Book"))).worksheets[0]!;
  close();
  expect([sheet.getCell("A1").value, sheet.getCell("A1").numFmt]).toEqual(["=1+1", "@"]);
  expect(sheet.getCell("B1").numFmt ?? "General").toBe("General");
});
