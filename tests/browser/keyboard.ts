import type { Frame, Page } from "playwright-core";

/** Tab stops tried before giving up: more than page and pane have. */
const mostStops = 150;

/** What has the keyboard, as a screen reader would name it: page or pane, whichever it is in. */
export function focused(page: Page): Promise<{ name: string; role: string; inPane: boolean }> {
  return page.evaluate(() => {
    const outer = document.activeElement;
    const inPane = outer instanceof HTMLIFrameElement;
    const element = inPane ? outer.contentDocument!.activeElement : outer;
    const labels = (element as HTMLInputElement | null)?.labels;
    const text = (node: Element | null | undefined) => node?.textContent?.replace(/\s+/g, " ").trim() ?? "";
    const name = element?.getAttribute("aria-label") ?? (labels?.length ? text(labels[0]) : text(element));
    return { name, role: element?.getAttribute("role") ?? element?.localName ?? "", inPane };
  });
}

/** Goes to the buttons above the grid with F6; in the grid Tab goes from cell to cell. */
export async function toBar(page: Page): Promise<void> {
  for (let part = 0; part < 3; part++) {
    if ((await focused(page)).name === "Ledger pane") return;
    await page.keyboard.press("F6");
  }
  throw new Error("F6 does not lead to the buttons above the grid.");
}

/** Goes into the pane with F6. */
export async function toPane(page: Page): Promise<void> {
  for (let part = 0; part < 3; part++) {
    if ((await focused(page)).inPane) return;
    await page.keyboard.press("F6");
  }
  throw new Error("F6 does not lead to the pane.");
}

/** Presses Tab until something of that name has the keyboard. */
export async function tabTo(page: Page, name: string | RegExp, key = "Tab"): Promise<void> {
  const passed: string[] = [];
  for (let stop = 0; stop < mostStops; stop++) {
    const here = await focused(page);
    if (typeof name === "string" ? here.name === name : name.test(here.name)) return;
    passed.push(`${here.role} "${here.name.slice(0, 30)}"`);
    await page.keyboard.press(key);
  }
  throw new Error(`${key} does not lead to ${String(name)}. It passed ${[...new Set(passed)].join(", ")}.`);
}

/** Goes to something by Tab and presses Enter on it. */
export async function press(page: Page, name: string | RegExp, key = "Tab"): Promise<void> {
  await tabTo(page, name, key);
  await page.keyboard.press("Enter");
}

/** Opens a view of the pane: by Tab to the row of tabs, then by arrow. */
export async function openView(page: Page, name: string): Promise<void> {
  await toPane(page);
  await tabTo(page, /^(Start|A bend|A run|The shoe|Totals|Tickets)$/, "Shift+Tab");
  await arrowTo(page, name);
  await paneOf(page).getByRole("heading", { name, level: 2 }).waitFor();
  await paneOf(page).locator(".rl-view .fui-Spinner").waitFor({ state: "detached" });
}

/** Opens the tab of that name by arrow, from another tab of its row. */
export async function arrowTo(page: Page, name: string): Promise<void> {
  for (let stop = 0; stop < 6 && (await focused(page)).name !== name; stop++) await page.keyboard.press("ArrowRight");
  if ((await focused(page)).name !== name) throw new Error(`No arrow leads to the tab ${name}.`);
  await page.keyboard.press("Enter");
}

/** The pane's own page. */
export function paneOf(page: Page): Frame {
  const frame = page.frames().find((each) => each.parentFrame() === page.mainFrame());
  if (!frame) throw new Error("The pane is not open.");
  return frame;
}
