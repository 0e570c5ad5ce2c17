/** The File menu by keyboard alone: the workbook as .xlsx and CSV, out and in. */
import { readFileSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import { demoRuns as rows } from "../../workbench/demo/ferryTerminal";
import type { CellValue } from "../../workbench/engine";
import { readWithExcelJs, shownValues } from "../workbench/workbook/otherReader";
import { withBench } from "./atPage";
import type { Bench } from "./bench";
import { chooseEntry, download, giveFile, withFolder } from "./fileMenu";
import { focused, press, tabTo, toBar } from "./keyboard";

jest.setTimeout(300000);

const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

let bench: Bench;
let folder: string;

withFolder((made) => (folder = made));
withBench((opened) => (bench = opened));

const choose = (entry: RegExp) => chooseEntry(bench, entry);
const downloaded = (work: () => Promise<void>) => download(bench, folder, work);
const give = (entry: RegExp, path: string) => giveFile(bench, entry, path);

/** Goes from the buttons to the grid and types into a cell. */
async function typeInGrid(address: string, text: string): Promise<void> {
  await toBar(bench.page);
  await bench.page.keyboard.press("F6");
  await bench.type(address, text);
}

/** Opens the box for pasted rows. */
async function openBox(): Promise<void> {
  await choose(/clipboard/);
  await dialog().locator("textarea").waitFor();
}

/** Puts a text into the system's clipboard and pastes it where the keyboard is. */
async function paste(text: string): Promise<void> {
  await bench.page.context().grantPermissions(["clipboard-read", "clipboard-write"], { origin: bench.origin });
  await bench.page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
  await bench.page.keyboard.press("Control+V");
}

const dialog = () => bench.page.locator("#dialog[open]");

async function everySheet(): Promise<[string, CellValue[][]][]> {
  const names = await bench.page.evaluate(() => window.ledgerBook!.sheets().map(({ name }) => name));
  const blank = (value: CellValue) => (value === "" ? null : value);
  const sheets = names.map(async (name): Promise<[string, CellValue[][]]> => {
    return [name, (await bench.sheet(name)).map((row) => row.map(blank))];
  });
  return Promise.all(sheets);
}

const runNames = async () => (await bench.sheet("Runs")).map(([name]) => name);
const demoRuns = rows.length - 1;

test("a saved workbook opens again to the same values, in place of what was changed since, which is kept", async () => {
  const before = await everySheet();
  const path = await downloaded(() => choose(/^Save as \.xlsx$/));
  expect(path).toMatch(/Ferry terminal\.xlsx$/);
  await typeInGrid("Runs!A2", "CHANGED");
  await bench.saved();

  await give(/^Open a workbook/, path);
  await dialog().getByText("It takes the place of “Ferry terminal”.").waitFor();
  expect((await focused(bench.page)).name).toBe("Leave it");
  const loaded = bench.page.waitForEvent("load");
  await press(bench.page, "Keep a copy and open");
  await loaded;
  await bench.settled();
  expect(await everySheet()).toEqual(before);

  // Saved as before, and the changed workbook is among the copies.
  await typeInGrid("Runs!A3", "AFTER");
  await bench.saved();
  await bench.reload();
  expect((await runNames()).slice(1, 3)).toEqual(["TH-01", "AFTER"]);
  await toBar(bench.page);
  await press(bench.page, "Earlier copies", "Shift+Tab");
  const again = bench.page.waitForEvent("load");
  await press(bench.page, "Open");
  await again;
  await bench.settled();
  expect((await runNames())[1]).toBe("CHANGED");
});

test("saving mine first comes back to the question; leaving it changes nothing", async () => {
  const path = await downloaded(() => choose(/^Save as \.xlsx$/));
  await typeInGrid("Runs!A2", "MINE");
  await give(/^Open a workbook/, path);
  const mine = await downloaded(() => press(bench.page, "Save mine as .xlsx first"));
  expect(shownValues(await readWithExcelJs(readFileSync(mine)), "Runs")[1]![0]).toBe("MINE");
  await press(bench.page, "Leave it");
  await dialog().waitFor({ state: "detached" });
  expect((await runNames())[1]).toBe("MINE");
});

test("a file that is no workbook is refused in words, and nothing is lost", async () => {
  const path = join(folder, "notes.xlsx");
  await writeFile(path, "No workbook at all, whatever its name says.");
  await typeInGrid("Runs!A2", "MINE");
  await give(/^Open a workbook/, path);
  await dialog().getByText("notes.xlsx was not opened").waitFor();
  expect(await dialog().innerText()).toContain("Your workbook is as it was.");
  await bench.page.keyboard.press("Escape");
  expect((await runNames())[1]).toBe("MINE");
});

test("a browser without room for the file says so, and goes on saving", async () => {
  const path = await downloaded(() => choose(/^Save as \.xlsx$/));
  await bench.page.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (value: unknown, key?: IDBValidKey) {
      if (key !== "current") return put.call(this, value, key);
      IDBObjectStore.prototype.put = put;
      throw new DOMException("There is no room left.", "QuotaExceededError");
    };
  });
  await give(/^Open a workbook/, path);
  await press(bench.page, "Keep a copy and open");
  await dialog().getByText("There is no room left.").waitFor();
  await bench.page.keyboard.press("Escape");
  await typeInGrid("Runs!A2", "STILL MINE");
  await bench.saved();
  await bench.reload();
  expect((await runNames())[1]).toBe("STILL MINE");
});

test("values only: no formula is in the file", async () => {
  const path = await downloaded(() => choose(/values only$/));
  const file = await readWithExcelJs(readFileSync(path));
  expect(shownValues(file, "Schedule").length).toBeGreaterThan(50);
  file.eachSheet((sheet) => sheet.eachRow((row) => row.eachCell((cell) => expect(cell.formula).toBeUndefined())));
});

test("runs pasted with headers in another order are added under the last one, and stay after a reload", async () => {
  await openBox();
  expect((await focused(bench.page)).name).toBe("Rows with their header row");
  const block =
    "Route\tTrade size\tPaint\trun\tConduit\nup 36, east 60\t1/2\tred\t=1+1\tEMT\nup 4', east 2' 6\"\t3/4\t\t@B\tEMT\n";
  await paste(block);
  await press(bench.page, "Add to the Runs table");
  await dialog().getByText("2 rows added to the Runs table").waitFor();
  const told = await dialog().innerText();
  expect(told).toContain("4 columns matched: Run (from “run”), Raceway (from “Conduit”)");
  expect(told).toContain("1 column left out: Paint (the Runs table has no such column).");
  await press(bench.page, "Close");

  const [headers, ...all] = await bench.sheet("Runs");
  const added = all.slice(demoRuns);
  expect(added.map((row) => [row[0], row[3], row[4], row[5]])).toEqual([
    ["=1+1", "EMT", "1/2", "up 36, east 60"],
    ["@B", "EMT", "3/4", `up 4', east 2' 6"`],
  ]);
  // Corner to corner less the gain of a 90 on a 4 in. radius, by hand.
  expect(added[0]![headers!.indexOf("Length in.")]).toBeCloseTo(96 - (8 - 2 * Math.PI), 9);

  // Somebody goes into the cell and out again: the name stays a name.
  const cell = `Runs!A${demoRuns + 2}`;
  await bench.goTo(cell);
  await bench.page.keyboard.press("F2");
  await bench.idle();
  await bench.page.keyboard.press("Enter");
  await bench.idle();
  expect(await bench.values(cell)).toEqual([["=1+1"]]);

  await bench.saved();
  await bench.reload();
  expect((await bench.sheet("Runs")).slice(demoRuns + 1)).toEqual(added);
});

test("what was pasted goes again with one undo", async () => {
  const before = await everySheet();
  await openBox();
  await paste("Run,Raceway,Size,Route\nN-1,EMT,1/2,up 40\nN-2,EMT,1/2,up 40");
  await press(bench.page, "Add to the Runs table");
  await dialog().getByText("2 rows added").waitFor();
  expect(await runNames()).toHaveLength(demoRuns + 3);
  await press(bench.page, "Take them out again");
  await bench.settled();
  expect(await everySheet()).toEqual(before);
});

test("a block that lacks a column stays in the box, with the reason", async () => {
  await openBox();
  await paste("Run,Size,Route\nN-1,1/2,up 40");
  await press(bench.page, "Add to the Runs table");
  await dialog().getByText('must have the column "Raceway"').waitFor();
  expect(await dialog().locator("textarea").inputValue()).toContain("N-1,1/2");
  await bench.page.keyboard.press("Escape");
  expect(await runNames()).toHaveLength(demoRuns + 1);
});

test("a sheet as CSV holds its values, texts guarded, and its rows come in again by CSV", async () => {
  await bench.page.evaluate(() => window.ledgerBook!.range("Runs!A2").setValues([["+1+1"]]));
  const csv = await downloaded(async () => {
    await choose(/as CSV/);
    await dialog().waitFor();
    await press(bench.page, "Save");
  });
  expect(csv).toMatch(/Ferry terminal Runs\.csv$/);
  const text = readFileSync(csv, "utf8");
  expect(text).toContain("\r\n'+1+1,");
  const lines = text.replace("\uFEFF", "").trimEnd().split("\r\n");
  const names = lines.map((line) => line.split(",")[0]!.replace(/^'/, ""));
  expect(names).toEqual(await runNames());

  await give(/CSV file/, csv);
  await dialog().getByText(`${demoRuns} rows added`).waitFor();
  expect(await dialog().innerText()).toContain("4 columns left out: Length in. (the workbook works it out)");
  await press(bench.page, "Close");
  const [, ...rows] = await bench.sheet("Runs");
  expect(rows.slice(demoRuns)).toEqual(rows.slice(0, demoRuns));
});

test("Escape and Tab close the menu, and the keyboard is where it was", async () => {
  await toBar(bench.page);
  await tabTo(bench.page, "File", "Shift+Tab");
  await bench.page.keyboard.press("ArrowUp");
  expect((await focused(bench.page)).name).toMatch(/clipboard/);
  await bench.page.keyboard.press("s");
  expect((await focused(bench.page)).name).toBe("Save as .xlsx");
  await bench.page.keyboard.press("Escape");
  expect(await focused(bench.page)).toMatchObject({ name: "File" });
  expect(await bench.page.locator("#file-menu").isHidden()).toBe(true);
});

test.each(["light", "dark"] as const)("the checker finds nothing in menu and dialogs, %s", async (colorScheme) => {
  const { page } = bench;
  await page.emulateMedia({ colorScheme });
  await page.evaluate(axe);
  const ours = "axe.run({ include: ['.bar', '.told', '#dialog'] }, { resultTypes: ['violations'] })";
  const found: string[] = [];
  const check = async (where: string) => {
    const { violations } = (await page.evaluate(ours)) as AxeResults;
    found.push(...violations.map(({ id, nodes }) => `${where}: ${id} ${nodes[0]!.html}`));
  };
  await page.locator("#file").press("Enter");
  await check("menu");
  await page.keyboard.press("Escape");
  await choose(/as CSV/);
  await dialog().waitFor();
  await check("CSV");
  await page.keyboard.press("Escape");
  await openBox();
  await press(page, "Add to the Runs table");
  await dialog().getByText("it is empty").waitFor();
  await check("paste");
  await page.keyboard.press("Escape");
  expect(found).toEqual([]);
});
