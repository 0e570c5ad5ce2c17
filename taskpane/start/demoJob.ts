import type { Cell } from "../workbook/items";
import type { Rows } from "../workbook/newTables";

/** Rows of the demo job's Runs table. The file lies beside the pane; nothing is fetched from elsewhere. */
export async function readDemoRuns(): Promise<Rows> {
  const response = await fetch("demo.json");
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
  const { runs } = (await response.json()) as { runs: Cell[][] };
  const [headers = [], ...rows] = runs;
  return rows.map((row) => Object.fromEntries(headers.map((header, place) => [String(header), row[place] ?? ""])));
}
