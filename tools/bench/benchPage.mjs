// How long the local page makes a person wait: part of `npm run bench`, alone with `npm run bench -- --page`.
import { createRequire } from "node:module";
import { generatedRuns } from "./generatedRuns.cjs";
import { withBrowser } from "../localPage.mjs";

const require = createRequire(import.meta.url);
require("../typescript.cjs");
const { TABS } = require("../../taskpane/workbook/items.ts");
const { DEMO_ROWS, demoContent } = require("../../workbench/demo/demoBook.ts");
const { recordsIn, setUpContent } = require("../../workbench/workbook/content/jobContent.ts");
const { openData } = require("../../workbench/workbook/openData.ts");

const EDITS = 10;
const TRIPS = "results ÷ JSON trip of the workbook";
const seconds = (ms) => `${(ms / 1000).toFixed(2)} s`;

function median(numbers) {
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

/** Yardstick: the page's workbook written to JSON text and read back, by the page, as often as the time was taken. */
const against = (times, trips) => `${(median(times) / median(trips)).toFixed(0)} ×`;

const spread = (times) => `${seconds(median(times))} (${seconds(Math.max(...times))})`;

const runsSheet = demoContent().find(({ name }) => name === "Runs");
const demoRuns = DEMO_ROWS.Runs?.length ?? 0;
const headings = (runsSheet?.cells[0] ?? []).map((cell) => String(cell?.value ?? ""));
/** The letter of a column of Runs. */
const letterOf = (heading) => String.fromCharCode(65 + headings.indexOf(heading));

/** The demo workbook with that many made-up runs in place of its own; with its own when null. */
function workbookOf(count) {
  if (count === null) return null;
  const runs = recordsIn(generatedRuns(count, 7));
  const content = setUpContent(TABS, {
    rows: { ...DEMO_ROWS, Runs: runs, Issued: runs, Made: [] },
    traced: "EMT 1/2 strap",
  });
  return { savedAt: 1, data: { ...openData(content), name: `${count} runs` } };
}

/** Opens the page in a browser that has never seen it; with a workbook of `count` runs stored, when given. */
async function opened(browser, address, count) {
  const context = await browser.newContext({ viewport: { width: 1200, height: 750 } });
  context.setDefaultTimeout(300000);
  await context.grantPermissions(["clipboard-read", "clipboard-write"], { origin: new URL(address).origin });
  const page = await context.newPage();
  await page.addInitScript(watchTasks);
  await page.goto(`${address}workbench/?job=demo`);
  await ready(page);
  const workbook = workbookOf(count);
  if (workbook) {
    await page.evaluate(store, workbook);
    await page.reload();
    await ready(page);
  }
  return { context, page };
}

async function ready(page) {
  await page.waitForFunction(() => window.ledgerBook !== undefined);
  await page.evaluate(() => window.ledgerBook.settled());
  await page.evaluate(idle);
}

/** Ten edits of one run each: how long the page could not answer, and when every result was there. */
async function edits(browser, address, count) {
  const { context, page } = await opened(browser, address, count);
  const runs = count ?? demoRuns;
  const longest = [];
  const results = [];
  const trips = [];
  for (let edit = 0; edit < EDITS; edit++) {
    const row = 2 + ((edit * 397) % runs);
    const column = letterOf(["Route", "Quantity", "Size", "Area"][edit % 4]);
    const value = [`up ${30 + edit}, east ${90 + edit}`, 5 + edit, "3/4", `Area ${20 + edit}`][edit % 4];
    const { task, all } = await page.evaluate(timeEdit, { address: `Runs!${column}${row}`, value });
    trips.push(await page.evaluate(jsonTrip));
    longest.push(task);
    results.push(all);
  }
  await context.close();
  return [count === null ? `${runs} (the demo)` : count, spread(longest), spread(results), against(results, trips)];
}

/** 500 rows pasted with the keyboard under the demo's own. */
async function paste(browser, address) {
  const { context, page } = await opened(browser, address, null);
  const rows = generatedRuns(500, 11).slice(1);
  const end = demoRuns + 1;
  await page.evaluate((text) => navigator.clipboard.writeText(text), rows.map((row) => row.join("\t")).join("\n"));
  await page.evaluate((at) => window.ledgerBook.range(at).select(), `Runs!A${end + 1}`);
  await page.locator("canvas").first().waitFor();
  await page.evaluate(idle);
  await page.evaluate(() => (window.longTasks.length = 0));
  const start = await page.evaluate(() => performance.now());
  await page.keyboard.press("Control+V");
  const last = { at: `Runs!A${end + rows.length}`, name: rows[rows.length - 1][0] };
  await page.waitForFunction(({ at, name }) => window.ledgerBook.range(at).values[0]?.[0] === name, last);
  const all = await page.evaluate(async () => {
    await window.ledgerBook.settled();
    return performance.now();
  });
  await page.evaluate(idle);
  const task = await page.evaluate(() => Math.max(0, ...window.longTasks));
  const trip = await page.evaluate(jsonTrip);
  await context.close();
  return { task, all: all - start, trip };
}

/** From the address to a grid that takes an edit, to every result, and the bytes that came over the wire. */
async function coldStart(browser, address, count) {
  const context = await browser.newContext({ viewport: { width: 1200, height: 750 } });
  context.setDefaultTimeout(300000);
  const page = await context.newPage();
  const client = await context.newCDPSession(page);
  await client.send("Network.enable");
  if (count !== undefined) {
    await page.goto(`${address}workbench/?job=demo`);
    await ready(page);
    const workbook = workbookOf(count);
    if (workbook) await page.evaluate(store, workbook);
    await page.goto("about:blank");
  }
  await client.send("Network.setCacheDisabled", { cacheDisabled: true });
  await page.goto(`${address}workbench/${count === undefined ? "?job=demo" : ""}`, { waitUntil: "commit" });
  const usable = await page.evaluate(usableAt);
  const all = await page.evaluate(async () => {
    await window.ledgerBook.settled();
    return performance.now();
  });
  const trip = await page.evaluate(jsonTrip);
  await context.close();
  return { usable, all, trip };
}

/** Runs inside the page: how long its workbook takes to JSON text and back [ms]. */
function jsonTrip() {
  const data = window.ledgerBook.snapshot();
  const start = performance.now();
  JSON.parse(JSON.stringify(data));
  return performance.now() - start;
}

/** Runs inside the page: after how long the grid is drawn and takes edits [ms]. */
async function usableAt() {
  while (window.ledgerBook === undefined) await new Promise((resolve) => setTimeout(resolve, 5));
  await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
  return performance.now();
}

/** Runs inside the page before anything else: notes every task that holds it up for 50 ms or more. */
function watchTasks() {
  window.longTasks = [];
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) window.longTasks.push(duration);
  }).observe({ type: "longtask", buffered: true });
}

/** Runs inside the page: waits until it has nothing to do. */
async function idle() {
  for (let turn = 0; turn < 5; turn++) {
    await new Promise((resolve) => requestIdleCallback(resolve));
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

/** Runs inside the page: makes an edit and times it. */
async function timeEdit({ address, value }) {
  window.longTasks.length = 0;
  const start = performance.now();
  window.ledgerBook.range(address).setValues([[value]]);
  await window.ledgerBook.settled();
  const all = performance.now() - start;
  // What the drawing and the saving after it take counts too.
  for (let turn = 0; turn < 5; turn++) {
    await new Promise((resolve) => requestIdleCallback(resolve));
    await new Promise((resolve) => setTimeout(resolve, 150));
  }
  return { task: Math.max(0, ...window.longTasks), all };
}

/** Runs inside the page: writes a workbook into its store, past the page. */
function store(value) {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open("raceway-ledger");
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const writing = opening.result.transaction("workbooks", "readwrite");
      writing.objectStore("workbooks").put(value, "current");
      writing.oncomplete = resolve;
      writing.onerror = () => reject(writing.error);
    };
  });
}

/** Prints the tables of the page. */
export const pageBench = (table) =>
  withBrowser(async (browser, address, bytesSent) => {
    const start = Date.now();
    const rows = [
      ["runs", "longest task of an edit, median (worst of ten)", "edit to all results, median (worst)", TRIPS],
    ];
    for (const count of [null, 500, 2000]) rows.push(await edits(browser, address, count));
    console.log("The local page: one edit of one run, ten different ones (tasks under 50 ms count as 0)");
    table(rows);

    const first = [];
    const again = [];
    let bytes = 0;
    for (let turn = 0; turn < 5; turn++) {
      const before = bytesSent();
      first.push(await coldStart(browser, address));
      bytes = bytesSent() - before;
      again.push(await coldStart(browser, address, 500));
    }
    const all = (starts, key) => starts.map((each) => each[key]);
    const of = (starts, key) => spread(all(starts, key));
    const trips = (starts) => against(all(starts, "all"), all(starts, "trip"));
    console.log("Opening, nothing cached: median (worst) of five");
    table([
      ["workbook", "usable", "all results", "on the wire", TRIPS],
      ["the demo, first visit", of(first, "usable"), of(first, "all"), `${(bytes / 1e6).toFixed(2)} MB`, trips(first)],
      ["500 runs, stored", of(again, "usable"), of(again, "all"), "", trips(again)],
    ]);

    const pastes = [];
    for (let turn = 0; turn < 3; turn++) pastes.push(await paste(browser, address));
    console.log("500 rows pasted under the demo's: median (worst) of three");
    table([
      ["longest task", "to all results", TRIPS],
      [of(pastes, "task"), of(pastes, "all"), trips(pastes)],
    ]);
    console.log(`(the page's part took ${seconds(Date.now() - start)})`);
  });
