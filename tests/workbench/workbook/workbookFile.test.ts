import { RUN_COLUMNS } from "../../../src/shop/run/runsTable";
import { buildJob } from "../../../src/shop/job/job";
import type ExcelJS from "exceljs";
import { scheduleJob, scheduleTable } from "../../../src/shop/schedule/schedule";
import { bendCounts } from "../../../src/takeoff/reports/bendCounts";
import { dayText } from "../../../src/units/day";
import { EXTRAS, TABS } from "../../../taskpane/workbook/items";
import { demoRuns, RUN_HEADERS } from "../../../workbench/demo/ferryTerminal";
import { demoWorkbook } from "./demoFile";
import { partOf, readWithExcelJs, shownValues } from "./otherReader";

jest.setTimeout(120_000);

let bytes: Uint8Array;
let book: ExcelJS.Workbook;

beforeAll(async () => {
  bytes = await demoWorkbook();
  book = await readWithExcelJs(bytes);
});

/** Empty texts and blanks show alike. */
const blanksAsNull = (rows: readonly (readonly unknown[])[]) =>
  rows.map((row) => row.map((v) => (v === "" ? null : v)));

/** The workbook is read by ExcelJS; expected results come from src/ without the engine between. */
/** Columns of Runs that people fill in; those that follow by formula stand right of them. */
const LAST_INPUT = RUN_COLUMNS.at(-1)!.name;
const FIRST_FORMULA = RUN_COLUMNS.length + 1;

describe("the workbook of a job, read by another library", () => {
  test("has the sheets of a workbook that was set up, in their order, and the tickets", () => {
    expect(book.worksheets.map(({ name }) => name)).toEqual([
      ...TABS.filter((item) => !EXTRAS.includes(item)),
      "Tickets",
    ]);
    const tables = book.worksheets.flatMap((sheet) =>
      sheet.getTables().map((table) => (table as { name?: string }).name),
    );
    expect(tables).toHaveLength(10);
  });

  test("keeps every run as it was written, sizes as text and quantities as numbers", () => {
    const [headers = [], ...rows] = shownValues(book, "Runs");
    const places = RUN_HEADERS.map((header) => headers.indexOf(header));
    const date = RUN_HEADERS.indexOf("Date");
    const written = rows.map((row) => places.map((place, at) => (at === date ? dayText(row[place]) : row[place])));
    expect(written).toEqual(demoRuns.slice(1).map((row) => [...row]));
    expect(written[0]![4]).toBe("1/2");
    expect(written[0]![6]).toBe(4);
  });

  test("keeps the schedule and the bend counts, to the last digit", () => {
    const schedule = scheduleTable(scheduleJob(buildJob({ runs: demoRuns })));
    expect(blanksAsNull(shownValues(book, "Schedule"))).toEqual(blanksAsNull(schedule));
    const shoes = shownValues(book, "Shoes");
    expect(blanksAsNull(shownValues(book, "Bend counts"))).toEqual(
      blanksAsNull(bendCounts(demoRuns as unknown[][], { shoes, by: "Area, Raceway, Size, Kind" })),
    );
  });

  test("an error stays an error, beside its formula", () => {
    const unbuildable = demoRuns.findIndex(([run]) => run === "PR-09") + 1;
    expect(book.getWorksheet("Runs")!.getCell(unbuildable, FIRST_FORMULA).value).toMatchObject({
      result: { error: "#VALUE!" },
    });
  });

  test("formulas are spelled as files spell an add-in's functions", () => {
    const formula = (sheet: string, row: number, column: number) =>
      book.getWorksheet(sheet)!.getCell(row, column).formula;
    expect(formula("Schedule", 1, 1)).toBe(
      `_xldudf_CONDUIT_JOB_SCHEDULE(Runs[[#All],[Run]:[${LAST_INPUT}]],Shoes[#All],Rules[#All])`,
    );
    expect(formula("Runs", 2, FIRST_FORMULA)).toBe(
      'IF(Runs[[#This Row],[Route]]="","",_xldudf_CONDUIT_RUN_LENGTH(Runs[[#This Row],[Route]],' +
        "Runs[[#This Row],[Raceway]],Runs[[#This Row],[Size]],Shoes[[#All],[Raceway]:[Deduct]],Rules[[#All],[Rule]:[Value]]))",
    );
  });

  test("a result sheet is one dynamic array over exactly its rows", () => {
    const rows = scheduleTable(scheduleJob(buildJob({ runs: demoRuns })));
    const place = book.worksheets.findIndex(({ name }) => name === "Schedule") + 1;
    const schedule = partOf(bytes, `xl/worksheets/sheet${place}.xml`);
    expect(/<c r="A1"[^>]*>/.exec(schedule)![0]).toContain('cm="1"');
    expect(schedule).toContain(`<f t="array" ref="A1:W${rows.length}">`);
    expect(partOf(bytes, "xl/metadata.xml")).toMatch(/metadataType name="XLDAPR"/);
    expect(partOf(bytes, "xl/metadata.xml")).toMatch(/dynamicArrayProperties fDynamic="1"/);
  });

  test("Excel is not asked to recalculate on opening, which would lose every result where the add-in is missing", () => {
    expect(partOf(bytes, "xl/workbook.xml")).not.toContain("fullCalcOnLoad");
  });

  test("a new row of the Runs table gets its formulas, its formats and its lists", () => {
    const table = partOf(bytes, "xl/tables/table1.xml");
    expect(table.match(/<calculatedColumnFormula>/g)).toHaveLength(4);
    const sheet = book.getWorksheet("Runs")!;
    expect(sheet.getColumn(5).numFmt).toBe("@");
    const { dataValidations } = sheet as unknown as {
      dataValidations: { model: Record<string, { formulae: string[] }> };
    };
    expect(dataValidations.model.E40?.formulae[0]).toContain("1/2,3/4,1,1-1/4");
    expect(dataValidations.model.D40?.formulae[0]).toContain("PVC-coated RMC");
  });

  test("prints landscape, one page wide, headings on every page", () => {
    for (const sheet of book.worksheets.filter(({ name }) => name !== "Tickets")) {
      expect(sheet.pageSetup).toMatchObject({
        orientation: "landscape",
        fitToPage: true,
        fitToWidth: 1,
        fitToHeight: 0,
      });
      expect(sheet.pageSetup.printTitlesRow).toBe("1:1");
    }
  });

  test("sheet names with blanks are quoted where names are defined", () => {
    const names = [...partOf(bytes, "xl/workbook.xml").matchAll(/<definedName [^>]*>([^<]*)</g)].map(
      ([, text]) => text,
    );
    expect(names).toContain("'Bend counts'!$1:$1");
    expect(names.filter((name) => /^[^']* [^']*!/.test(name!))).toEqual([]);
  });
});

test("a plain workbook holds the same values and no formula of the add-in", async () => {
  const plain = await readWithExcelJs(await demoWorkbook(true));
  // Tables nobody has written in, and the progress that waits for one of them, are left out.
  const empty = ["Counts", "Made", "Progress", "Allowances", "Prices", "Labor"];
  const kept = book.worksheets.filter(({ name }) => !empty.includes(name));
  expect(plain.worksheets.map(({ name }) => name).sort()).toEqual([...kept.map(({ name }) => name), "Bends"].sort());
  for (const { name } of kept) expect(shownValues(plain, name)).toEqual(shownValues(book, name));
  const formulas: string[] = [];
  plain.eachSheet((sheet) =>
    sheet.eachRow((row) => row.eachCell((cell) => cell.formula && formulas.push(`${sheet.name}!${cell.address}`))),
  );
  expect(formulas.filter((address) => !address.startsWith("Bends!"))).toEqual([]);
});
