/**
 * The totals of the demo job, added up again from the raw routes by readdRoute.ts: a second reader and other formulas.
 * Radii are those of the code's table for one-shot benders (NEC chapter 9, table 2): 4, 4-1/2 and 5-3/4 in.
 */
import { bendCounts } from "../../src/takeoff/bendCounts";
import { takeoff } from "../../src/takeoff/takeoff";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { readdRoute } from "./readdRoute";
import { records, rowWhere, shoesRange } from "./tables";

/** Sums of feet are held to this many decimals [ft]. */
const DECIMALS = 9;
const RADIUS: Record<string, number> = { "1/2": 4, "3/4": 4.5, "1": 5.75 };
const RACEWAYS = ["EMT", "IMC", "RMC", "PVC-coated RMC"];
const shoes = shoesRange(
  ...RACEWAYS.flatMap((raceway) =>
    Object.entries(RADIUS).map(([size, radius]) => [raceway, size, radius] as [string, string, number]),
  ),
);
const CANNOT_BE_BUILT = "PR-09";
const PASSED_OVER = /\b(panel|starter|pump|fan)\b/i;

const runs = records(demoRuns.map((row) => [...row]))
  .filter((run) => run["Run"] !== CANNOT_BE_BUILT)
  .map((run) => ({
    kind: `${run["Raceway"]} ${run["Size"]}`,
    raceway: String(run["Raceway"]),
    quantity: Number(run["Quantity"]),
    ends: [String(run["From"]), String(run["To"])],
    conductors: String(run["Conductors"]),
    ...readdRoute(String(run["Route"]), RADIUS[String(run["Size"])]!),
  }));
const kinds = [...new Set(runs.map(({ kind }) => kind))];
const table = takeoff(
  demoRuns.map((row) => [...row]),
  { shoes },
);

/** Adds up over the runs of a raceway and size. */
const add = (kind: string, of: (run: (typeof runs)[number]) => number) =>
  runs.filter((run) => run.kind === kind).reduce((sum, run) => sum + run.quantity * of(run), 0);
const sum = (values: number[]) => values.reduce((total, value) => total + value, 0);
const quantity = (item: string) =>
  records(table)
    .filter((row) => row["Item"] === item)
    .reduce((total, row) => total + Number(row["Quantity"]), 0);

test("the demo job has every run counted but the one that cannot be built", () => {
  const told = records(table).filter(({ Item }) => String(Item).startsWith("not "));
  expect(told.map((row) => row["Item"])).toEqual([`not counted: ${CANNOT_BE_BUILT}`]);
  expect(kinds.length).toBeGreaterThanOrEqual(9);
});

describe.each(kinds)("%s", (kind) => {
  test("feet of conduit", () => {
    expect(quantity(`${kind} conduit`)).toBeCloseTo(add(kind, ({ pulls }) => sum(pulls)) / 12, DECIMALS);
  });

  test("bends", () => {
    expect(quantity(`${kind} bend`)).toBe(add(kind, ({ bends }) => bends.length));
    const counted = bendCounts(
      demoRuns.map((row) => [...row]),
      { shoes, by: "Raceway, Size" },
    );
    const line = records(counted).find((row) => `${row["Raceway"]} ${row["Size"]}` === kind);
    expect(line?.["Bends"] ?? 0).toBe(add(kind, ({ bends }) => bends.length));
  });

  test("terminations: two to a pull", () => {
    const ends = add(kind, ({ pulls }) => 2 * pulls.length);
    if (kind.startsWith("EMT")) return expect(quantity(`${kind} set-screw connector`)).toBe(ends);
    expect([quantity(`${kind} locknut`), quantity(`${kind} bushing`)]).toEqual([2 * ends, ends]);
  });

  test("straps: within 3 ft of each end and every 10 ft, which one does for 6 ft", () => {
    const straps = (length: number) => (length <= 72 ? 1 : 1 + Math.ceil((length - 72) / 120));
    expect(quantity(`${kind} strap`)).toBe(add(kind, ({ pulls }) => sum(pulls.map(straps))));
  });

  test("couplings: a joint for each 120 in. that a pull is longer, less those that come with the sticks", () => {
    const joints = add(kind, ({ pulls }) => sum(pulls.map((length) => Math.ceil(length / 120) - 1)));
    const style = kind.startsWith("EMT") ? "set-screw" : "threaded";
    expect(quantity(`${kind} ${style} coupling`) + quantity(`${kind} ${style} coupling, with the sticks`)).toBe(joints);
  });

  test("sticks: at least the conduit's feet, at most one to a piece", () => {
    const sticks = quantity(`${kind} conduit, 10 ft stick`);
    const pieces = add(kind, ({ pulls }) => sum(pulls.map((length) => Math.ceil(length / 120))));
    expect(sticks).toBeGreaterThanOrEqual(Math.ceil(add(kind, ({ pulls }) => sum(pulls)) / 120));
    expect(sticks).toBeLessThanOrEqual(pieces);
  });
});

test("boxes: every name once, less panels, starters, pumps and fans", () => {
  const names = new Set(runs.flatMap(({ ends }) => ends).filter((name) => !PASSED_OVER.test(name)));
  expect(quantity("Box")).toBe(names.size);
});

test("conductors: the run and 3 ft at each end, 2 ft at each pull box", () => {
  const feet = new Map<string, number>();
  for (const { conductors, pulls, quantity: times } of runs) {
    for (const [, count, size, type] of conductors.matchAll(/(\d+) (#\S+) (\w+)/g)) {
      const name = `${size} ${type} conductor`;
      feet.set(
        name,
        (feet.get(name) ?? 0) + (times * Number(count) * (sum(pulls) + 72 + 24 * (pulls.length - 1))) / 12,
      );
    }
  }
  expect(feet.size).toBeGreaterThanOrEqual(5);
  for (const [name, length] of feet) expect(quantity(name)).toBeCloseTo(length, DECIMALS);
});

test("the bends of the whole job", () => {
  const total = rowWhere(
    bendCounts(
      demoRuns.map((row) => [...row]),
      { shoes },
    ),
    { Job: "Total" },
  );
  expect(total["Bends"]).toBe(runs.reduce((all, run) => all + run.quantity * run.bends.length, 0));
});
