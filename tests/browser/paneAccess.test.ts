import type { Frame } from "playwright-core";
import { atPage } from "./atPage";
import { findingsIn, loadChecker } from "./checker";
import { paneOf } from "./keyboard";
import { openPane } from "./paneJob";

jest.setTimeout(300000);

const views = ["Start", "A bend", "A run", "The shoe", "Totals", "Tickets", "Bender"];

/** Least side of what is touched in the pane, and in the view at the bender [px]: this project's own rule. */
const LEAST = 32;
const LEAST_AT_BENDER = 44;

const open = atPage();

/** Goes through every view of the pane and every part of it. */
async function everyView(pane: Frame, look: (view: string) => Promise<void>): Promise<void> {
  for (const view of views) {
    await pane.getByRole("tab", { name: view, exact: true }).click();
    await pane.getByRole("heading", { name: view, level: 2 }).waitFor();
    await pane.locator(".rl-view .fui-Spinner").waitFor({ state: "detached" });
    const inner = pane.locator(".rl-view [role=tab]");
    for (let part = 0; part < Math.max(1, await inner.count()); part++) {
      if (part > 0) await inner.nth(part).click();
      await pane.locator(".rl-view .fui-Spinner").waitFor({ state: "detached" });
      await look(view);
    }
  }
}

/** Controls that are seen and smaller than a thumb, with their size; what is folded is unfolded before. */
const small = (pane: Frame, within: string, least: number): Promise<string[]> =>
  pane.evaluate(
    ([root, side]) => {
      const inRoot = [...document.querySelectorAll(root)];
      for (const fold of inRoot.flatMap((each) => [...each.querySelectorAll("details")])) fold.open = true;
      const controls = inRoot.flatMap((each) => [
        ...each.querySelectorAll("button, a[href], input, select, textarea, summary, [role=button], [role=tab]"),
      ]);
      return controls.flatMap((control) => {
        const { width, height } = control.getBoundingClientRect();
        const isSmall = height > 0 && (width < side || height < side);
        return isSmall ? [`${width} × ${height}: ${control.outerHTML.slice(0, 120)}`] : [];
      });
    },
    [within, least] as const,
  );

describe.each(["light", "dark"] as const)("in the %s theme", (colorScheme) => {
  test("the checker finds nothing in any view of the pane", async () => {
    const bench = await open();
    await bench.page.emulateMedia({ colorScheme });
    await openPane(bench);
    const pane = paneOf(bench.page);
    await loadChecker(pane);
    const found: string[] = [];
    await everyView(pane, async (view) => {
      found.push(...(await findingsIn(pane)).map((each) => `${view}: ${each}`));
    });
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

test("every control of every view is large enough for a thumb, and a small one would be found", async () => {
  const bench = await open();
  await openPane(bench);
  const pane = paneOf(bench.page);
  const found: string[] = [];
  const measured = new Set<string>();
  await everyView(pane, async (view) => {
    measured.add(view);
    found.push(...(await small(pane, ".rl-pane", LEAST)).map((each) => `${view}: ${each}`));
    found.push(...(await small(pane, ".rlb", LEAST_AT_BENDER)).map((each) => `${view}, at the bender: ${each}`));
  });
  expect([...measured]).toEqual(views);
  expect(found).toEqual([]);
  await pane.locator(".rlb").evaluate((root) => root.insertAdjacentHTML("beforeend", "<button>x</button>"));
  await pane.locator(".rlb > button").evaluate((button) => (button.style.cssText = "min-height: 0; height: 40px"));
  expect((await small(pane, ".rlb", LEAST_AT_BENDER)).join()).toContain("40: <button");
  await bench.close();
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
