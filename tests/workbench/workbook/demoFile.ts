import { existsSync } from "node:fs";
import { join } from "node:path";
import { readBundle } from "../../../workbench/commandLine/readBundle";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import type { FunctionSet } from "../../../workbench/engine";
import { makeWorkbook, runsFromCsv, tableToCsv } from "../../../workbench/workbook";

/** The worksheet functions as Excel gets them; `npm test` builds them first. */
export function builtFunctions(): FunctionSet {
  const dist = join(__dirname, "../../../dist");
  if (!existsSync(join(dist, "functions.json")))
    throw new Error("dist/functions.json is not there; run npm run build.");
  return readBundle(dist);
}

/** The demo job's runs as a file of comma-separated values. */
export const demoCsv = (): string => tableToCsv(demoRuns);

/** The demo job's workbook. */
export async function demoWorkbook(plain = false): Promise<Uint8Array> {
  const { bytes } = await makeWorkbook(runsFromCsv(demoCsv(), "demo.csv"), builtFunctions(), { title: "Demo", plain });
  return bytes;
}
