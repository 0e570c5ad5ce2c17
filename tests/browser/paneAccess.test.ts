import { readFileSync } from "node:fs";
import type { AxeResults } from "axe-core";
import type { Frame } from "playwright-core";
import { atPage } from "./atPage";
import { paneOf } from "./keyboard";
import { openPane } from "./paneJob";

jest.setTimeout(300000);

const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const views = ["Start", "A bend", "A run", "The shoe", "Totals", "Tickets", "Bender"];

const open = atPage();

/** What the checker finds serious or worse: the rule and where. */
async function seriousIn(frame: Frame): Promise<string[]> {
  const results = (await frame.evaluate("axe.run(document, { resultTypes: ['violations'] })")) as AxeResults;
  const grave = results.violations.filter(({ impact }) => impact === "serious" || impact === "critical");
  return grave.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary}`));
}

describe.each(["light", "dark"] as const)("in the %s theme", (colorScheme) => {
  test("the checker finds nothing serious in any view of the pane", async () => {
    const bench = await open();
    await bench.page.emulateMedia({ colorScheme });
    await openPane(bench);
    const pane = paneOf(bench.page);
    await pane.evaluate(axe);
    const found: string[] = [];
    for (const view of views) {
      await pane.getByRole("tab", { name: view, exact: true }).click();
      await pane.getByRole("heading", { name: view, level: 2 }).waitFor();
      await pane.locator(".rl-view .fui-Spinner").waitFor({ state: "detached" });
      const inner = pane.locator(".rl-view [role=tab]");
      for (let part = 0; part < Math.max(1, await inner.count()); part++) {
        if (part > 0) await inner.nth(part).click();
        found.push(...(await seriousIn(pane)).map((each) => `${view}: ${each}`));
      }
    }
    await bench.close();
    expect(found).toEqual([]);
  });

  test("the checker finds nothing serious on the page around it", async () => {
    const bench = await open();
    await bench.page.emulateMedia({ colorScheme });
    await bench.page.evaluate(axe);
    const ours = "axe.run({ include: ['.bar', '.strip', '#dialog'] }, { resultTypes: ['violations'] })";
    const { violations } = (await bench.page.evaluate(ours)) as AxeResults;
    await bench.close();
    expect(violations.filter(({ impact }) => impact === "serious" || impact === "critical")).toEqual([]);
  });
});

test("the checker does find a fault that is put in", async () => {
  const bench = await open();
  await openPane(bench);
  const pane = paneOf(bench.page);
  await pane.evaluate(axe);
  await pane.evaluate(() => document.body.insertAdjacentHTML("beforeend", "<button></button>"));
  expect((await seriousIn(pane)).join()).toContain("button-name");
  await bench.close();
});
