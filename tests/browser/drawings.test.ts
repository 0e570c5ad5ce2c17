/** Runs as drawings and models, out of the File menu. */
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
