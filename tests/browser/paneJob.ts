import type { CellValue } from "../../workbench/engine";
import type { Bench } from "./bench";
import { arrowTo, openView, paneOf, press, tabTo, toBar } from "./keyboard";
import { pdfPages } from "./pdfText";

/** Three runs of our own: an offset, a saddle, a rolling offset. */
export const threeRuns: readonly (readonly string[])[] = [
  [`east 3' 4-1/2"`, "offset 6 up at 30", "ahead 4'"],
  ["north 5'", "saddle 3 up at 45", "ahead 4'"],
  ["north 8'", "offset 8 up 12 east at 45", "ahead 6'"],
];

/** Puts an empty workbook in place of the demo, by keyboard. */
export async function startEmpty(bench: Bench): Promise<void> {
  await toBar(bench.page);
  await press(bench.page, "New job …", "Shift+Tab");
  const loaded = bench.page.waitForEvent("load");
  await press(bench.page, "Start with an empty workbook");
  await loaded;
  await bench.settled();
}

/** Opens the pane by keyboard. */
export async function openPane(bench: Bench): Promise<void> {
  await toBar(bench.page);
  await bench.page.keyboard.press("Enter");
  await bench.page.frameLocator("iframe").getByRole("tab").first().waitFor();
}

/** Sets the workbook up by keyboard. */
export async function setUp(bench: Bench): Promise<void> {
  await press(bench.page, "Set up");
  await paneOf(bench.page).getByText("This workbook is set up").waitFor();
}

/** Builds a run from its steps by keyboard, and waits until its route stands in the sheet. */
export async function buildRun(bench: Bench, steps: readonly string[]): Promise<void> {
  const { page } = bench;
  await openView(page, "A run");
  await press(page, "Add a run");
  await paneOf(page).getByText("No steps yet.").waitFor();
  for (const [index, step] of steps.entries()) {
    await press(page, "Add step");
    const field = `Step ${index + 1}`;
    await paneOf(page).getByRole("textbox", { name: field }).waitFor();
    await tabTo(page, field);
    await page.keyboard.press("Control+A");
    await page.keyboard.type(step);
    await page.keyboard.press("Enter");
  }
  const route = steps.join(", ");
  await page.waitForFunction(
    (wanted) => window.ledgerBook!.range("Runs!F1:F9").values.some(([cell]) => cell === wanted),
    route,
  );
  await bench.settled();
}

/** Rows of a sheet as records by header. */
export async function rowsOf(bench: Bench, sheet: string): Promise<Record<string, CellValue>[]> {
  const [header, ...rows] = await bench.sheet(sheet);
  return rows.map((row) => Object.fromEntries(header!.map((name, at) => [String(name), row[at] ?? null])));
}

/** Plans the cuts in the pane by keyboard; the proof line of each lot. */
export async function planCuts(bench: Bench): Promise<string[]> {
  await openView(bench.page, "Totals");
  await tabTo(bench.page, "Take-off");
  await arrowTo(bench.page, "Cuts");
  await press(bench.page, "Plan the cuts");
  const lots = paneOf(bench.page).locator("summary:has(strong)");
  await lots.first().waitFor();
  return lots.allInnerTexts();
}

/** Prints the tickets of the whole job by keyboard, as the print window would to PDF; the text of each page. */
export async function printTickets(bench: Bench): Promise<string[]> {
  const pane = paneOf(bench.page);
  await openView(bench.page, "Tickets");
  await pane.getByRole("combobox", { name: "Tickets for" }).waitFor();
  await tabTo(bench.page, "Tickets for");
  await bench.page.keyboard.press("Home");
  await pane.evaluate(() => {
    // The print window itself is the browser's, and nobody is there to close it.
    new MutationObserver(() => {
      const frame = document.querySelector<HTMLIFrameElement>("iframe#rlt-print");
      if (frame?.contentWindow) frame.contentWindow.print = () => document.body.setAttribute("data-printing", "");
    }).observe(document.body, { childList: true });
  });
  await press(bench.page, "Print");
  await pane.locator("body[data-printing]").waitFor();
  const html = await pane.locator("iframe#rlt-print").getAttribute("srcdoc");
  const paper = await bench.page.context().newPage();
  try {
    await paper.setContent(html ?? "");
    return pdfPages(await paper.pdf({ format: "Letter" }));
  } finally {
    await paper.close();
  }
}
