import { createRequire } from "node:module";
import process from "node:process";
import fs from "node:fs";
import { openBook, withBrowser } from "./localPage.mjs";
const require = createRequire(import.meta.url);
const { paneOf } = require("../tests/browser/keyboard.ts");
const out = process.argv[2]; fs.mkdirSync(out, { recursive: true });
const VIEWS = (process.argv[3] ?? "Start,A bend,A run,The shoe,Totals,Tickets,Bender").split(",");
const WIDTHS = (process.argv[4] ?? "320,450,768,1200").split(",").map(Number);
const SCHEMES = (process.argv[5] ?? "light,dark").split(",");
await withBrowser(async (browser, address) => {
  for (const colorScheme of SCHEMES) {
    const context = await browser.newContext({ viewport: { width: 1400, height: 850 }, colorScheme, hasTouch: true });
    const page = await context.newPage();
    await openBook(page, address);
    await page.getByRole("button", { name: "Ledger pane" }).click();
    await page.frameLocator("iframe").getByText("This workbook is set up").waitFor();
    const pane = paneOf(page);
    const frame = page.locator("iframe");
    await page.evaluate(() => window.ledgerBook.range("Runs!F5").select());
    for (const view of VIEWS) {
      await page.setViewportSize({ width: 1400, height: 850 });
      await pane.getByRole("tab", { name: view, exact: true }).click();
      await pane.getByRole("heading", { name: view, level: 2 }).waitFor();
      await pane.locator(".rl-view .fui-Spinner").waitFor({ state: "detached" });
      const inner = pane.locator(".rl-view [role=tab]");
      for (let part = 0; part < Math.max(1, await inner.count()); part++) {
        const label = (await inner.count()) ? await inner.nth(part).innerText() : "";
        for (const width of WIDTHS) {
          await page.setViewportSize({ width: 1400, height: 850 });
          await frame.evaluate((element, wide) => { element.style.cssText = `position: fixed; top: 0; right: 0; height: 100vh; width: ${wide}px; z-index: 99999;`; }, width);
          if ((await inner.count()) && part > 0) await inner.nth(part).click();
          await page.waitForTimeout(200);
          const tall = await pane.evaluate(() => (document.querySelector(".rl-view")?.scrollHeight ?? 0) + 120);
          await page.setViewportSize({ width: 1400, height: Math.min(2000, Math.max(600, tall)) });
          await page.waitForTimeout(300);
          const name = `${view}-${label}-${width}-${colorScheme}`.replaceAll(" ", "-");
          await frame.screenshot({ path: `${out}/${name}.png` });
          const small = await pane.evaluate(() => [...document.querySelectorAll("button, a[href], input, select, textarea, summary, [role=button], [role=tab], [role=slider]")].flatMap((e) => {
            const { width, height } = e.getBoundingClientRect();
            return height > 0 && (width < 31.9 || height < 31.9) ? [`${Math.round(width)}x${Math.round(height)} ${e.outerHTML.replace(/class="([^"]*)"/, (_, c) => 'c="' + c.split(" ").filter((x) => /fui|rl/.test(x)).join(" ") + '"').slice(0, 110)}`] : [];
          }));
          if (width === WIDTHS[0] && colorScheme === SCHEMES[0]) console.log(name, small.length, [...new Set(small)].slice(0, 12).join("\n   "));
          const wide = await pane.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
          if (wide > 0) console.log(name, "too wide", wide);
        }
        await frame.evaluate((element) => element.removeAttribute("style"));
      }
    }
    await context.close();
  }
});
