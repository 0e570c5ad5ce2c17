/** Runs as drawings and models, out of the File menu and in. */
import { readFileSync } from "node:fs";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { withBench } from "./atPage";
import type { Bench } from "./bench";
import { chooseEntry, download, withFolder } from "./fileMenu";

jest.setTimeout(300000);

let bench: Bench;
let folder: string;

withFolder((made) => (folder = made));
withBench((opened) => (bench = opened));

const dialog = () => bench.page.locator("#dialog[open]");

test("the runs are saved as IFC with the workbook's own shoes; the one that cannot be built is named", async () => {
  const path = await download(bench, folder, async () => {
    await chooseEntry(bench, /drawing or model/);
    await dialog().locator("select").selectOption("ifc");
    await dialog().getByRole("button", { name: "Save", exact: true }).click();
  });
  expect(path).toMatch(/\.ifc$/);
  const names = [...readFileSync(path, "utf8").matchAll(/IFCCABLECARRIERSEGMENT\('.{22}',\$,'([^',]*)/g)].map(
    ([, name]) => name,
  );
  expect([...new Set(names)]).toEqual(
    demoRuns
      .slice(1)
      .flatMap(([run]) => (run === "WS-01" ? ["WS-01-1", "WS-01-2", "WS-01-3"] : [run]))
      .filter((run) => run !== "PR-09"),
  );
  await dialog().getByText("1 run not in it, because it cannot be built: PR-09.").waitFor();
});

const runNames = async (): Promise<string[]> => (await bench.sheet("Runs")).map(([name]) => String(name ?? ""));

test("a drawing comes in by the File menu: the sample's runs stand below the demo's, and are taken back", async () => {
  const before = await bench.sheet("Runs");
  await chooseEntry(bench, /from a drawing/);
  const pane = bench.page.frameLocator("iframe[title='Ledger pane']");
  await pane.getByRole("button", { name: "Take the sample drawing" }).click();
  // Its layers: five conduits and the three lines that meet are taken, the deck's edge is not.
  await pane.getByRole("checkbox", { name: "Take UD-01_EMT_3-4" }).waitFor();
  expect(await pane.getByRole("checkbox", { name: "Take Deck edge" }).isChecked()).toBe(false);
  await pane.getByRole("button", { name: "Look at the runs" }).click();
  await pane.getByText("8 runs: 8 as drawn, 0 a little off.").waitFor();
  await pane.getByRole("button", { name: "Add 8 runs to the Runs table" }).click();
  await pane.getByText("8 runs added under the last row of Runs.").waitFor();
  await bench.settled();
  expect((await runNames()).slice(demoRuns.length, demoRuns.length + 5)).toEqual(
    ["UD-01", "UD-02", "UD-03", "UD-04", "UD-05"], // prettier-ignore
  );
  await pane.getByRole("button", { name: "Take back" }).click();
  await pane.getByText(/They are out again/).waitFor();
  await bench.settled();
  const after = await bench.sheet("Runs");
  const written = (rows: unknown[][]) => rows.filter(([name]) => name !== null && name !== "");
  expect(written(after)).toEqual(written(before));
});
