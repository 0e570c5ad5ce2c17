import type { Browser } from "playwright-core";
import type { CellValue } from "../../workbench/engine";
import { Bench } from "./bench";
import { openView, paneOf, press, tabTo, toBar } from "./keyboard";
import { launchBrowser } from "./launch";
import { type PageServer, startServer } from "./server";

jest.setTimeout(300000);

let browser: Browser;
let server: PageServer;
let bench: Bench;

beforeAll(async () => {
  server = await startServer();
  browser = await launchBrowser();
});

afterAll(async () => {
  await browser?.close();
  server?.stop();
});

beforeEach(async () => {
  bench = await Bench.open(browser, server.address);
});

afterEach(async () => {
  expect(bench.complaints).toEqual([]);
  await bench.close();
});

/** Puts an empty workbook in place of the demo. */
async function startEmpty(): Promise<void> {
  await toBar(bench.page);
  await press(bench.page, "Start again from the demo", "Shift+Tab");
  const loaded = bench.page.waitForEvent("load");
  await press(bench.page, "Keep a copy and start empty");
  await loaded;
  await bench.settled();
}

async function openPane(): Promise<void> {
  await toBar(bench.page);
  await bench.page.keyboard.press("Enter");
  await bench.page.frameLocator("iframe").getByRole("tab").first().waitFor();
}

/** Builds a run from its steps. Each new step has the keyboard, with its sample words selected. */
async function buildRun(steps: readonly string[]): Promise<void> {
  const { keyboard } = bench.page;
  const before = await bench.sheet("Runs");
  await openView(bench.page, "A run");
  await press(bench.page, "Add a run");
  await paneOf(bench.page).getByText("No steps yet.").waitFor();
  for (const [index, step] of steps.entries()) {
    await press(bench.page, "Add step");
    await paneOf(bench.page)
      .getByRole("textbox", { name: `Step ${index + 1}` })
      .waitFor();
    await tabTo(bench.page, `Step ${index + 1}`);
    await keyboard.press("Control+A");
    await keyboard.type(step);
    await keyboard.press("Enter");
  }
  await until(async () => {
    const routes = (await bench.sheet("Runs")).map((row) => row[5]);
    return routes.includes(steps.join(", "));
  });
  await bench.settled();
  expect((await bench.sheet("Runs")).length).toBeGreaterThanOrEqual(before.length);
}

async function until(done: () => Promise<boolean>): Promise<void> {
  for (let tries = 0; tries < 100; tries++) {
    if (await done()) return;
    await bench.page.waitForTimeout(100);
  }
  console.log(JSON.stringify(await bench.sheet("Runs")), await paneOf(bench.page).locator("body").innerText()); throw new Error("It did not happen in 10 seconds.");
}

/** Rows of a result sheet as records by header. */
async function rowsOf(sheet: string): Promise<Record<string, CellValue>[]> {
  const [header, ...rows] = await bench.sheet(sheet);
  return rows.map((row) => Object.fromEntries(header!.map((name, at) => [String(name), row[at] ?? null])));
}

const offset = [`east 3' 4-1/2"`, "offset 6 up at 30", "ahead 4'"];
const saddle = ["north 5'", "saddle 3 up at 45", "ahead 4'"];
const rolling = ["north 8'", "offset 8 up 12 east at 45", "ahead 6'"];

test("by keyboard alone: set up, build three runs, and find marks and materials in the sheets, also after a reload", async () => {
  await startEmpty();
  await openPane();
  await press(bench.page, "Set up");
  await paneOf(bench.page).getByText("This workbook is set up").waitFor();
  expect((await bench.page.evaluate(() => window.ledgerBook!.sheets().map(({ name }) => name))).slice(0, 3)).toEqual([
    "Sheet1",
    "Runs",
    "Shoes",
  ]);

  for (const run of [offset, saddle, rolling]) await buildRun(run);

  const schedule = await rowsOf("Schedule");
  const marksOf = (run: string) => schedule.filter((row) => row.Run === run).map((row) => Number(row.Mark));
  // Derived by hand, with the one-shot radius of 4 in. for 1/2 in. conduit (NEC Chapter 9, Table 2). Between the two
  // marks lie the straight, 6/sin 30° less twice the setback 4·tan 15°, and one arc, 4·π/6.
  const spacing = 12 - 2 * 4 * Math.tan(Math.PI / 12) + (4 * Math.PI) / 6;
  const [first, second] = marksOf("Run 1");
  expect(second! - first!).toBeCloseTo(spacing, 6);
  expect(marksOf("Run 2")).toHaveLength(3);
  expect(marksOf("Run 3")).toHaveLength(2);
  const bends = await rowsOf("Bend counts");
  expect(bends.reduce((sum, row) => sum + Number(row.Bends ?? row.Count), 0)).toBe(7);
  const takeoff = await bench.sheet("Takeoff");
  expect(takeoff.flat().some((cell) => /EMT/.test(String(cell)))).toBe(true);

  const sheets = ["Runs", "Shoes", "Schedule", "Takeoff", "Bend counts", "Checks", "Cutting plan"];
  const before = await Promise.all(sheets.map((sheet) => bench.sheet(sheet)));
  await bench.saved();
  await bench.reload();
  expect(await Promise.all(sheets.map((sheet) => bench.sheet(sheet)))).toEqual(before);
  await openPane();
  await paneOf(bench.page).getByText("This workbook is set up").waitFor();
});
