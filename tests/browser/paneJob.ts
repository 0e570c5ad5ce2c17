import type { CellValue } from "../../workbench/engine";
import type { Bench } from "./bench";
import { openView, paneOf, press, tabTo, toBar } from "./keyboard";

/** Three runs of our own: an offset, a saddle, a rolling offset. */
export const threeRuns: readonly (readonly string[])[] = [
  [`east 3' 4-1/2"`, "offset 6 up at 30", "ahead 4'"],
  ["north 5'", "saddle 3 up at 45", "ahead 4'"],
  ["north 8'", "offset 8 up 12 east at 45", "ahead 6'"],
];

/** Puts an empty workbook in place of the demo, by keyboard. */
export async function startEmpty(bench: Bench): Promise<void> {
  await toBar(bench.page);
  await press(bench.page, "Start again from the demo", "Shift+Tab");
  const loaded = bench.page.waitForEvent("load");
  await press(bench.page, "Keep a copy and start empty");
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
