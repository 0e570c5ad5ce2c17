// Writes a job's workbook from a list of runs: `npm run workbook -- runs.csv job.xlsx`.
import { createRequire } from "node:module";
import { build } from "./build.mjs";
import { loadDrawPng } from "./pictures/load.mjs";

try {
  await build(["functions", "tools"]);
  const { main } = createRequire(import.meta.url)("../dist/tools/workbook.cjs");
  const { version, config } = createRequire(import.meta.url)("../package.json");
  const addIn = { id: process.env.ADDIN_ID ?? config.addinId, version };
  process.exitCode = await main(process.argv.slice(2), { draw: loadDrawPng(), addIn });
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 2;
}
