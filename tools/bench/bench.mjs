// Speed of the worksheet functions, told as ratios against work done in the same process: `npm run bench`.
import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { boundTimes } from "./benchBounds.mjs";
import { pageBench } from "./benchPage.mjs";
import { panePaint, paneSizes } from "./benchPane.mjs";
import { build } from "../build.mjs";
import { payloadTable } from "./benchPayload.mjs";
import { generatedRuns } from "./generatedRuns.cjs";

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../..");
const load = createRequire(import.meta.url);

const editsOnly = process.argv.includes("--edits");
const payloadOnly = process.argv.includes("--payload");
await build(editsOnly || payloadOnly ? ["functions", "tools"] : undefined);
const engine = load("../../dist/tools/engine.cjs");
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

/** A result above what Excel takes is refused only after it is worked out: the time is that of the work. */
function answered(call, args) {
  try {
    return call(...args);
  } catch (error) {
    if (!/Excel takes at most/.test(error.message)) throw error;
    return null;
  }
}

/** CPU time of some work [ms]: other programs on the machine count little. */
function cpu(work) {
  const before = process.cpuUsage();
  const start = performance.now();
  work();
  const { user, system } = process.cpuUsage(before);
  return { cpu: (user + system) / 1000, wall: performance.now() - start };
}

/** Ten different edits of one run each: a rise, a quantity, a size, an area. */
function edited(runs, edit) {
  const at = 1 + ((edit * 397) % (runs.length - 1));
  const column = [5, 6, 4, 2][edit % 4];
  const value = [`up ${30 + edit}, east ${90 + edit}`, 5 + edit, "1", `Area ${20 + edit}`][edit % 4];
  return runs.map((row, index) =>
    index === at ? row.map((cell, place) => (place === column ? value : cell)) : [...row],
  );
}

/** The ten functions together: the first time, then after each of ten edits of one run; and the longest of them alone. */
function edits() {
  const rows = [
    [
      "runs",
      "first [ms CPU]",
      "edit, median",
      "edit, worst",
      "longest function",
      "first ÷ JSON trips",
      "edit ÷ JSON trips",
    ],
  ];
  for (const count of [1000, 10000]) {
    let runs = generatedRuns(count, 7);
    const all = () =>
      JOBS.map(({ title, id, given }) => ({ title, ...cpu(() => answered(functionOf(id), given(runs))) }));
    const sum = (times) => times.reduce((total, { cpu }) => total + cpu, 0);
    const first = sum(all());
    const yardstick = cpu(() => JOBS.forEach(() => jsonTrip(runs))).cpu;
    const perEdit = [];
    let longest = { title: "", wall: 0 };
    for (let edit = 0; edit < 10; edit++) {
      runs = edited(runs, edit);
      const times = all();
      perEdit.push(sum(times));
      for (const time of times) if (time.wall > longest.wall) longest = time;
    }
    perEdit.sort((a, b) => a - b);
    const [median, worst] = [(perEdit[4] + perEdit[5]) / 2, perEdit[9]];
    const words = `${longest.title} ${longest.wall.toFixed(0)} ms`;
    const ratios = [first, median].map((time) => (time / yardstick).toFixed(1));
    rows.push([count, first.toFixed(0), median.toFixed(0), worst.toFixed(0), words, ...ratios]);
  }
  console.log("One edit of one run, all ten functions (CPU), against reading and writing their runs as JSON");
  table(rows);
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
      times.push(await best(() => answered(call, args), index === 0 ? 3 : 2));
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

if (process.argv.includes("--page")) {
  await pageBench(table);
  process.exit();
}
console.log("What the results of whole-job functions weigh, and how many runs that serves");
table(payloadTable(functionOf));
if (payloadOnly) process.exit();
edits();
console.log("Large and odd inputs: answered, or refused in words");
table([["input", "function", "CPU [ms]", "answer"], ...boundTimes(functionOf, generatedRuns, cpu)]);
if (editsOnly) process.exit();
await jobFunctions();
await scalarFunctions();
console.log("The pane: what it weighs, and its first paint in Chromium (best of three)");
table(paneSizes(path.join(root, "dist")));
table(await panePaint());
await pageBench(table);
