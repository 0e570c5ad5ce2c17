import { buildJob } from "../../../src/shop/job/job";
import { createCanvas, loadImage } from "@napi-rs/canvas";
import type ExcelJS from "exceljs";
import decodeQR from "qr/decode.js";
import { readLabel } from "../../../src/shop/ticket/pieceLabel";
import { jobTickets } from "../../../src/shop/ticket/jobTickets";
import { drawPng } from "../../../tools/pictures/drawPng";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { openHeadless } from "../../../workbench/engine/headless";
import { makeWorkbook, openXlsx, runsFromCsv, tableToCsv } from "../../../workbench/workbook";
import { ticketSheets, type TicketWishes } from "../../../workbench/workbook/content/ticketSheets";
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
  const tickets = jobTickets(buildJob({ runs: demoRuns })).tickets.filter(({ bends }) => bends.length > 0);
  beforeAll(async () => {
    bytes = await make(demoCsv());
    book = await readWithExcelJs(bytes);
    sheet = book.getWorksheet("Tickets")!;
  });
  const rowsWith = (pattern: RegExp): number[] =>
    shownValues(book, "Tickets").flatMap(([first], row) => (pattern.test(String(first)) ? [row + 1] : []));

  test("every bent piece has its ticket, on a page of its own; straight ones stand on the cutting sheet", () => {
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
    const text = shownValues(book, "Tickets").map(([first]) => String(first));
    const saw = text.indexOf("Cutting sheet");
    expect(saw).toBeGreaterThan(starts.at(-1)!);
    const { tickets: all } = jobTickets(buildJob({ runs: demoRuns }));
    const straight = all.filter(({ bends }) => bends.length === 0);
    expect(text.slice(0, 3).join(" ")).toContain(`${straight.length} straight pieces have no ticket`);
    const cuts = text.slice(saw).join("\n");
    for (const { name } of straight) expect(cuts).toMatch(new RegExp(`\\b${name}\\b`));
  });

  test("prints upright at its own size, the title at the head of each page", () => {
    expect(sheet.pageSetup).toMatchObject({
      orientation: "portrait",
      fitToPage: false,
      scale: 82,
      printTitlesRow: "1:3",
    });
    expect(sheet.pageSetup.printArea).toBe(`A1:G${sheet.rowCount}`);
    // ECMA-376 part 1, 18.3.1.46: &D and &T are the day and the time of printing.
    expect(sheet.headerFooter.oddFooter).toContain("Printed &D &T");
    expect(sheet.getCell("A1").value).toMatch(/^Shop tickets, Ferry terminal\. Made from Runs/);
  });

  test("under a ticket's name hang its code, its stick, each bend at the shoe and its shape", () => {
    const starts = rowsWith(/ piece \d+ of \d+, make \d+$/);
    const pictures = picturesOf(sheet);
    const columns = starts.map((start, index) =>
      pictures
        .filter(({ range: { tl } }) => tl.nativeRow >= start - 1 && tl.nativeRow < (starts[index + 1] ?? Infinity) - 1)
        .map(({ range: { tl } }) => tl.nativeCol),
    );
    expect(columns).toEqual(tickets.map(({ bends }) => [6, 0, ...bends.map(() => 6), 0]));
  });

  test("the pictures are PNG files, sharp on paper", async () => {
    for (const { imageId, range } of picturesOf(sheet).slice(0, 6)) {
      const { buffer, extension } = book.getImage(Number(imageId));
      expect(extension).toBe("png");
      // ISO/IEC 15948 (PNG), 5.2: the signature.
      const bytes = new Uint8Array(buffer!);
      expect([...bytes.slice(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
      const image = await loadImage(Buffer.from(bytes));
      // ExcelJS counts pixels of 1/96 in.
      expect(image.width / (range.ext.width / 96)).toBeGreaterThan(190);
      expect(image.height / image.width).toBeCloseTo(range.ext.height / range.ext.width, 2);
    }
  });

  test("every code reads back, by a decoder that shares nothing with the encoder, as its ticket says", async () => {
    const codes = picturesOf(sheet).filter(({ range: { ext } }) => ext.width === ext.height);
    const read = await Promise.all(codes.map(({ imageId }) => decodePng(book.getImage(Number(imageId)).buffer!)));
    expect(read.map(readLabel)).toEqual(
      tickets.map(({ run, name, code }) => ({ job: run.job, piece: name, shape: code, quantity: run.quantity })),
    );
    const said = shownValues(book, "Tickets").map(([first]) => String(first));
    for (const { piece, shape } of read.map(readLabel)) {
      expect(said.filter((line) => line === `${piece}   ${shape}`)).toHaveLength(1);
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
    expect(shownValues(words, "Tickets").flat()).toContain("TH-01 piece 1 of 1, make 4");
  });
});

async function decodePng(bytes: ExcelJS.Buffer): Promise<string> {
  const image = await loadImage(Buffer.from(bytes));
  const context = createCanvas(image.width, image.height).getContext("2d");
  context.drawImage(image, 0, 0);
  const { data, width, height } = context.getImageData(0, 0, image.width, image.height);
  return decodeQR({ width, height, data: new Uint8ClampedArray(data) });
}

describe("which tickets", () => {
  const csv = tableToCsv([
    ["Run", "Area", "Crew", "Raceway", "Size", "Route", "Quantity"],
    ["A-1", "Hall", "1", "EMT", "1/2", "up 20, east 40", 2],
    ["A-2", "Hall", "2", "EMT", "3/4", "up 20, east 40", 1],
    ["A-3", "Roof", "1", "EMT", "1/2", "east 50", 1],
  ]);
  const shown = async (wishes: TicketWishes) => {
    const { bytes } = await makeWorkbook(runsFromCsv(csv, "runs.csv"), functions, { title: "Job", ...wishes });
    const file = await readWithExcelJs(bytes);
    const names = file.worksheets.map(({ name }) => name).filter((name) => /^(Tickets|Stickers)/.test(name));
    const text = names.map((name) => shownValues(file, name).flat().map(String));
    return { names, text, runs: (text[0] ?? []).flatMap((line) => /^(\S+) piece 1 of 1/.exec(line)?.[1] ?? []) };
  };

  test("by area, crew and conduit; the cutting sheet is for the same runs", async () => {
    expect((await shown({ choice: { area: "Hall" } })).runs).toEqual(["A-1", "A-2"]);
    expect((await shown({ choice: { crew: "1", bentOnly: false } })).runs).toEqual(["A-1", "A-3"]);
    expect((await shown({ choice: { conduit: "EMT 3/4" } })).runs).toEqual(["A-2"]);
    const roof = await shown({ choice: { area: "Roof" } });
    expect(roof.runs).toEqual([]);
    const cuts = roof.text[0]!.filter((line) => line.startsWith("\u2610"));
    expect(cuts).toEqual([`\u2610 cut 1 at 4' 2": A-3/1`]);
  });

  test("not yet made, and changed since an issue", async () => {
    expect((await shown({ made: [["Piece", "Good"], ["A-1", 2]] })).runs).toEqual(["A-2"]); // prettier-ignore
    const issued = [["Run", "Area", "Crew", "Raceway", "Size", "Route", "Quantity"],
      ["A-1", "Hall", "1", "EMT", "1/2", "up 20, east 44", 2], ["A-2", "Hall", "2", "EMT", "3/4", "up 20, east 40", 1]]; // prettier-ignore
    expect((await shown({ issued })).runs).toEqual(["A-1"]);
  });

  test("what the job does not have is refused with what it has", async () => {
    await expect(shown({ choice: { area: "Cellar" } })).rejects.toThrow("area must be one of Hall, Roof; got Cellar.");
    await expect(shown({ choice: { date: "2026-05-04" } })).rejects.toThrow(
      "date must be left out: no run has one; got 2026-05-04.",
    );
  });

  test("stickers: one for each piece to make, straight ones too where they have tickets", async () => {
    const { names, text } = await shown({ stickers: true, choice: { bentOnly: false } });
    expect(names).toEqual(["Tickets", "Stickers"]);
    expect(text[1]!.filter((line) => /^A-\d\/1$/.test(line))).toEqual(["A-1/1", "A-1/1", "A-2/1", "A-3/1"]);
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
  for (const name of names) expect(shown.join(" ")).toContain(`${name} piece 1 of 1, make 1`);
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
    ...Array.from({ length: 902 }, (_, row) => [`R-${row}`, "EMT", "1/2", "up 20, east 40"]),
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
  expect(first.map((lines) => lines.filter((line) => / piece 1 of 1/.test(line)).length)).toEqual([901, 1]);
  expect(first.map((lines) => lines.includes("Runs without tickets"))).toEqual([false, true]);
  // Each has its code, its stick, its bend at the shoe and its shape.
  expect([told[0], told.at(-1)]).toEqual(["1/3608", "3608/3608"]);
});
