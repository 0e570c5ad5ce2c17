/** Couplings that would save sticks. What is said is checked by the take-off and the cutting plan of the job as advised. */
import fc from "fast-check";
import { planCuts } from "../../../src/cutting";
import { buildJob } from "../../../src/shop/job/job";
import { jobWork } from "../../../src/takeoff/amounts/jobWork";
import { couplingAdvice, type CouplingAdvice } from "../../../src/takeoff/couplings/advice";
import { adviceWords } from "../../../src/takeoff/couplings/adviceWords";
import { cutLots } from "../../../src/takeoff/cuts/cutLots";
import { readStock } from "../../../src/takeoff/cuts/cutStock";
import { jobCuts } from "../../../src/takeoff/reports/jobCuts";
import { lotRequest } from "../../../src/takeoff/cuts/lotRequest";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { readPrices } from "../../../src/takeoff/lists/prices";
import { readSaw } from "../../../src/takeoff/saw/saw";
import { lengthsIn } from "../../../src/units/formatLength";
import { records, rowWhere, runsRange, type RunCells } from "../tables";

type RunRow = RunCells;
const stockAt = (price: number | null, more: (string | number | null)[][] = []) => [
  ["Raceway", "Size", "Length", "On hand", "Price"],
  ["EMT", "1/2", 120, null, price],
  ...more,
];
const pricesAt = (coupling: number) => [
  ["Item", "Unit", "Price"],
  ["EMT 1/2 set-screw coupling", "each", coupling],
];
const run = (Run: string, inches: number, more: Partial<RunRow> = {}): RunRow => ({
  Run,
  Route: `east ${inches}`,
  ...more,
});

/** The advice for the first lot of a job. */
function advise(
  runs: RunRow[],
  stock: unknown[][],
  prices: unknown[][],
  rules?: unknown[][],
): CouplingAdvice | undefined {
  const job = buildJob({ runs: runsRange(...runs), rules });
  const saw = readSaw(undefined, undefined, job.rules);
  const [lot] = cutLots(jobWork(job).works, readStock(stock));
  const plan = planCuts(lotRequest(lot!, saw, job.rules).request);
  return couplingAdvice(lot!, plan, { shoes: job.shoes, rules: job.rules, saw, prices: readPrices(prices) });
}
/** The runs with the advised cells written into Joints. */
const coupled = (runs: RunRow[], { joints }: CouplingAdvice): RunRow[] =>
  runs.map((row, at) => {
    const cell = joints.find(({ rowNumber }) => rowNumber === at + 2)?.cell;
    return cell === undefined ? row : { ...row, Joints: cell };
  });

test("24 runs of 190 in., a coupling at 0.15 of a stick: 9 couplings save 9 of 48 sticks", () => {
  // 24 whole sticks and 24 pieces of 70. A piece parted once fills what two others leave, so three sticks become two and
  // a bit: no fewer than 38 hold 24 × 190 in. at all.
  const runs = Array.from({ length: 24 }, (_, n) => run(`A-${n + 1}`, 190));
  expect(advise(runs, stockAt(1), pricesAt(0.15))).toMatchObject({
    ...{ sticks: 9, couplings: 9, saved: expect.closeTo(9 * 0.85, 9) },
  });
});

test("a run made often is coupled alike in all its copies, and every coupling is counted", () => {
  const runs = [run("A", 190, { Quantity: 24 })];
  const advice = advise(runs, stockAt(1), pricesAt(0.05))!;
  expect(advice.couplings % 24).toBe(0);
  expect(advice.saved).toBeCloseTo(advice.sticks - 0.05 * advice.couplings, 9);
  expect(advice.sticks).toBeGreaterThan(0);
});

const three = [run("A", 190), run("B", 190), run("C", 190)];

test.each([
  ["a coupling costs as much as a stick", three, stockAt(1), pricesAt(1)],
  ["no stick has a price", three, stockAt(null), pricesAt(0.1)],
  ["no coupling has a price", three, stockAt(1), [["Item", "Unit", "Price"]]],
  ["nothing is left that a part would fit", [run("A", 120), run("B", 120)], stockAt(1), pricesAt(0.1)],
  [
    "the conduit is threaded",
    three.map((row) => ({ ...row, Raceway: "RMC" })),
    [
      ["Raceway", "Size", "Length", "Price"],
      ["RMC", "1/2", 120, 1],
    ],
    [
      ["Item", "Unit", "Price"],
      ["RMC 1/2 threaded coupling", "each", 0.1],
    ],
  ],
] as [string, RunRow[], unknown[][], unknown[][]][])("nothing is advised where %s", (_, runs, stock, prices) => {
  expect(advise(runs, stock, prices)).toBeUndefined();
});

test("a stick's price may come from Prices, by the foot", () => {
  const prices = [...pricesAt(0.15), ["EMT 1/2 conduit", "ft", 0.1]];
  expect(advise(three, stockAt(null), prices)).toMatchObject({
    sticks: 1,
    couplings: 1,
    saved: expect.closeTo(0.85, 9),
  });
});

test("no piece is parted inside an offset, and none shorter than a foot is made", () => {
  // Beside each of three pieces of 72 in. there are 48: half of one of the others, be it straight.
  const straight = advise([run("A", 72), run("B", 72), run("C", 72)], stockAt(1), pricesAt(0.01));
  expect(straight).toMatchObject({ sticks: 1, couplings: 1 });
  // About as long: 14 in. twice, and an offset of 40 at 60° in between, which is 46.2 in. of conduit.
  const offset = (Run: string) => ({ Run, Route: "east 14, offset 40 up at 60, ahead 14" });
  expect(advise([offset("A"), offset("B"), offset("C")], stockAt(1), pricesAt(0.01))).toBeUndefined();
  // 20 in. into twice 11, or 36 into twice 20.
  expect(advise([run("A", 109), run("B", 109), run("C", 20)], stockAt(1), pricesAt(0.01))).toBeUndefined();
  expect(advise([run("A", 100), run("B", 100), run("C", 36)], stockAt(1), pricesAt(0.01))).toMatchObject({ sticks: 1 });
});

test("the words name the runs and the places, seven and more only by their number", () => {
  const joints = Array.from({ length: 8 }, (_, n) => ({ rowNumber: n + 2, run: `R${n}`, added: [50 + n], cell: "" }));
  expect(adviceWords({ sticks: 3, couplings: 8, saved: 18.484, joints }, lengthsIn("feet").tape)).toBe(
    `3 sticks less for 8 couplings more, 18.48 saved: R0 joined at 4' 2" too, R1 joined at 4' 3" too, R2 joined at 4' 4" too, ` +
      `R3 joined at 4' 5" too, R4 joined at 4' 6" too, R5 joined at 4' 7" too, 2 runs more.`,
  );
  expect(adviceWords({ sticks: 1, couplings: 1, saved: 8.5, joints: joints.slice(0, 1) }, lengthsIn("mm").tape)).toBe(
    "1 stick less for 1 coupling more, 8.50 saved: R0 joined at 1270 mm too.",
  );
});

const anyRuns = fc
  .array(
    fc.record({
      up: fc.integer({ min: 10, max: 60 }),
      east: fc.integer({ min: 40, max: 2400 }),
      quantity: fc.constantFrom(1, 1, 1, 2, 5),
      bent: fc.boolean(),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((all) =>
    all.map(({ up, east, quantity, bent }, n) => ({
      ...{ Run: `R${n}`, Quantity: quantity, Joints: "" },
      Route: bent ? `up ${up}, east ${east / 8}` : `east ${east / 8}`,
    })),
  );

test("the job as advised costs as much less as was said, by its take-off, for as many sticks less and couplings more", () => {
  let advised = 0;
  fc.assert(
    fc.property(anyRuns, fc.constantFrom(0.5, 1.5, 4), (runs, coupling) => {
      const [stock, prices] = [stockAt(10, [["EMT", "1/2", 43.5, 2, null]]), pricesAt(coupling)];
      const advice = advise(runs, stock, prices);
      if (!advice) return;
      advised++;
      const after = coupled(runs, advice);
      const order = (rows: RunRow[]) => takeoff(runsRange(...rows), { stock });
      const bought = (rows: RunRow[]) =>
        records(order(rows)).find(({ Item }) => Item === "EMT 1/2 conduit, 10 ft stick")!;
      const couplings = (rows: RunRow[]) =>
        Number(records(order(rows)).find(({ Item }) => Item === "EMT 1/2 set-screw coupling")?.["Quantity"] ?? 0);
      const cost = (rows: RunRow[]) => 10 * Number(bought(rows)["Quantity"]) + coupling * couplings(rows);
      expect(Number(bought(runs)["Quantity"]) - Number(bought(after)["Quantity"])).toBe(advice.sticks);
      expect(couplings(after) - couplings(runs)).toBe(advice.couplings);
      expect(cost(runs) - cost(after)).toBeCloseTo(advice.saved, 6);
      expect(advice.saved).toBeGreaterThan(0);
      const sticks = (rows: RunRow[]) => rowWhere(jobCuts(runsRange(...rows), { stock }), { Stick: "all" })["Cut"];
      expect(sticks(after)).toContain(`${Number(bought(after)["Quantity"])} stick`);
    }),
    { numRuns: 60 },
  );
  expect(advised).toBeGreaterThan(5);
});
