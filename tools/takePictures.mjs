// Takes the pictures of the page and the pane kept in docs/pictures: `npm run pictures [-- folder]`.
// Every view of the pane at 320, 450 and 1,200 px, light and dark; docs keeps those that KEPT names.
import fs from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import process from "node:process";
import { build } from "./build.mjs";
import { openBook, withBrowser } from "./localPage.mjs";

const require = createRequire(import.meta.url);
const { paneOf } = require("../tests/browser/keyboard.ts");

const docs = path.resolve(import.meta.dirname, "..", "docs", "pictures");
const VIEWS = ["Start", "A bend", "A run", "The shoe", "Totals", "Tickets", "Bender"];
const WIDTHS = [320, 450, 1200];
const KEPT = ["page", "a-bend-320-light", "a-run-450-dark", "the-shoe-450-light", "tickets-1200-light"];

const folder = process.argv[2];
await build(["functions", "taskpane", "workbench"]);
await withBrowser(async (browser, address) => {
  for (const colorScheme of ["light", "dark"]) await takeAll(browser, address, colorScheme);
});

async function takeAll(browser, address, colorScheme) {
  const page = await browser.newPage({ viewport: { width: 1400, height: 850 }, colorScheme });
  await openBook(page, address);
  await page.getByRole("button", { name: "Ledger pane" }).click();
  await page.frameLocator("iframe").getByText("This workbook is set up").waitFor();
  const pane = paneOf(page);
  const frame = page.locator("iframe");
  // A run with more to see than a single bend.
  await page.evaluate(() => window.ledgerBook.range("Runs!F5").select());
  for (const view of VIEWS) {
    await pane.getByRole("tab", { name: view, exact: true }).click();
    await pane.getByRole("heading", { name: view, level: 2 }).waitFor();
    await pane.locator(".rl-view .fui-Spinner").waitFor({ state: "detached" });
    const name = view.toLowerCase().replaceAll(" ", "-");
    for (const width of WIDTHS) {
      await page.setViewportSize({ width: 1400, height: 850 });
      await frame.evaluate((element, wide) => {
        element.style.cssText += `position: fixed; top: 0; right: 0; height: 100vh; width: ${wide}px; z-index: 99999;`;
      }, width);
      const tall = await pane.evaluate(() => (document.querySelector(".rl-view")?.scrollHeight ?? 0) + 120);
      await page.setViewportSize({ width: 1400, height: Math.min(2400, Math.max(600, tall)) });
      await page.waitForTimeout(400);
      await keep(frame, `${name}-${width}-${colorScheme}`);
    }
    await page.setViewportSize({ width: 1400, height: 850 });
    await frame.evaluate((element) => element.removeAttribute("style"));
    if (view === "A run" && colorScheme === "light") await keep(page, "page");
  }
  await page.close();
}

async function keep(what, name) {
  const folders = [...(folder ? [folder] : []), ...(KEPT.includes(name) && !folder ? [docs] : [])];
  for (const each of folders) {
    fs.mkdirSync(each, { recursive: true });
    await what.screenshot({ path: path.join(each, `${name}.png`) });
  }
}
