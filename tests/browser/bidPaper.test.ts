/** Recap, order form and change order of the demo on paper: printed to PDF by the browser, as the pane's Print does it. */
import type { Browser, Page } from "playwright-core";
import { changeOrder } from "../../src/bid/change/changeOrder";
import { recapTable } from "../../src/bid/recap";
import { orderForm } from "../../src/takeoff/reports/orderForm";
import { showMoney } from "../../src/units/money";
import { bidDocument, wordsOfBid } from "../../taskpane/totals/overview/bidDocument";
import { demoAllowances, demoBid, demoCosts, demoCounts, demoFactors } from "../../workbench/demo/ferryBid";
import { demoLabor, demoPrices, demoRules, demoStock } from "../../workbench/demo/ferryTables";
import { demoRuns, issuedRuns } from "../../workbench/demo/ferryTerminal";
import { launchBrowser } from "./launch";
import { pdfPages } from "./pdfText";

const lists = {
  ...{ prices: demoPrices, labor: demoLabor, rules: demoRules, stock: demoStock, counts: demoCounts },
  ...{ allowances: demoAllowances, factors: demoFactors, costs: demoCosts },
};
const facts = { words: wordsOfBid(demoBid), printed: "today" };
const bare = (text: unknown): string => String(text).replace(/\s/g, "");

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launchBrowser();
  // As from a dark theme: paper stays white.
  page = await browser.newPage({ colorScheme: "dark" });
}, 120_000);
afterAll(() => browser?.close());

/** Page x of y, as each page says it. */
const pageNumbers = (pages: readonly string[]) =>
  pages.map((text) => /page(\d+)of(\d+)/.exec(text)?.slice(1).map(Number));

async function printed(title: string, table: (string | number)[][], format: string): Promise<string[]> {
  await page.setContent(bidDocument(title, table, facts));
  return pdfPages(await page.pdf({ format }));
}

test.each(["A4", "Letter"])(
  "a recap on %s has its title block, every line with its amount, and the number of its pages",
  async (format) => {
    const table = recapTable(demoRuns, demoBid, lists);
    const pages = await printed("Recap", table, format);
    const [first = ""] = pages;
    for (const words of ["Recap", "Ferry terminal, raceways and wire", "Demo bidder", "2026-04-14", "printed today"]) {
      expect(first).toContain(bare(words));
    }
    const all = pages.join("");
    const amounts = table.filter(([, , amount]) => typeof amount === "number");
    expect(amounts.length).toBeGreaterThan(10);
    for (const [line, , amount] of amounts) {
      expect(all).toContain(bare(line));
      expect(all).toContain(bare(showMoney(Number(amount))));
    }
    // What is said in the title block does not stand among the lines again.
    expect(all.split("Demobidder")).toHaveLength(2);
    expect(pageNumbers(pages)).toEqual(pages.map((_, at) => [at + 1, pages.length]));
  },
  120_000,
);

test("an order form goes on over pages with its headings on each, and shows no price", async () => {
  const table = orderForm(demoRuns, lists);
  const pages = await printed("Order form", table, "Letter");
  expect(pages.length).toBeGreaterThan(1);
  expect(pageNumbers(pages)).toEqual(pages.map((_, at) => [at + 1, pages.length]));
  const lines = pages.filter((text) => text.includes("EMT1"));
  expect(lines.length).toBeGreaterThan(0);
  for (const text of lines) expect(text).toContain("ItemUnitNeeded");
  for (const [item] of table.slice(1)) expect(pages.join("")).toContain(bare(item).replace(/^notread:?/, ""));
  expect(pages.join("")).not.toMatch(/price|\$/i);
}, 120_000);

test("a change order has what moved and what it comes to", async () => {
  const table = changeOrder(issuedRuns, demoRuns, demoBid, lists);
  const all = (await printed("Change order", table, "Letter")).join("");
  const total = table.find(([change]) => change === "total")!;
  expect(all).toContain(bare(showMoney(Number(total[table[0]!.indexOf("Amount")]))));
  for (const [change, item] of table.slice(1)) {
    if (change === "added" || change === "deducted") expect(all).toContain(bare(item));
  }
}, 120_000);

test("paper is black on white, from a dark theme too", async () => {
  await page.setContent(bidDocument("Recap", recapTable(demoRuns, demoBid, lists), facts));
  const colors = await page.evaluate(() => {
    const style = getComputedStyle(document.body);
    return [style.color, style.backgroundColor];
  });
  expect(colors).toEqual(["rgb(0, 0, 0)", "rgb(255, 255, 255)"]);
});
