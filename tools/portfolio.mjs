// Reads a folder of jobs' workbooks into tables: `npm run portfolio -- folder out`.
import { createRequire } from "node:module";
import { build } from "./build.mjs";

try {
  await build(["functions", "tools"]);
  const { main } = createRequire(import.meta.url)("../dist/tools/portfolio.cjs");
  process.exitCode = await main(process.argv.slice(2));
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 2;
}
