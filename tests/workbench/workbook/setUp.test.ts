import { setUp } from "../../../taskpane/excel";
import { INPUTS } from "../../../taskpane/workbook/design/sheets";
import { TABS } from "../../../taskpane/workbook/items";
import { DEMO_ITEM, DEMO_ROWS } from "../../../workbench/demo/demoBook";
import { demoData } from "../../../workbench/demo/demoData";
import { openHeadless } from "../../../workbench/engine/headless";
import { officeFor } from "../../../workbench/office";
import { emptyBook } from "../../../workbench/page/emptyBook";
import { contentOfBook } from "../../../workbench/workbook/content/bookContent";
import type { SheetContent } from "../../../workbench/workbook/content/sheetContent";
import { setUpSheets } from "../../support/setUpSheets";
import { builtFunctions } from "./demoFile";

jest.setTimeout(120_000);

/** Each cell that shows anything, with the look it has: its own over its column's. */
function asSeen(name: string, cells: SheetContent["cells"], columns: SheetContent["columns"]) {
  return cells.flatMap((row, at) =>
    row.flatMap((cell, column) => {
      const look = { ...columns[column]?.look, ...cell?.look };
      const shows = cell !== null && (cell.value !== null || cell.formula !== undefined);
      return shows ? [{ at: `${name} ${at},${column}`, ...cell, look }] : [];
    }),
  );
}

/** Set up in an empty workbook with the demo's rows, as the pane does it. */
async function setUpBook() {
  const opened = openHeadless(builtFunctions(), emptyBook());
  Object.assign(globalThis, officeFor(opened.book));
  await setUp(setUpSheets(TABS, { rows: DEMO_ROWS, traced: DEMO_ITEM }), { leftOver: "Sheet1" });
  await opened.book.settled();
  return opened;
}

test("the demo is what Set up makes with the same rows: sheets, formats, widths, formulas, lists and results", async () => {
  const made = await setUpBook();
  const demo = openHeadless(builtFunctions(), demoData());
  await demo.book.settled();
  const [ours, theirs] = [contentOfBook(made.book), contentOfBook(demo.book)];
  expect(ours.map(({ name }) => name)).toEqual(TABS);
  for (const [index, sheet] of theirs.entries()) {
    const { cells, columns, ...rest } = ours[index]!;
    const { cells: theirCells, columns: theirColumns, ...others } = sheet;
    expect(rest).toEqual(others);
    expect({ sheet: sheet.name, columns }).toEqual({ sheet: sheet.name, columns: theirColumns });
    expect(asSeen(sheet.name, cells, columns)).toEqual(asSeen(sheet.name, theirCells, theirColumns));
  }
  made.close();
  demo.close();
});

test("no result reads a computed column, nor a table with one whole: nothing can become its own input", () => {
  const formulas = setUpSheets(TABS).flatMap(({ sheet, cells }) =>
    cells.flat().flatMap((cell) => (String(cell).startsWith("=") && sheet !== "Runs" ? [[sheet, String(cell)]] : [])),
  );
  const inputs = `Runs[[#All],[Run]:[${INPUTS.Runs.at(-1)}]]`;
  const computed = /\[(Length in\.|Bends|Degrees|Check)\]/;
  const reading = formulas.filter(([, formula]) => formula!.includes("Runs["));
  expect(reading.length).toBeGreaterThan(10);
  for (const [sheet, formula] of reading) {
    const ranges = formula!.match(/Runs\[(?:\[[^\]]*\][,:]?)+\]|Runs\[[^\]]*\]/g) ?? [];
    expect({ sheet, ranges: [...new Set(ranges)] }).toEqual({ sheet, ranges: [inputs] });
    expect(formula).not.toMatch(computed);
  }
});

/** What the format of a column must show of its unit, said by hand. */
const UNITS: Readonly<Record<string, RegExp>> = {
  "Cut length": /in\./,
  Mark: /in\./,
  "Length in.": /in\./,
  Radius: /in\./,
  Deduct: /in\./,
  "Room above": /in\./,
  "Reach ahead": /in\./,
  Angle: /°/,
  Dial: /°/,
  Degrees: /°/,
  Price: /\$/,
  "Unit price": /\$/,
  Extension: /\$/,
};

test("no number is shown raw: a long fraction has a format that rounds it, and lengths, angles and money their unit", async () => {
  const demo = openHeadless(builtFunctions(), demoData());
  await demo.book.settled();
  const numbers = contentOfBook(demo.book).flatMap(({ name, cells, columns }) =>
    asSeen(name, cells, columns).flatMap(({ at, value, look }) => {
      const header = String(cells[0]?.[Number(at.split(",").at(-1))]?.value ?? "");
      return typeof value === "number" ? [{ at, header, value, format: look.format ?? "General" }] : [];
    }),
  );
  demo.close();
  // A person's 9.1 or 0.0625 may stand as it is; 86.7261544226 may not.
  const isLong = (value: number) => Number(value.toFixed(4)) !== value;
  const raw = numbers.filter(({ value, format }) => isLong(value) && /^(General|@)$/.test(format));
  expect(raw).toEqual([]);
  for (const [header, unit] of Object.entries(UNITS)) {
    const formats = new Set(numbers.filter((number) => number.header === header).map(({ format }) => format));
    expect({ header, count: formats.size > 0, without: [...formats].filter((format) => !unit.test(format)) }).toEqual({
      header,
      count: true,
      without: [],
    });
  }
});
