import { demoData } from "../../../workbench/demo/demoData";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import type { Book } from "../../../workbench/engine";
import { type HeadlessBook, openHeadless } from "../../../workbench/engine/headless";
import { officeFor } from "../../../workbench/office";
import { listTables } from "../../../workbench/office/table/tableEdits";
import { findRunsTable } from "../../../workbench/page/files/runsTable";
import { matchRuns, openXlsx, saveValuesXlsx, saveXlsx } from "../../../workbench/workbook";
import { builtFunctions } from "../workbook/demoFile";
import { setUpSheets, wishesForEmpty } from "../../support/setUpSheets";
import { readWithExcelJs, shownValues } from "../workbook/otherReader";
import { addRows, readLinked, readTables, writeCells } from "../../../taskpane/excel";
import { linkedRuns, moreLinkedRows } from "../../../taskpane/workbook/linkedRuns";
import { setUp } from "../../../taskpane/excel/sheets/setUp";

jest.setTimeout(120_000);

const functions = builtFunctions();
let headless: HeadlessBook;
let book: Book;

async function open(data: Parameters<typeof openHeadless>[1]): Promise<void> {
  headless = openHeadless(functions, data);
  book = headless.book;
  Object.assign(globalThis, officeFor(book));
  await book.settled();
}

afterEach(() => headless.close());

/** Rows of the demo's Runs table with its header [rows]. */
const demoRows = demoRuns.length;
const list = (rows: string) => `Route;Size;Run;Conduit\n${rows}`;

async function add(text: string) {
  const table = findRunsTable(book);
  const cells = table.append(matchRuns(text, "runs.csv", table).rows);
  await book.settled();
  return cells;
}

const runs = () => book.sheet("Runs").used()!;

describe("rows added to the demo's runs", () => {
  beforeEach(() => open(demoData()));

  test("stand under the last one, the formula columns go on, and nothing above changes", async () => {
    const before = runs().values;
    const cells = await add(list("up 36, east 60;1/2;NEW-1;EMT\nup 48, east 72;1/2;NEW-2;EMT"));
    expect(cells.place.row).toBe(demoRows);
    expect(runs().values.slice(0, demoRows)).toEqual(before);
    const length = before[0]!.indexOf("Length in.");
    const added = runs().values.slice(demoRows);
    // Corner to corner less the gain of one 90 on a 4 in. radius: 96 − (2·4 − 4·π/2), by hand; 24 in. more in the second.
    expect(added[0]![length]).toBeCloseTo(96 - (8 - 2 * Math.PI), 9);
    expect(added[1]![length]).toBeCloseTo(120 - (8 - 2 * Math.PI), 9);
    const names = book.sheet("Schedule").used()!.values.map(([name]) => name); // prettier-ignore
    expect(names).toEqual(expect.arrayContaining(["NEW-1", "NEW-2"]));
    expect(listTables(book).find(({ name }) => name === "Runs")!.range.endRow).toBe(demoRows + 1);
  });

  test("are one step of undo, and come again with redo", async () => {
    const before = runs().values;
    await add(list("up 36;1/2;=1+1;EMT"));
    const after = runs().values;
    await book.undo();
    await book.settled();
    expect(runs().values).toEqual(before);
    expect(listTables(book).find(({ name }) => name === "Runs")!.range.endRow).toBe(demoRows - 1);
    await book.redo();
    await book.settled();
    expect(runs().values).toEqual(after);
  });

  test("push what stands under the table down instead of writing over it", async () => {
    book.range(`Runs!A${demoRows + 2}`).setValues([["below"]]);
    await add(list("up 36;1/2;N-1;EMT\nup 36;1/2;N-2;EMT\nup 36;1/2;N-3;EMT"));
    const first = runs().values.map(([cell]) => cell);
    expect(first.slice(demoRows)).toEqual(["N-1", "N-2", "N-3", null, "below"]);
  });

  test("keep names and sizes as text, whatever they look like", async () => {
    const names = ["=1+1", "+1", "-2", "@SUM(1)", "1/2", "=HYPERLINK(A1)"];
    const { values, formulas, numberFormats } = await add(list(names.map((n) => `up 36;1/2;${n};EMT`).join("\n")));
    expect(values.map(([name]) => name)).toEqual(names);
    expect(values.map((row) => row[4])).toEqual(names.map(() => "1/2"));
    expect(formulas.map(([formula]) => formula)).toEqual(names.map(() => ""));
    // Text format keeps them so when somebody edits the cell.
    expect([0, 1, 2, 3, 5].map((row) => numberFormats[row]![0])).toEqual(Array(5).fill("@"));
  });
});

describe("a table the pane set up", () => {
  test("has its empty rows filled before it grows", async () => {
    await open({ id: "w", sheetOrder: ["s"], sheets: { s: { id: "s", name: "Sheet1" } } });
    await setUp(setUpSheets(["Runs", "Shoes", "Rules"]));
    const { place, values } = await add(list("up 36, east 60;1/2;R-1;EMT\nup 48, east 60;1/2;R-2;EMT"));
    expect(place.row).toBe(1);
    expect(runs().place.rows).toBe(3);
    const length = runs().values[0]!.indexOf("Length in.");
    expect(values.map((row) => row[0])).toEqual(["R-1", "R-2"]);
    expect(values[1]![length]).toBeCloseTo(108 - (8 - 2 * Math.PI), 9);
  });

  test("that follows another table by formulas is left alone", async () => {
    await open({ id: "w", sheetOrder: ["s"], sheets: { s: { id: "s", name: "Mine" } } });
    const mine = [["Tag", "Pipe", "Size", "Path"], ["T-1", "EMT", "1/2", "up 4"]]; // prettier-ignore
    const source = { name: "Mine", sheet: "Mine", row: 0, column: 0, cells: mine };
    const columns = { Run: 0, Raceway: 1, Size: 2, Route: 3 };
    await setUp([...linkedRuns(source, columns, wishesForEmpty()), ...setUpSheets(["Shoes", "Rules"])]);
    await book.settled();
    expect(() => findRunsTable(book)).toThrow("follow another table by formulas");
  });

  /** A person's own table, a Runs table that reads it, and rows put into the person's. */
  async function link(paths: readonly string[]) {
    await open({ id: "w", sheetOrder: ["s"], sheets: { s: { id: "s", name: "Mine" } } });
    const rows = paths.map((path, at) => [`T-${at + 1}`, "EMT", "1/2", path]);
    const mine = [["Tag [no]", "Pipe", "Size", "Path"], ...rows];
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Mine").getRange(`A1:D${mine.length}`);
      range.numberFormat = mine.map((row) => row.map(() => "@"));
      range.values = mine;
      context.workbook.tables.add(`Mine!A1:D${mine.length}`, true).name = "Mine";
      await context.sync();
    });
    const source = { name: "Mine", sheet: "Mine", row: 0, column: 0, cells: mine };
    const columns = { Run: 0, Raceway: 1, Size: 2, Route: 3 };
    await setUp([...linkedRuns(source, columns, wishesForEmpty()), ...setUpSheets(["Shoes", "Rules"])]);
    await book.settled();
  }
  const shownRuns = () => runs().values.slice(1).filter(([name]) => name).map((row) => [row[0], row[5]]); // prettier-ignore
  const put = (rows: string[][]) =>
    Excel.run(async (context) => {
      context.workbook.tables.getItem("Mine").rows.add(undefined, rows);
      await context.sync();
    }).then(() => book.settled());

  test("that reads another one shows rows put in between, and all of them", async () => {
    await link(["up 4", "up 5"]);
    expect(shownRuns()).toEqual([["T-1", "up 4"], ["T-2", "up 5"]]); // prettier-ignore
    book.sheet("Mine").native.insertRowAfter(1);
    book
      .sheet("Mine")
      .range("A3:D3")
      .setValues([["T-9", "EMT", "1/2", "up 9"]]);
    await book.settled();
    expect(shownRuns()).toEqual([["T-1", "up 4"], ["T-9", "up 9"], ["T-2", "up 5"]]); // prettier-ignore
  });

  test("that reads another one says so when it has grown too long", async () => {
    await link(["up 4"]);
    await put(Array.from({ length: 201 }, (_, at) => [`M-${at}`, "EMT", "1/2", "up 4"]));
    const shown = shownRuns();
    expect(shown).toHaveLength(201);
    expect(shown.at(-1)![0]).toBe("Mine has more rows than stand here: the pane takes them in");
  });

  test("that has grown too long says which rows it lacks, and takes them in with what comes after them", async () => {
    await link(["up 4"]);
    await put(Array.from({ length: 205 }, (_, at) => [`M-${at}`, "EMT", "1/2", `up ${at + 5}`]));
    const [table] = await readTables(["Runs"]);
    const linked = await readLinked(table!);
    // 206 rows there, 201 here.
    expect(linked).toMatchObject({ source: "Mine", lacks: 5 });
    const { last, rows } = moreLinkedRows(linked!, table!.cells.length - 1, (column) => column === 0);
    await addRows("Runs", rows);
    await writeCells({ sheet: "Runs", row: 201, column: 0 }, [last], []);
    await book.settled();
    const all = shownRuns();
    expect(all).toHaveLength(206);
    expect(all).toHaveLength(206);
    expect([all[0], all[200], all[201], all[205]]).toEqual([
      ["T-1", "up 4"],
      ["M-199", "up 204"],
      ["M-200", "up 205"],
      ["M-204", "up 209"],
    ]);
    const [grown] = await readTables(["Runs"]);
    expect((await readLinked(grown!))!.lacks).toBe(0);
    await put(Array.from({ length: 21 }, (_, at) => [`N-${at}`, "EMT", "1/2", "up 4"]));
    expect(shownRuns().at(-1)![0]).toMatch(/^Mine has more rows than stand here/);
  });

  test("that is not there is missed in words", async () => {
    await open({ id: "w", sheetOrder: ["s"], sheets: { s: { id: "s", name: "Sheet1" } } });
    expect(() => findRunsTable(book)).toThrow("has no Runs table");
  });
});

test("saved with values only, a file has what the sheets show and no formula", async () => {
  await open(demoData());
  // Not a straight run: the other reader passes over a result of 0 degrees.
  await add(list("up 36, east 60;1/2;=1+1;EMT"));
  const [live, plain] = [await saveXlsx(book, "Demo"), await saveValuesXlsx(book, "Demo")];
  const [withFormulas, without] = [await readWithExcelJs(live), await readWithExcelJs(plain)];
  const formulasIn = (file: typeof without) => {
    let found = 0;
    file.eachSheet((sheet) => sheet.eachRow((row) => row.eachCell((cell) => (found += cell.formula ? 1 : 0))));
    return found;
  };
  expect(formulasIn(withFormulas)).toBeGreaterThan(50);
  expect(formulasIn(without)).toBe(0);
  for (const { name } of without.worksheets) {
    expect([name, shownValues(without, name)]).toEqual([name, shownValues(withFormulas, name)]);
  }
  expect(without.getWorksheet("Runs")!.getCell(demoRows + 1, 1).value).toBe("=1+1");
});

test("saved, opened and worked out anew, every sheet of the demo shows the same", async () => {
  await open(demoData());
  const shown = () => book.sheets().map((sheet) => [sheet.name, sheet.used()!.values.map((row) => row.map(blank))]);
  const blank = (value: unknown) => (value === "" ? null : value);
  const before = shown();
  const bytes = await saveXlsx(book, "Demo");
  headless.close();
  await open(await openXlsx(bytes, functions));
  expect(shown()).toEqual(before);
});
