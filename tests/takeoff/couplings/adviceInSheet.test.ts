/** Couplings that would save sticks, as the sheet tells them under a plan and as the pane does. */
import { jobCuts } from "../../../src/takeoff/reports/jobCuts";
import { planJobInSteps, type CutResult } from "../../../taskpane/totals/cuts/cutWork";
import { adviceWords } from "../../../src/takeoff/couplings/adviceWords";
import { lengthsIn } from "../../../src/units/formatLength";
import { records, runsRange, type RunCells } from "../tables";

type Cell = string | number;
const { generatedRuns } = jest.requireActual<{ generatedRuns(count: number, seed: number): Cell[][] }>(
  "../../../tools/bench/generatedRuns.cjs",
);

const run = (Run: string, inches: number, more: Partial<RunCells> = {}): RunCells => ({
  ...{ Run, Route: `east ${inches}` },
  ...more,
});
const STOCK = [
  ["Raceway", "Size", "Length", "On hand", "Price"],
  ["EMT", "1/2", 120, "", 10],
  ["EMT", "3/4", 120, "", 14],
  ["EMT", "1", 120, "", 22],
];
const PRICES = [
  ["Item", "Unit", "Price"],
  ["EMT 1/2 set-screw coupling", "each", 1.5],
  ["EMT 3/4 set-screw coupling", "each", 1.8],
  ["EMT 1 set-screw coupling", "each", 2.4],
];
const shown = (runs: unknown, more: object = {}) => records(jobCuts(runs, { stock: STOCK, prices: PRICES, ...more }));
const told = (runs: unknown, more: object = {}) => shown(runs, more).filter(({ Stick }) => Stick === "couplings");

function inPane(runs: Cell[][], rules?: Cell[][]): CutResult {
  const steps = planJobInSteps({ runs, stock: STOCK, shoes: undefined, rules, prices: PRICES });
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

test("a line under the plan says how many sticks, for how many couplings, what is saved, and where", () => {
  // By hand: of 190 in. a stick of 120 and a piece of 70 each; two 70s leave 50 each, and the third is 70: parted, both
  // ends fit. One stick of 10 less for a coupling of 1.5: 8.50.
  const rows = shown(runsRange(run("A", 190), run("B", 190), run("C", 190)));
  const line = rows.findIndex(({ Stick }) => Stick === "couplings");
  expect(rows[line]).toMatchObject({ Raceway: "EMT", Size: "1/2", Sticks: "" });
  expect(rows[line]!["Note"]).toMatch(/^1 stick less for 1 coupling more, 8\.50 saved: [ABC] joined at .+ too\.$/);
  expect(line).toBe(rows.length - 1);
});

test("nothing is said without prices, nor where a coupling costs as much as a stick", () => {
  const runs = runsRange(run("A", 190), run("B", 190), run("C", 190));
  expect(told(runs, { prices: undefined })).toEqual([]);
  expect(told(runs, { prices: [PRICES[0], ["EMT 1/2 set-screw coupling", "each", 10]] })).toEqual([]);
});

test("each lot has its line under its own plan, before the total; places are told in the job's unit", () => {
  const lot = (size: string) => ["A", "B", "C"].map((name) => run(`${size} ${name}`, 190, { Size: size }));
  const rules = [
    ["Rule", "Value"],
    ["Lengths shown in", "mm"],
  ];
  const rows = shown(runsRange(...lot("1/2"), ...lot("1")), { rules });
  const lines = rows.flatMap(({ Stick }, at) => (Stick === "couplings" ? [at] : []));
  expect(lines.map((at) => rows[at]!["Size"])).toEqual(["1/2", "1"]);
  expect(rows[lines[0]! + 1]).toMatchObject({ Size: "1", Stick: "all" });
  expect(rows.at(-1)).toMatchObject({ Raceway: "Total" });
  for (const at of lines) expect(rows[at]!["Note"]).toMatch(/joined at \d+ mm too/);
});

test("a row of Prices that cannot be read is told, and hides no other", () => {
  const rows = shown(runsRange(run("A", 190), run("B", 190), run("C", 190)), {
    prices: [...PRICES, ["EMT 2 set-screw coupling", "each", "dear"]],
  });
  expect(rows.some(({ Stick }) => Stick === "couplings")).toBe(true);
  expect(rows.map(({ Note }) => Note).join()).toContain("prices row 5");
});

test("sheet and pane give one answer, of a job of every kind of run", () => {
  for (const seed of [11, 12, 13]) {
    const [header = [], ...rows] = generatedRuns(60, seed);
    const runs = [header, ...rows.map((row) => row.map((cell, at) => (header[at] === "Raceway" ? "EMT" : cell)))];
    const sheet = told(runs).map(({ Raceway, Size, Note }) => `${Raceway} ${Size}: ${Note}`);
    const pane = inPane(runs).lots.flatMap(({ title, advice }) =>
      advice ? [`${title}: ${adviceWords(advice, lengthsIn("feet").tape)}`] : [],
    );
    expect(pane.length).toBeGreaterThan(0);
    expect(sheet).toEqual(pane);
  }
});
