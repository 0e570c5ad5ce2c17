// Writes the function guide into docs/ from the doc comments in functions/, and beside the pane what a trial of an Excel
// is held against: `npm run guide`. With `--check` nothing is
// built or written: what stands in docs/ is held against what would be written, and a difference is an error.
import fs from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "./build.mjs";

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..");
const docs = path.join(root, "docs");
const check = process.argv.includes("--check");
const require = createRequire(import.meta.url);

const written = () => ["functions.md", ...fs.readdirSync(path.join(docs, "help")).map((name) => `help/${name}`)];

function write(files) {
  fs.rmSync(path.join(docs, "help"), { recursive: true, force: true });
  fs.mkdirSync(path.join(docs, "help"), { recursive: true });
  for (const [name, text] of files) fs.writeFileSync(path.join(docs, name), text);
  process.stdout.write(`${files.size} files written to docs/\n`);
}

function compare(files) {
  const read = (name) => fs.existsSync(path.join(docs, name)) && fs.readFileSync(path.join(docs, name), "utf8");
  const faults = [
    ...[...files]
      .filter(([name, text]) => read(name) !== text)
      .map(([name]) => `docs/${name} is not what the code says`),
    ...written()
      .filter((name) => !files.has(name))
      .map((name) => `docs/${name} belongs to no function`),
  ];
  if (faults.length > 0) throw new Error(`${faults.join("\n")}\nRun \`npm run guide\` and look at what it changed.`);
  process.stdout.write(`${files.size} files of docs/ agree with the code\n`);
}

try {
  if (!check) await build(["functions", "tools"]);
  require("./typescript.cjs");
  const files = await require("./guide/files.ts").guideFiles(root);
  (check ? compare : write)(files);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
