// Writes the sample workbooks anew: `npm run samples`, into docs/samples, or into the folder named behind it.
import { createRequire } from "node:module";
import path from "node:path";
import { build } from "./build.mjs";
import { loadDrawPng } from "./pictures/load.mjs";

try {
  await build(["functions", "tools"]);
  const { main } = createRequire(import.meta.url)("../dist/tools/samples.cjs");
  const folder = process.argv[2] ?? path.join(import.meta.dirname, "..", "docs", "samples");
  await main(path.relative(process.cwd(), path.resolve(folder)), { draw: loadDrawPng() });
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
