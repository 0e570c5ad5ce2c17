/** The page at the bender in a browser: without a network, by touch, read by a checker, nothing lost. */
import { readFileSync } from "node:fs";
import type { BrowserContext, Page } from "playwright-core";
import { benderJobText } from "../../src/made/records/benderJob";
import { readMade } from "../../src/made/records/madeTable";
import { readRecordsText } from "../../src/made/records/recordsText";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { serverAndBrowser } from "./atPage";
import { findingsIn, loadChecker } from "./checker";

jest.setTimeout(120_000);

/** Least side of what is touched [px] (WCAG 2.2, 2.5.5 Target Size, enhanced). */
const TOUCH = 44;
const job = benderJobText({ style: "feet", runs: demoRuns.map((row) => row.map((cell) => cell ?? "")) });

const at = serverAndBrowser();
let context: BrowserContext;
let page: Page;

beforeEach(async () => {
  context = await at().browser.newContext({ viewport: { width: 320, height: 640 }, hasTouch: true });
  page = await context.newPage();
  await page.goto(`${at().address}bender`);
  await page.getByLabel("Paste the job here").fill(job);
  await page.getByRole("button", { name: "Open", exact: true }).tap();
  await page.getByRole("button", { name: /^TH-02\/1/ }).waitFor();
});
afterEach(() => context.close());

const tap = (name: string) => page.getByRole("button", { name, exact: true }).tap();

/** What is smaller than a thumb, of all that can be touched. */
const small = () =>
  page.evaluate(
    (least) =>
      [...document.querySelectorAll("button, input, textarea, summary")].flatMap((element) => {
        const { width, height } = element.getBoundingClientRect();
        return height > 0 && (width < least || height < least) ? [element.outerHTML] : [];
      }),
    TOUCH,
  );

/** Every screen on the way through a piece. */
async function screens(look: (name: string) => Promise<void>) {
  await look("pieces");
  await page.getByRole("button", { name: /^TH-02\/1/ }).tap();
  await look("stick");
  await tap("Next");
  await page.locator("summary").tap();
  await look("step");
  await tap("Scrapped");
  await look("why");
  await tap("Go back, it is not scrapped");
  await tap("Next");
  await tap("Next");
  await look("check");
}

test.each(["light", "dark"] as const)(
  "%s: the checker finds nothing, at 320 px nothing is too small or too wide",
  async (colorScheme) => {
    await page.emulateMedia({ colorScheme });
    await loadChecker(page);
    const found: string[] = [];
    await screens(async (name) => {
      found.push(...(await findingsIn(page)).map((each) => `${name}: ${each}`));
      found.push(...(await small()).map((each) => `${name}, small: ${each}`));
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      if (wide > 0) found.push(`${name} is ${wide} px too wide`);
      const { BENDER_PICTURES } = process.env;
      for (const width of BENDER_PICTURES ? [320, 768, 1200] : []) {
        await page.setViewportSize({ width, height: 900 });
        await page.screenshot({ path: `${BENDER_PICTURES}/${name}-${width}-${colorScheme}.png` });
        await page.setViewportSize({ width: 320, height: 640 });
      }
    });
    expect(found).toEqual([]);
  },
);

test("works without a network once it was loaded: the job, the pieces and the records are still there", async () => {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await context.setOffline(true);
  await page.reload();
  await page.getByRole("button", { name: /^TH-02\/1/ }).tap();
  await tap("Made");
  await page.getByText("TH-02/1 recorded as made.").waitFor();
  await tap("Next");
  await tap("Scrapped");
  await tap("wrong mark");
  await page.getByText("TH-02/1 recorded as scrapped.").waitFor();
  await page.reload();
  await page.getByRole("heading", { name: "2 records on this device" }).waitFor();
  await page.getByRole("button", { name: /^TH-02\/1.*1 of 2 made/ }).waitFor();
  const download = page.waitForEvent("download");
  await tap("Save the records");
  const text = readFileSync(await (await download).path(), "utf8");
  const { records, problems } = readMade(readRecordsText(text));
  expect(problems).toEqual([]);
  expect(records.map(({ piece, good, scrapped, note }) => [piece, good, scrapped, note])).toEqual([
    ["TH-02/1", 1, 0, ""],
    ["TH-02/1", 0, 1, "wrong mark"],
  ]);
});

test("records are cleared only when one says so, and a wrong job changes nothing", async () => {
  await page.getByRole("button", { name: /^TH-02\/1/ }).tap();
  await tap("Made");
  await page.getByText("TH-02/1 recorded as made.").waitFor();
  page.once("dialog", (dialog) => void dialog.dismiss());
  await tap("They are in Made: clear them here");
  await page.getByRole("heading", { name: "1 record on this device" }).waitFor();
  await tap("Open another job");
  await page.getByLabel("Paste the job here").fill('{"format":"other"}');
  await tap("Open");
  await page.getByText("This is not a job for the bender").waitFor();
  await page.getByRole("heading", { name: "1 record on this device" }).waitFor();
  page.once("dialog", (dialog) => void dialog.accept());
  await tap("They are in Made: clear them here");
  await page.getByRole("heading", { name: "0 records on this device" }).waitFor();
});
