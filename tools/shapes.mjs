// Writes the shapes of runs and pieces: `npm run shapes -- runs.csv folder`.
import { createRequire } from "node:module";
import { build } from "./build.mjs";

try {
  await build(["tools"]);
  const { main } = createRequire(import.meta.url)("../dist/tools/shapes.cjs");
  process.exitCode = main(process.argv.slice(2));
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 2;
}
