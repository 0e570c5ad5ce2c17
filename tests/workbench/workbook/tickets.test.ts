import { buildJob } from "../../../src/shop/job/job";
import { loadImage } from "@napi-rs/canvas";
import type ExcelJS from "exceljs";
import { jobTickets } from "../../../src/shop/ticket/jobTickets";
import { drawPng } from "../../../tools/pictures/drawPng";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { openHeadless } from "../../../workbench/engine/headless";
import { makeWorkbook, openXlsx, runsFromCsv, tableToCsv } from "../../../workbench/workbook";
import { ticketSheets } from "../../../workbench/workbook/content/ticketSheets";
import { builtFunctions, demoCsv } from "./demoFile";
import { partOf, readWithExcelJs, shownValues } from "./otherReader";

jest.setTimeout(120_000);

const functions = builtFunctions();
const make = async (csv: string, wishes: { plain?: boolean; draw?: typeof drawPng } = { draw: drawPng }) =>
  (await makeWorkbook(runsFromCsv(csv, "runs.csv"), functions, { title: "Job", ...wishes })).bytes;

/** What an anchor says of a picture, as ExcelJS reads it. */
interface Anchored {
  imageId: string;
  range: { tl: { nativeRow: number; nativeCol: number }; ext: { width: number; height: number } };
}
const picturesOf = (sheet: ExcelJS.Worksheet) => sheet.getImages() as unknown as Anchored[];

describe("the demo job's tickets in the workbook, read by another library", () => {
  let bytes: Uint8Array;
  let book: ExcelJS.Workbook;
  let sheet: ExcelJS.Worksheet;
  const { tickets } = jobTickets(buildJob({ runs: demoRuns }));
  beforeAll(async () => {
    bytes = await make(demoCsv());
    book = await readWithExcelJs(bytes);
    sheet = book.getWorksheet("Tickets")!;
  });
  const rowsWith = (pattern: RegExp): number[] =>
    shownValues(book, "Tickets").flatMap(([first], row) => (pattern.test(String(first)) ? [row + 1] : []));

  test("every piece has its ticket, on a page of its own", () => {
    const starts = rowsWith(/ piece \d+ of \d+, make \d+$/);
    const titles = tickets.map(
      ({ run, piece, pieces }) => `${run.name} piece ${piece} of ${pieces}, make ${run.quantity}`,
    );
    expect(starts.map((row) => sheet.getCell(row, 1).value)).toEqual(titles);
    // A break stands after a row, counted from 1 (ECMA-376 part 1, 18.3.1.3 brk).
    const breaks = [
      ...partOf(bytes, `xl/worksheets/sheet${book.worksheets.length}.xml`).matchAll(
        /<brk id="(\d+)" max="16383" man="1"\/>/g,
      ),
    ];
    expect(breaks.map(([, id]) => Number(id) + 1)).toEqual(expect.arrayContaining(starts.slice(1)));
  });

  test("prints upright at its own size, the title at the head of each page", () => {
    expect(sheet.pageSetup).toMatchObject({ orientation: "portrait", fitToPage: false, printTitlesRow: "1:2" });
    expect(sheet.pageSetup.printArea).toBe(`A1:F${sheet.rowCount}`);
    expect(sheet.getCell("A1").value).toMatch(/^Shop tickets, Ferry terminal\. Made from Runs/);
  });

  test("a picture of each stick and of each bent piece hangs in the first column, under its ticket's name", async () => {
    const starts = rowsWith(/ piece \d+ of \d+, make \d+$/);
    const pictures = picturesOf(sheet);
    const counts = starts.map(
      (start, index) =>
        pictures.filter(({ range: { tl } }) => {
          return tl.nativeCol === 0 && tl.nativeRow >= start && tl.nativeRow < (starts[index + 1] ?? Infinity) - 1;
        }).length,
    );
    expect(counts).toEqual(tickets.map(({ bends }) => (bends.length > 0 ? 2 : 1)));
    expect(pictures).toHaveLength(counts.reduce((sum, count) => sum + count, 0));
  });

  test("the pictures are PNG files, as wide and high in pixels as on paper", async () => {
    for (const { imageId, range } of picturesOf(sheet).slice(0, 6)) {
      const { buffer, extension } = book.getImage(Number(imageId));
      expect(extension).toBe("png");
      // ISO/IEC 15948 (PNG), 5.2: the signature.
      const bytes = new Uint8Array(buffer!);
      expect([...bytes.slice(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
      const image = await loadImage(Buffer.from(bytes));
      // ExcelJS counts pixels of 1/96 in.; 216 to the inch is three to the point.
      const inches = range.ext.width / 96;
      expect(image.width / inches).toBeCloseTo(216, 0);
      expect(image.height / image.width).toBeCloseTo(range.ext.height / range.ext.width, 2);
    }
  });

  test("every cell of a ticket is text in text format", () => {
    sheet.eachRow((row) =>
      row.eachCell((cell) => {
        expect([cell.address, typeof cell.value, cell.numFmt]).toEqual([cell.address, "string", "@"]);
      }),
    );
  });

  test("a plain workbook has the same tickets and pictures; one made without a painter has the words", async () => {
    const plain = await readWithExcelJs(await make(demoCsv(), { plain: true, draw: drawPng }));
    expect(shownValues(plain, "Tickets")).toEqual(shownValues(book, "Tickets"));
    expect(picturesOf(plain.getWorksheet("Tickets")!)).toHaveLength(picturesOf(sheet).length);
    const words = await readWithExcelJs(await make(demoCsv(), {}));
    expect(picturesOf(words.getWorksheet("Tickets")!)).toEqual([]);
    expect(words.getWorksheet("Tickets")!.getCell("A3").value).toBe("TH-01 piece 1 of 1, make 4");
  });
});

test("names that look like formulas stay text in tickets and in the engine", async () => {
  const names = ["=1+1", "+2", "-3", "@x", '=HYPERLINK("x","y")'];
  const csv = tableToCsv([
    ["Run", "Job", "Raceway", "Size", "Route", "From", "To"],
    ...names.map((name) => [name, "@job", "EMT", "1/2", "up 10, east 40", "=box()", "-1"]),
    ["=bad", "@job", "EMT", "1/2", "sideways 3", "", ""],
  ]);
  const bytes = await make(csv);
  const file = await readWithExcelJs(bytes);
  const shown = shownValues(file, "Tickets").map(([first]) => String(first));
  for (const name of names) expect(shown).toContain(`${name} piece 1 of 1, make 1`);
  expect(shown.join("\n")).toMatch(/^@job, EMT 1\/2\. Datum end: =box\(\)\. Far end: -1\./m);
  expect(shown.join("\n")).toMatch(/^=bad: step 1/m);
  file
    .getWorksheet("Tickets")!
    .eachRow((row) => row.eachCell((cell) => expect([cell.formula, cell.numFmt]).toEqual([undefined, "@"])));
  const { book, close } = openHeadless(functions, await openXlsx(bytes, functions));
  await book.settled();
  const { values, formulas } = book.sheet("Tickets").used()!;
  close();
  expect(formulas.flat().filter((formula) => formula !== "")).toEqual([]);
  expect(values.map(([first]) => String(first)).join("\n")).toMatch(/^@job, EMT 1\/2\. Datum end: =box\(\)\./m);
});

test("a long job's tickets stand on several sheets, and only the last names runs without", async () => {
  const rows = [
    ["Run", "Raceway", "Size", "Route"],
    ...Array.from({ length: 301 }, (_, row) => [`R-${row}`, "EMT", "1/2", "east 40"]),
    ["R-x", "EMT", "1/2", "sideways"],
  ];
  const sheet = { columns: [], frozenRows: 1, frozenColumns: 0, tables: [], choices: [] };
  const told: string[] = [];
  const sheets = await ticketSheets(
    [{ ...sheet, name: "Runs", cells: rows.map((row) => row.map((value) => ({ value }))) }],
    { draw: () => new Uint8Array(), onPicture: (drawn, of) => void told.push(`${drawn}/${of}`) },
  );
  expect(sheets.map(({ name }) => name)).toEqual(["Tickets", "Tickets 2"]);
  const first = sheets.map(({ cells }) => cells.map(([cell]) => String(cell?.value ?? "")));
  expect(first.map((lines) => lines.filter((line) => / piece 1 of 1/.test(line)).length)).toEqual([300, 1]);
  expect(first.map((lines) => lines.includes("Runs without tickets"))).toEqual([false, true]);
  expect([told[0], told.at(-1)]).toEqual(["1/301", "301/301"]);
});
