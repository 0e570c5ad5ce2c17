// Speed of the worksheet functions, told as ratios against work done in the same process: `npm run bench`.
import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { panePaint, paneSizes } from "./benchPane.mjs";
import { build } from "./build.mjs";
import { generatedRuns } from "./generatedRuns.cjs";

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..");
const load = createRequire(import.meta.url);

await build(["functions", "tools", "taskpane", "workbench"]);
const engine = load("../dist/tools/engine.cjs");
const bundle = engine.readBundle(path.join(root, "dist"));

/** Best of a few runs [ms]: the least disturbed one. */
async function best(work, times = 3) {
  let least = Infinity;
  for (let turn = 0; turn < times; turn++) {
    const start = performance.now();
    await work();
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

const table = (rows) => {
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => String(row[column]).length)));
  for (const row of rows) console.log(row.map((cell, column) => String(cell).padEnd(widths[column])).join("  "));
  console.log("");
};

/** Yardstick: the same table written to JSON text and read back. */
const jsonTrip = (value) => JSON.parse(JSON.stringify(value));

function functionOf(id) {
  const call = bundle.implementations.get(id);
  if (!call) throw new Error(`${id} is not in the bundle.`);
  return call;
}

async function jobFunctions() {
  const sizes = [1000, 10000];
  const runs = sizes.map((count) => generatedRuns(count));
  const yardsticks = await Promise.all(runs.map((range) => best(() => jsonTrip(range))));
  const rows = [
    ["function", "1,000 runs", "10,000 runs", "µs a run", "growth (1 = linear)", "× JSON trip of the runs"],
  ];
  for (const { title, id, given } of JOBS) {
    const call = functionOf(id);
    const times = [];
    for (const [index, range] of runs.entries()) {
      const args = given(range);
      times.push(await best(() => call(...args), index === 0 ? 3 : 2));
    }
    const perRun = times.map((time, index) => time / sizes[index]);
    rows.push([
      title,
      `${times[0].toFixed(0)} ms`,
      `${times[1].toFixed(0)} ms`,
      (perRun[1] * 1000).toFixed(0),
      (perRun[1] / perRun[0]).toFixed(2),
      (times[1] / yardsticks[1]).toFixed(0),
    ]);
  }
  console.log("Whole jobs (functions called with a range in memory, one core)");
  table(rows);
}

/** The ten functions of a whole job, and what each is given for a Runs range. */
const JOBS = [
  { title: "JOB.SCHEDULE", id: "JOB.SCHEDULE", given: (runs) => [runs] },
  { title: "JOB.SETUP", id: "JOB.SETUP", given: (runs) => [runs] },
  { title: "JOB.TAKEOFF", id: "JOB.TAKEOFF", given: (runs) => [runs] },
  { title: "JOB.TAKEOFF by area", id: "JOB.TAKEOFF", given: (runs) => [runs, null, null, "Area"] },
  {
    title: "JOB.TAKEOFF from stock",
    id: "JOB.TAKEOFF",
    given: (runs) => [runs, null, null, null, null, null, stockFor(runs)],
  },
  { title: "JOB.BENDS", id: "JOB.BENDS", given: (runs) => [runs] },
  { title: "JOB.CHECKS", id: "JOB.CHECKS", given: (runs) => [runs] },
  { title: "JOB.TRACE of a strap", id: "JOB.TRACE", given: (runs) => [runs, "EMT 1/2 strap"] },
  { title: "JOB.CUTS", id: "JOB.CUTS", given: (runs) => [runs, stockFor(runs)] },
  { title: "JOB.CHANGES", id: "JOB.CHANGES", given: (runs) => [changed(runs), runs] },
];

/** One run in fifty with a leg more. */
const changed = (runs) => runs.map((row, at) => (at % 50 === 7 ? withRise(row) : row));

/** Sticks of 10 and 20 ft and five offcuts for every raceway and size of the runs. */
function stockFor(runs) {
  const kinds = new Map(runs.slice(1).map((row) => [`${row[3]} ${row[4]}`, [row[3], row[4]]]));
  return [
    ["Raceway", "Size", "Length", "On hand", "Price"],
    ...[...kinds.values()].flatMap((kind) => [
      [...kind, 120, null, 10],
      [...kind, 240, null, 19.5],
      [...kind, 77, 5, null],
    ]),
  ];
}

const withRise = (row) => row.map((cell, column) => (column === 5 ? `${cell}, ahead 3` : cell));

/** The same mathematics as a worksheet function of ours and as built-in functions, in the same engine. */
async function scalarFunctions() {
  const count = 2000;
  const ours = await recalculation(count, (row) => `=CONDUIT.OFFSET.SPACING(A${row},B${row},C${row})`);
  const builtIn = await recalculation(
    count,
    (row) => `=A${row}/SIN(RADIANS(B${row}))-(2*C${row}*TAN(RADIANS(B${row})/2)-C${row}*RADIANS(B${row}))`,
  );
  console.log(`${count} cells of an exact offset spacing, full recalculation in the same engine`);
  table([
    ["formula", "time", "µs a cell", "ratio"],
    ["built-in SIN, TAN, RADIANS", `${builtIn.time.toFixed(0)} ms`, ((builtIn.time / count) * 1000).toFixed(0), "1"],
    [
      "CONDUIT.OFFSET.SPACING",
      `${ours.time.toFixed(0)} ms`,
      ((ours.time / count) * 1000).toFixed(0),
      (ours.time / builtIn.time).toFixed(2),
    ],
  ]);
  const apart = Math.max(...ours.values.map((value, index) => Math.abs(value - builtIn.values[index])));
  if (!(apart < 1e-9)) throw new Error(`the two formulas differ by ${apart}`);
}

async function recalculation(count, formula) {
  const cellData = {};
  for (let row = 0; row < count; row++) {
    cellData[row] = {
      0: { v: 8 + (row % 40) / 4 },
      1: { v: [15, 22.5, 30, 45, 60][row % 5] },
      2: { v: 4 },
      3: { f: formula(row + 1) },
    };
  }
  const sheet = { id: "s", name: "S", rowCount: count + 10, columnCount: 8, cellData };
  const { book, close } = engine.openHeadless(bundle, { id: "bench", sheetOrder: ["s"], sheets: { s: sheet } });
  try {
    await book.settled();
    const time = await best(async () => {
      book.calculation.recalculateAll();
      await book.settled();
    });
    const values = book
      .sheet("S")
      .cells(0, 3, count, 1)
      .values.map(([value]) => value);
    const odd = values.findIndex((value) => typeof value !== "number");
    if (odd >= 0) throw new Error(`no number in row ${odd + 1}: ${values[odd]}`);
    return { time, values };
  } finally {
    close();
  }
}

await jobFunctions();
await scalarFunctions();
console.log("The pane: what it weighs, and its first paint in Chromium (best of three)");
table(paneSizes(path.join(root, "dist")));
table(await panePaint());
