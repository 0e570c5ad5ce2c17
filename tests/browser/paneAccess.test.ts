import { atPage } from "./atPage";
import { findingsIn, loadChecker } from "./checker";
import { paneOf } from "./keyboard";
import { openPane } from "./paneJob";

jest.setTimeout(300000);

const views = ["Start", "A bend", "A run", "The shoe", "Totals", "Tickets", "Bender"];

const open = atPage();

describe.each(["light", "dark"] as const)("in the %s theme", (colorScheme) => {
  test("the checker finds nothing in any view of the pane", async () => {
    const bench = await open();
    await bench.page.emulateMedia({ colorScheme });
    await openPane(bench);
    const pane = paneOf(bench.page);
    await loadChecker(pane);
    const found: string[] = [];
    for (const view of views) {
      await pane.getByRole("tab", { name: view, exact: true }).click();
      await pane.getByRole("heading", { name: view, level: 2 }).waitFor();
      await pane.locator(".rl-view .fui-Spinner").waitFor({ state: "detached" });
      const inner = pane.locator(".rl-view [role=tab]");
      for (let part = 0; part < Math.max(1, await inner.count()); part++) {
        if (part > 0) await inner.nth(part).click();
        found.push(...(await findingsIn(pane)).map((each) => `${view}: ${each}`));
      }
    }
    await bench.close();
    expect(found).toEqual([]);
  });

  test("the checker finds nothing on the page around it", async () => {
    const bench = await open();
    await bench.page.emulateMedia({ colorScheme });
    await loadChecker(bench.page);
    const found = await findingsIn(bench.page, [".bar", ".strip", "#dialog"]);
    await bench.close();
    expect(found).toEqual([]);
  });
});

test("the checker does find a fault that is put in", async () => {
  const bench = await open();
  await openPane(bench);
  const pane = paneOf(bench.page);
  await loadChecker(pane);
  await pane.evaluate(() => document.body.insertAdjacentHTML("beforeend", "<button></button>"));
  expect((await findingsIn(pane)).join()).toContain("button-name");
  await bench.close();
});
