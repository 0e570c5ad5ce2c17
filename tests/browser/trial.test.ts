import { withBench } from "./atPage";
import type { Bench } from "./bench";
import { paneOf, press } from "./keyboard";
import { openPane, startEmpty } from "./paneJob";

jest.setTimeout(600_000);

let bench: Bench;

withBench((opened) => (bench = opened));

const sheets = () => bench.page.evaluate(() => window.ledgerBook!.sheets().map(({ name }) => name));
const pane = () => paneOf(bench.page);
const begin = async () => {
  await startEmpty(bench);
  await openPane(bench);
  await press(bench.page, "Look at what this Excel can do");
  await pane().getByRole("button", { name: "Begin" }).waitFor();
  await press(bench.page, "Begin");
};

test("a person tries this page out as if it were their Excel, and copies the report", async () => {
  await begin();
  await pane()
    .getByText("Through: what was tried is as the guide has it. 5 looks are not to be had here.")
    .waitFor({ timeout: 400_000 });
  const report = await pane().getByRole("textbox", { name: "The report" }).inputValue();
  expect(report).toMatch(/^# Trial of an Excel with Raceway Ledger \d+\.\d+\.\d+\n/);
  expect(report).toMatch(/ok {2}\d{3} formulas give what the guide prints/);
  expect(report).toMatch(/## A job of 1,000 runs \(speed 1000\)\n- {2}SCHEDULE, first: \d+\.\d\d s/);
  expect(report).not.toMatch(/DIFFERS|BROKE OFF|no answer/);
  expect(await sheets()).toEqual(["Sheet1"]);
  await pane().getByRole("button", { name: "Try saving" }).click();
  await pane().getByRole("group", { name: "Did a file arrive?" }).getByRole("button", { name: "Yes" }).click();
  await bench.page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await pane().getByRole("button", { name: "Copy the report" }).click();
  await pane().getByText("Copied.").waitFor();
  const copied = await bench.page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toBe(`${report.replace("saving from the pane: not tried", "saving from the pane: works")}`);
});

test("canceled on the way: the sheet is gone and what was found is told", async () => {
  await begin();
  await pane().getByRole("button", { name: "Cancel" }).click();
  await pane().getByText("Stopped. What was found until then is below.").waitFor();
  expect(await pane().getByRole("textbox", { name: "The report" }).inputValue()).toContain("BROKE OFF: canceled");
  expect(await sheets()).toEqual(["Sheet1"]);
});
