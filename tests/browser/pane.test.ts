import { withBench } from "./atPage";
import type { Bench } from "./bench";
import { paneOf } from "./keyboard";
import { buildRun, openPane, planCuts, printTickets, rowsOf, setUp, startEmpty, threeRuns } from "./paneJob";

jest.setTimeout(300000);

let bench: Bench;

withBench((opened) => (bench = opened));

const results = ["Schedule", "Takeoff", "Bend counts", "Checks", "Cutting plan"];

test("by keyboard alone: set up, build three runs, find marks and materials in the sheets; a reload loses nothing", async () => {
  await startEmpty(bench);
  await bench.type("Sheet1!B2", "mine");
  await openPane(bench);
  await setUp(bench);
  for (const run of threeRuns) await buildRun(bench, run);

  const schedule = await rowsOf(bench, "Schedule");
  const bendsOf = (run: string) => schedule.filter((row) => row.Run === run && row.Bend !== "");
  const marksOf = (run: string) => bendsOf(run).map((row) => Number(row.Mark));
  // Derived by hand, with the one-shot radius of 4 in. for 1/2 in. conduit (NEC Chapter 9, Table 2). Between the two
  // marks lie the straight, 6/sin 30° less twice the setback 4·tan 15°, and one arc, 4·π/6.
  const spacing = 12 - 2 * 4 * Math.tan(Math.PI / 12) + (4 * Math.PI) / 6;
  const [first, second] = marksOf("Run 1");
  expect(second! - first!).toBeCloseTo(spacing, 9);
  expect(marksOf("Run 2")).toHaveLength(3);
  expect(marksOf("Run 3")).toHaveLength(2);

  const bends = (await rowsOf(bench, "Bend counts")).filter((row) => row.Kind);
  expect(bends.reduce((sum, row) => sum + Number(row.Bends), 0)).toBe(2 + 3 + 2);
  const conduit = (await rowsOf(bench, "Takeoff")).find((row) => /EMT.*conduit|conduit.*EMT/i.test(String(row.Item)));
  expect(Number(conduit?.Quantity)).toBeGreaterThan(0);
  expect(await bench.values("Sheet1!B2")).toEqual([["mine"]]);

  // Even straight from end to end the three runs come to more than three sticks of 10 ft.
  const advance = [40.5 + 6 / Math.tan(Math.PI / 6) + 48, 60 + 48, 96 + Math.hypot(8, 12) + 72];
  expect(Math.ceil(advance.reduce((sum, length) => sum + length) / 120)).toBe(4);
  const proof = "4 sticks to buy; at least 4 needed: proven least";
  expect(await planCuts(bench)).toEqual([expect.stringContaining(proof)]);
  const cuts = await rowsOf(bench, "Cutting plan");
  expect(cuts.filter(({ Cut }) => Cut === proof)).toHaveLength(1);

  // The arrow lies deduct - R - OD/2 before the first bend, whose corner is 3' 4-1/2" out.
  const arrow = 40.5 - 4 * Math.tan(Math.PI / 12) - (5 - 4 - 0.706 / 2);
  const tickets = await printTickets(bench);
  expect(tickets).toHaveLength(4);
  for (const mark of [arrow, arrow + spacing]) expect(tickets[0]).toContain(`${mark.toFixed(3)}in.`);
  for (const mark of marksOf("Run 2")) expect(tickets[1]).toContain(`${mark.toFixed(3)}in.`);

  const sheets = ["Sheet1", "Runs", "Shoes", ...results];
  const before = await Promise.all(sheets.map((sheet) => bench.sheet(sheet)));
  await bench.saved();
  await bench.reload();
  expect(await Promise.all(sheets.map((sheet) => bench.sheet(sheet)))).toEqual(before);
  await openPane(bench);
  await paneOf(bench.page).getByText("This workbook is set up").waitFor();
});

test("the demo is known to the pane as a workbook that is set up", async () => {
  await openPane(bench);
  await paneOf(bench.page).getByText("This workbook is set up").waitFor();
});

test("what the pane keeps in the workbook is there after a reload, though the pane was not opened since", async () => {
  await openPane(bench);
  await paneOf(bench.page).getByRole("radio", { name: "mm" }).press("Space");
  await bench.saved();
  await bench.reload();
  await bench.type("Runs!P2", "a change");
  await bench.saved();
  await bench.reload();
  await openPane(bench);
  const mm = paneOf(bench.page).getByRole("radio", { name: "mm" });
  await mm.waitFor();
  await bench.page.waitForTimeout(500);
  expect(await mm.isChecked()).toBe(true);
});

test("what the pane did is one step of undo", async () => {
  await startEmpty(bench);
  await openPane(bench);
  await setUp(bench);
  const names = () => bench.page.evaluate(() => window.ledgerBook!.sheets().map(({ name }) => name));
  expect(await names()).toContain("Schedule");
  await bench.page.evaluate(() => window.ledgerBook!.undo());
  expect(await names()).toEqual(["Sheet1"]);
});
