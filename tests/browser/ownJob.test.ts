/** A job of one's own in the page's grid, by keyboard and mouse as a person works: nothing typed or pasted is lost. */
import type { CellValue } from "../../workbench/engine";
import { withBench } from "./atPage";
import type { Bench } from "./bench";

jest.setTimeout(300000);

let bench: Bench;

withBench((opened) => (bench = opened), "new");

/** Time between two keys of a person who types at a normal pace [ms]. */
const PACE = 90;

/** Writes a row from its first cell as one does who knows the columns: Tab from cell to cell, Enter at the end. */
async function typeRow(cells: Readonly<Record<string, string>>): Promise<void> {
  const { keyboard } = bench.page;
  const headers = (await bench.values("Runs!A1:F1"))[0]!.map(String);
  const last = headers.indexOf("Route");
  for (let column = 0; column <= last; column++) {
    await keyboard.type(cells[headers[column]!] ?? "", { delay: PACE });
    await keyboard.press(column < last ? "Tab" : "Enter", { delay: PACE });
  }
}

const run = (name: string, size = "3/4") => ({ Run: name, Raceway: "EMT", Size: size, Route: "up 10, east 8'" });

/** The rows of Runs as records, without those in which nothing is written. */
async function runs(): Promise<Record<string, CellValue>[]> {
  const [headers, ...rows] = await bench.sheet("Runs");
  const records = rows.map((row) => Object.fromEntries(headers!.map((header, at) => [String(header), row[at]!])));
  return records.filter(({ Run, Route }) => Run || Route) as Record<string, CellValue>[];
}

/** Runs that the take-off counts: the connectors of 3/4, two for each run, and of 1/2. */
async function connectors(): Promise<number> {
  const [headers, ...rows] = await bench.sheet("Takeoff");
  const quantity = headers!.indexOf("Quantity");
  const ours = rows.filter(([item]) => /connector/.test(String(item)));
  return ours.reduce((sum, row) => sum + Number(row[quantity]), 0);
}

async function copyToClipboard(text: string): Promise<void> {
  await bench.page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await bench.page.evaluate((written) => navigator.clipboard.writeText(written), text);
}

/** Presses a key and waits until the grid is through with it. */
async function press(key: string): Promise<void> {
  await bench.page.keyboard.press(key);
  await bench.idle();
  await bench.settled();
}

/** Text of rows as they come from a spreadsheet, in the columns of Runs. */
async function pasted(rows: readonly Readonly<Record<string, string>>[]): Promise<string> {
  const headers = (await bench.values("Runs!A1:Z1"))[0]!.filter(Boolean).map(String);
  const last = headers.indexOf("Route");
  return rows
    .map((row) =>
      headers
        .slice(0, last + 1)
        .map((header) => row[header] ?? "")
        .join("\t"),
    )
    .join("\n");
}

/** Fills in rows without the keyboard, for what comes after. */
async function fill(rows: readonly Readonly<Record<string, string>>[]): Promise<void> {
  await copyToClipboard(await pasted(rows));
  await bench.goTo("Runs!A2");
  await press("Control+v");
  await bench.page.waitForFunction(
    (count) => window.ledgerBook!.range("Runs!A2:A40").values.filter(([name]) => name).length === count,
    rows.length,
  );
  await bench.settled();
}

test("the cursor is in the first free row of Runs, and nothing is asked", async () => {
  expect(await bench.page.evaluate(() => window.ledgerBook!.selection()!.address)).toMatch(/Runs'?!A2$/);
  await typeRow(run("A-1"));
  await bench.settled();
  expect(await runs()).toMatchObject([run("A-1")]);
});

test("eight rows typed with Tab at a person's pace are eight rows, all counted", async () => {
  for (let number = 1; number <= 8; number++) await typeRow(run(`T-${number}`));
  await bench.settled();
  const written = await runs();
  expect(written).toHaveLength(8);
  written.forEach((row, at) => expect(row).toMatchObject(run(`T-${at + 1}`)));
  expect(await connectors()).toBe(16);
});

test("fourteen rows pasted under two are sixteen, all counted, sizes as text", async () => {
  await fill([run("P-1"), run("P-2")]);
  const more = Array.from({ length: 14 }, (_, at) => run(`P-${at + 3}`, at % 2 ? "1/2" : "3/4"));
  await copyToClipboard(await pasted(more));
  await bench.goTo("Runs!A4");
  await press("Control+v");
  await bench.page.waitForFunction(() => window.ledgerBook!.range("Runs!A17").values[0]![0] === "P-16");
  await bench.settled();
  const written = await runs();
  expect(written).toHaveLength(16);
  written.slice(2).forEach((row, at) => expect(row).toMatchObject(more[at]!));
  expect(await connectors()).toBe(32);
});

test("a copied row pasted below counts, and every size stays what it was, on screen too", async () => {
  await fill([run("P-1"), run("P-2", "1/2")]);
  await bench.page.evaluate(() => window.ledgerBook!.range("Runs!A2:Z2").select());
  await bench.idle();
  await press("Control+c");
  await bench.goTo("Runs!A4");
  await press("Control+v");
  await bench.page.waitForFunction(() => window.ledgerBook!.range("Runs!A4").values[0]![0] === "P-1");
  await bench.settled();
  expect((await runs()).map(({ Size }) => Size)).toEqual(["3/4", "1/2", "3/4"]);
  expect(await connectors()).toBe(6);
  const shown = await bench.page.evaluate(() => {
    const at = window.ledgerBook!.range("Runs!A1:Z1").values[0]!.indexOf("Size");
    return window.ledgerBook!.sheet("Runs").cells(1, at, 3, 1).texts.flat();
  });
  expect(shown).toEqual(["3/4", "1/2", "3/4"]);

  await press("Control+z");
  expect(await runs()).toHaveLength(2);
  expect(await connectors()).toBe(4);
  const formats = await bench.page.evaluate(() => window.ledgerBook!.range("Runs!A2:Z4").numberFormats);
  await press("Control+y");
  await press("Control+z");
  expect(await bench.page.evaluate(() => window.ledgerBook!.range("Runs!A2:Z4").numberFormats)).toEqual(formats);
});

test("a table sorts by the entries of its menu, formulas and all", async () => {
  await fill([run("B-2", "1/2"), run("C-3"), run("A-1")]);
  const before = await runs();
  await openMenu();
  await bench.page.getByText("Descending", { exact: true }).click();
  await bench.page.waitForFunction(() => window.ledgerBook!.range("Runs!A2").values[0]![0] === "C-3");
  await bench.settled();
  const byName = (name: string) => before.find(({ Run }) => Run === name)!;
  expect(await runs()).toEqual(["C-3", "B-2", "A-1"].map(byName));
});

test("a filter hides rows and loses none", async () => {
  await fill([run("B-2", "1/2"), run("C-3"), run("A-1")]);
  await openMenu();
  await bench.page.getByText("C-3", { exact: true }).last().click();
  await bench.page.getByText("Confirm", { exact: true }).click();
  await bench.idle();
  const hidden = () =>
    bench.page.evaluate(() =>
      [2, 3, 4].filter((row) =>
        window
          .ledgerBook!.sheet("Runs")
          .native.getSheet()
          .getRowFiltered(row - 1),
      ),
    );
  expect(await hidden()).toEqual([3]);
  await bench.settled();
  expect(await runs()).toHaveLength(3);
  expect(await connectors()).toBe(6);
});

test("a row inserted between two gets the formulas, and what is typed there counts", async () => {
  await fill([run("P-1"), run("P-2")]);
  await bench.goTo("Runs!A3");
  await bench.page.evaluate(() => window.ledgerBook!.sheet("Runs").native.insertRowsBefore(2, 1));
  await bench.idle();
  await bench.goTo("Runs!A3");
  await typeRow(run("between"));
  await bench.settled();
  expect((await runs()).map(({ Run }) => Run)).toEqual(["P-1", "between", "P-2"]);
  const formulas = await bench.page.evaluate(() => window.ledgerBook!.range("Runs!A2:AH4").formulas);
  expect(formulas.map((row) => row.filter(Boolean).length)).toEqual(Array(3).fill(formulas[0]!.filter(Boolean).length));
  expect(formulas[0]!.filter(Boolean).length).toBeGreaterThan(2);
  expect(await connectors()).toBe(6);
});

test("the take-off is copied as values, for other programs and for another sheet", async () => {
  await fill([run("P-1"), run("P-2", "1/2")]);
  const result = await bench.sheet("Takeoff");
  await bench.page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await bench.page.evaluate(() => window.ledgerBook!.sheet("Takeoff").used()!.select());
  await bench.idle();
  await press("Control+c");
  const text = await bench.page.evaluate(() => navigator.clipboard.readText());
  expect(text.split("\n")).toHaveLength(result.length);
  expect(text).toContain("EMT 3/4 set-screw connector\teach\t2");

  await bench.page.evaluate(() => void window.ledgerBook!.addSheet("Copy"));
  await bench.goTo("Copy!B3");
  await press("Control+v");
  await bench.page.waitForFunction(() => window.ledgerBook!.sheet("Copy").used() !== null);
  const copy = (await bench.sheet("Copy")).slice(2).map((row) => row.slice(1));
  const plain = (rows: CellValue[][]) => rows.map((row) => row.map((value) => value ?? ""));
  expect(plain(copy)).toEqual(plain(result));
  expect(
    await bench.page.evaluate(() => window.ledgerBook!.sheet("Copy").used()!.formulas.flat().filter(Boolean)),
  ).toEqual([]);
});

test("Ctrl+Z works right after a click on a tab", async () => {
  await fill([run("P-1")]);
  await bench.goTo("Runs!A3");
  await typeRow(run("P-2"));
  await bench.settled();
  const tab = (name: string) => bench.page.locator("[data-u-comp=slide-tab-item]", { hasText: name }).first();
  await tab("Shoes").click();
  await tab("Runs").click();
  await press("Control+z");
  const left = await runs();
  expect(left.some(({ Route }) => Route === "up 10, east 8'")).toBe(true);
  expect(left).not.toMatchObject([run("P-1"), run("P-2")]);
});

/** Opens the menu in the heading of the first column. */
async function openMenu(): Promise<void> {
  const { page } = bench;
  const at = await page.evaluate(() => {
    const sheet = window.ledgerBook!.sheet("Runs").native;
    return { width: sheet.getColumnWidth(0), height: sheet.getRowHeight(0) };
  });
  const canvas = (await page.locator("#grid canvas").last().boundingBox())!;
  // The sheet's own headings are 46 px wide and 20 px high; the arrow stands at the right end of the cell.
  await page.mouse.click(canvas.x + 46 + at.width - 9, canvas.y + 20 + at.height / 2);
  await page.getByText("Descending", { exact: true }).waitFor();
}

test("rows that stand apart under the table are said in the pane, and its button takes them in", async () => {
  await fill([run("P-1")]);
  await copyToClipboard(await pasted([run("P-3"), run("P-4")]));
  await bench.goTo("Runs!A4");
  await press("Control+v");
  expect(await connectors()).toBe(2);
  await bench.page.getByRole("button", { name: "Ledger pane" }).click();
  const pane = bench.page.frameLocator("iframe");
  await pane.getByText("2 rows stand under the Runs table and are not in it").waitFor();
  await pane.getByRole("button", { name: "Take them in" }).click();
  await pane.getByText("rows stand under the Runs table").waitFor({ state: "detached" });
  await bench.settled();
  expect(await connectors()).toBe(6);
});

test("a run added by a click in the pane stands under the last one and counts; what others wrote there stays", async () => {
  await fill([run("P-1"), run("P-2", "1")]);
  await bench.page.evaluate(() => window.ledgerBook!.range("Runs!AI4").setValues([["theirs"]]));
  await bench.page.getByRole("button", { name: "Ledger pane" }).click();
  const pane = bench.page.frameLocator("iframe");
  await pane.getByRole("tab", { name: "A run" }).click();
  await pane.getByRole("button", { name: "Add a run" }).click();
  await pane.getByText("No steps yet.").waitFor();
  await pane.getByRole("button", { name: "Add step" }).click();
  await pane.getByRole("textbox", { name: "Step 1" }).fill("east 9'");
  await pane.getByRole("textbox", { name: "Step 1" }).press("Enter");
  await bench.page.waitForFunction(() => window.ledgerBook!.range("Runs!F4").values[0]![0] === "east 9'");
  await bench.settled();
  const written = await runs();
  expect(written).toHaveLength(3);
  expect(written.slice(0, 2)).toMatchObject([run("P-1"), run("P-2", "1")]);
  expect(written[2]).toMatchObject({ Raceway: "EMT", Quantity: 1, "Length in.": 9 * 12, Bends: 0, Check: "OK" });
  expect(await connectors()).toBe(6);
  expect(await bench.values("Runs!AI4")).toEqual([["theirs"]]);
});

test("rows that spill from a formula are as high as their words, and low again when those go", async () => {
  const firstRow = (isHigh: boolean) =>
    bench.page.waitForFunction(
      (high) => window.ledgerBook!.sheet("Checks").native.getRowHeight(1) > 30 === high,
      isHigh,
    );
  await fill([{ ...run("P-1"), Size: "5/8" }]);
  await bench.page.evaluate(() => window.ledgerBook!.range("Checks!A1").select());
  await firstRow(true);
  await bench.page.evaluate(() => window.ledgerBook!.range("Runs!A2:F2").setValues([["", "", "", "", "", ""]]));
  await firstRow(false);
});

test("pasted text stands as its column does, lists and numbers too", async () => {
  await fill([{ ...run("P-1"), Raceway: "emt" }]);
  const styles = await bench.page.evaluate(() => {
    const sheet = window.ledgerBook!.sheet("Runs").native.getSheet();
    return [3, 4, 6].map((column) => ({
      own: sheet.getComposedCellStyle(1, column),
      column: sheet.getColumnStyle(column),
    }));
  });
  for (const { own, column } of styles) expect([own.vt, own.ht]).toEqual([column!.vt, column!.ht]);
  expect(styles[0]!.own.vt).toBeDefined(); // A spelling that the list does not have is taken, and not marked as wrong.
  const marks = await bench.page.evaluate(
    () => window.ledgerBook!.sheet("Runs").native.getSheet().getCell(1, 3)?.markers,
  );
  expect(marks).toEqual({});
  expect(await connectors()).toBe(2);
});
