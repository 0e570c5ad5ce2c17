// Evaluates worksheet formulas without a page: `npm run --silent evaluate -- '=CONDUIT.OFFSET.SPACING(6,30)'`.
import { createRequire } from "node:module";
import { build } from "./build.mjs";

try {
  await build(["functions", "tools"]);
  const { main } = createRequire(import.meta.url)("../dist/tools/evaluate.cjs");
  process.exitCode = await main(process.argv.slice(2));
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 2;
}
