// Builds the parts of dist/ that are older than their sources. `node tools/build.mjs` builds them all,
// `node tools/build.mjs functions tools` those named; `--force` builds even what is up to date. Progress goes to stderr, so that a command's own output stays clean.
import { spawn } from "node:child_process";
import fs from "node:fs";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { compress } from "./compress.mjs";

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..");
const stamps = path.join(root, "dist", ".built");

/** What each part is made from. */
const common = ["webpack.config.cjs", ".swcrc", "package-lock.json"];
const sources = {
  functions: ["functions", "src", ...common],
  tools: [
    "workbench/engine",
    "workbench/commandLine",
    "workbench/workbook",
    "workbench/demo",
    "workbench/samples",
    "workbench/shapes",
    "workbench/portfolio",
    "taskpane/workbook",
    "src",
    ...common,
  ],
  taskpane: ["taskpane", "src", "workbench/demo", "tools/demoJson.cjs", ...common],
  workbench: ["workbench", "src", "tools/withoutTextMark.cjs", "tools/plainFields.cjs", ...common],
  bender: ["workbench/bender", "taskpane/bender", "src", ...common],
};

/** What a part cannot be built without. */
const needs = {
  taskpane: "taskpane/index.tsx",
  workbench: "workbench/page/index.ts",
  bender: "workbench/bender/index.tsx",
};

function newest(file) {
  const stats = fs.statSync(file, { throwIfNoEntry: false });
  if (!stats) return 0;
  if (!stats.isDirectory()) return stats.mtimeMs;
  const inside = fs.readdirSync(file).map((name) => newest(path.join(file, name)));
  return Math.max(stats.mtimeMs, ...inside);
}

function isStale(part) {
  const stamp = fs.statSync(path.join(stamps, part), { throwIfNoEntry: false });
  return !stamp || sources[part].some((source) => newest(path.join(root, source)) > stamp.mtimeMs);
}

/** Two commands at once must not write dist/ at once: the second waits for the first. */
async function withLock(work) {
  const lock = path.join(root, "dist", ".building");
  fs.mkdirSync(path.dirname(lock), { recursive: true });
  const tooOld = 5 * 60 * 1000;
  for (;;) {
    try {
      fs.mkdirSync(lock);
      break;
    } catch (error) {
      if (error.code !== "EEXIST") throw error;
      const held = fs.statSync(lock, { throwIfNoEntry: false });
      if (held && Date.now() - held.mtimeMs > tooOld) fs.rmSync(lock, { recursive: true, force: true });
      await new Promise((resolve) => setTimeout(resolve, 200));
    }
  }
  try {
    return await work();
  } finally {
    fs.rmSync(lock, { recursive: true, force: true });
  }
}

function webpack(part) {
  const started = Date.now();
  const cli = path.join(root, "node_modules", "webpack-cli", "bin", "cli.js");
  const child = spawn(process.execPath, [cli, "--config-name", part, "--mode", "production"], {
    cwd: root,
    stdio: ["ignore", "pipe", "pipe"],
  });
  child.stdout.pipe(process.stderr);
  child.stderr.pipe(process.stderr);
  return new Promise((/** @type {(value?: undefined) => void} */ resolve, reject) => {
    child.on("error", reject);
    child.on("exit", (code) => {
      if (code !== 0) return reject(new Error(`Building ${part} failed.`));
      fs.mkdirSync(stamps, { recursive: true });
      fs.writeFileSync(path.join(stamps, part), "");
      fs.utimesSync(path.join(stamps, part), new Date(started), new Date(started));
      process.stderr.write(`  built ${part} in ${((Date.now() - started) / 1000).toFixed(1)} s\n`);
      resolve();
    });
  });
}

/** Builds those of the named parts that are missing or older than their sources. */
export async function build(parts = Object.keys(sources), { force = false } = {}) {
  const possible = parts.filter((part) => !needs[part] || fs.existsSync(path.join(root, needs[part])));
  if (!force && !possible.some(isStale)) return;
  await withLock(async () => {
    const due = possible.filter((part) => force || isStale(part));
    if (due.length > 0) process.stderr.write(`Building ${due.join(", ")} ...\n`);
    // Two at a time: the page alone takes as long as the other parts together.
    const queue = due.sort((first, second) => Number(second === "workbench") - Number(first === "workbench"));
    const worker = async () => {
      for (let part = queue.shift(); part; part = queue.shift()) await webpack(part);
    };
    await Promise.all([worker(), worker()]);
    await compress(path.join(root, "dist"));
  });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const named = process.argv.slice(2).filter((word) => word in sources);
  build(named.length > 0 ? named : undefined, { force: process.argv.includes("--force") }).catch((error) => {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  });
}
