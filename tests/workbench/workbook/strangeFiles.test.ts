/** Files that once ended in a fault of the program; each must open, or be refused in words. */
import { strToU8, zipSync } from "fflate";
import { decodeText, matchRuns, openXlsx } from "../../../workbench/workbook";
import { builtFunctions } from "./demoFile";

const target = { headers: ["Run", "Raceway", "Size", "Route"], worked: [false, false, false, false], names: [] };
const rows = "Run,Raceway,Size,Route\r\nA-1,EMT,1/2,up 40\r\n";

/** A workbook whose one sheet holds one cell, and whatever else is given. */
function workbook(cell: string, more: Record<string, Uint8Array> = {}): Uint8Array {
  const ns = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
  const rel = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  const row = /\d+$/.exec(cell)![0];
  return zipSync({
    "[Content_Types].xml": strToU8(
      `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>`,
    ),
    "_rels/.rels": strToU8(
      `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${rel}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    ),
    "xl/workbook.xml": strToU8(
      `<workbook ${ns} xmlns:r="${rel}"><sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    ),
    "xl/_rels/workbook.xml.rels": strToU8(
      `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${rel}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    ),
    "xl/worksheets/sheet1.xml": strToU8(
      `<worksheet ${ns}><sheetData><row r="${row}"><c r="${cell}"><v>7</v></c></row></sheetData></worksheet>`,
    ),
    ...more,
  });
}

test("a stray cell in the last row of a workbook comes in", async () => {
  const data = await openXlsx(workbook("C1048576"), builtFunctions());
  const sheet = data.sheets[data.sheetOrder[0]!]!;
  expect(sheet.cellData![1048575]![2]).toMatchObject({ v: 7 });
}, 120_000);

test("a small file that unpacks to more than can be read is refused in words", async () => {
  const bomb = workbook("A1", { "xl/media/a.bin": new Uint8Array(500 * 1024 * 1024) });
  expect(bomb.length).toBeLessThan(2_000_000);
  await expect(openXlsx(bomb, builtFunctions())).rejects.toThrow(/unpacked it takes 524 MB; at most 419 MB are read/);
}, 120_000);

test.each([
  ["without a quote", "x".repeat(10_000_000)],
  ["in one quoted cell", `"${"x".repeat(10_000_000)}"`],
  ["with an open quote", `"${"x".repeat(10_000_000)}`],
])("ten megabytes without a line break, %s, are refused in words", (_, text) => {
  expect(() => matchRuns(text, "a.csv", target)).toThrow(
    /line 1 has 10,000,0\d\d characters; a line of cells has at most/,
  );
});

test.each(["utf-16le", "utf-16be"])("%s without a mark is read as the text it is", (encoding) => {
  const units = [...rows].map((letter) => letter.charCodeAt(0));
  const bytes = units.flatMap((unit) => (encoding === "utf-16le" ? [unit & 255, unit >> 8] : [unit >> 8, unit & 255]));
  expect(decodeText(Uint8Array.from(bytes))).toBe(rows);
});

test("bytes of 0 in what should be text are said, not added", () => {
  expect(() => decodeText(Uint8Array.of(65, 66, 67, 68, 69, 70, 0, 71))).toThrow("this is not a text file");
});
