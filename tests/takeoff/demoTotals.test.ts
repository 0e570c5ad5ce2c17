/** The totals of the demo job, added up again from the raw routes by readdJob.ts: a second reader and other formulas. */
import { bendCounts } from "../../src/takeoff/reports/bendCounts";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { demoRules } from "../../workbench/demo/ferryTables";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { leastSticks } from "./sticks/leastSticks";
import { readded, sum, type Readded } from "./readdJob";
import { records, rowWhere, shoesRange } from "./tables";

/** Sums of feet are held to this many decimals [ft]. */
const DECIMALS = 9;
const SHOP_RADIUS: Record<string, number> = { "1/2": 4, "3/4": 4.5, "1": 5.75 };
const shoes = shoesRange(
  ...["EMT", "IMC", "RMC", "PVC-coated RMC"].flatMap((raceway) =>
    Object.entries(SHOP_RADIUS).map(([size, radius]) => [raceway, size, radius] as [string, string, number]),
  ),
);
const demo = demoRuns.map((row) => [...row]);
const rules = demoRules;
const PASSED_OVER = /\b(panel|starter|pump|fan)\b/i;
/** Between supports [in]: NEC 358.30, 342.30, 344.30 for metal; table 352.30 for PVC of 1-1/4 to 2. */
const spacing = (kind: string) => (kind.startsWith("PVC 40") ? 60 : 120);

const kinds = [...new Set(readded.map(({ kind }) => kind))];
const table = takeoff(demo, { shoes, rules });

/** Adds up over the runs of a raceway and size. */
const add = (kind: string, of: (run: Readded) => number) =>
  sum(readded.filter((run) => run.kind === kind).map((run) => run.quantity * of(run)));
/** What the take-off has of the items of a kind that end in these words. */
const quantity = (...items: string[]) =>
  sum(
    records(table)
      .filter((row) => items.includes(String(row["Item"])))
      .map((row) => Number(row["Quantity"])),
  );
const inStyles = (kind: string, what: string) =>
  ["set-screw", "compression", "threaded"].map((style) => `${kind} ${style} ${what}`);

test("the demo job has every run counted but the one that cannot be built", () => {
  const told = records(table).filter(({ Item }) => String(Item).startsWith("not "));
  expect(told.map((row) => row["Item"])).toEqual(["not counted: PR-09"]);
  expect(kinds.length).toBeGreaterThanOrEqual(11);
  expect(sum(readded.map(({ elbows }) => elbows))).toBe(4);
});

describe.each(kinds)("%s", (kind) => {
  test("feet of conduit", () => {
    expect(quantity(`${kind} conduit`)).toBeCloseTo(add(kind, ({ conduit }) => conduit) / 12, DECIMALS);
  });

  test("bends, and elbows that are bought", () => {
    expect(quantity(`${kind} bend`)).toBe(add(kind, ({ bends }) => bends.length));
    expect(quantity(`${kind} 90° elbow`, `${kind} 90° elbow, 18 in. radius`)).toBe(add(kind, ({ elbows }) => elbows));
    const counted = bendCounts(demo, { shoes, rules, by: "Raceway, Size" });
    const line = records(counted).find((row) => `${row["Raceway"]} ${row["Size"]}` === kind);
    expect(line?.["Bends"] ?? 0).toBe(add(kind, ({ bends }) => bends.length));
  });

  test("terminations: two to a pull, but none in a body or at a flexible piece", () => {
    const ends = add(kind, ({ terminations }) => terminations);
    // NEC 300.4(G): from 4 AWG on an insulated throat or bushing.
    const large = add(kind, ({ terminations, conductors }) => (/#4 /.test(conductors) ? terminations : 0));
    if (kind.startsWith("EMT")) {
      const throats = inStyles(kind, "connector").map((item) => `${item}, insulated throat`);
      expect(quantity(...throats)).toBe(large);
      return expect(quantity(...inStyles(kind, "connector"), ...throats)).toBe(ends);
    }
    if (kind.startsWith("PVC 40")) {
      return expect([quantity(`${kind} terminal adapter`), quantity(`${kind} locknut`)]).toEqual([ends, ends]);
    }
    // PR-01, twice, has grounding bushings at both ends and PR-07 one at its first.
    const grounding = kind === "RMC 1" ? 2 * 2 + 1 : 0;
    const bushings = (what: string) => [quantity(`${kind} ${what}`), quantity(`${kind} insulating ${what}`)];
    expect(sum(bushings("grounding bushing"))).toBe(grounding);
    expect([quantity(`${kind} locknut`), sum(bushings("bushing"))]).toEqual([2 * ends, ends - grounding]);
    expect(bushings("bushing")[1]! + bushings("grounding bushing")[1]!).toBe(large);
  });

  test("straps: within 3 ft of each end and evenly between, which one does for 6 ft", () => {
    const straps = (length: number) => (length <= 72 ? 1 : 1 + Math.ceil((length - 72) / spacing(kind)));
    expect(quantity(`${kind} strap`, `${kind} strut strap`)).toBe(add(kind, ({ pulls }) => sum(pulls.map(straps))));
  });

  test("couplings: one at every joint, less those that come with the sticks", () => {
    const couplings = kind.startsWith("PVC 40") ? [`${kind} coupling`] : inStyles(kind, "coupling");
    const given = couplings.map((item) => `${item}, with the sticks`);
    expect(quantity(...couplings, ...given)).toBe(add(kind, ({ joints }) => joints));
  });

  test("sticks: as many as a general-purpose solver needs for the pieces", async () => {
    const sticks = quantity(`${kind} conduit, 10 ft stick`);
    expect(sticks).toBeGreaterThanOrEqual(Math.ceil(add(kind, ({ conduit }) => conduit) / 120));
    expect(sticks).toBe(await leastSticks(kind, shoes));
  });
});

test("the rack of three: 4 trapezes of strut by its longest conduit, two rods and three straps on each", () => {
  // 60 + 180 + 96 in. less two gains of 1.93: 332; 72 for the first and 120 for each of three more. EMT 3/4 is 0.922 in. wide.
  expect([quantity("trapeze"), quantity("threaded rod"), quantity("EMT 3/4 strut strap")]).toEqual([4, 8, 12]);
  // 2 in. of strut beyond the outer conduits, by rule.
  expect(quantity("strut")).toBeCloseTo((4 * (2 * 3 + 0.922 + 2 * 2)) / 12, DECIMALS);
});

test("one body, and 3 ft of flexible conduit with a connector at one end and a coupling to EMT at the other", () => {
  const items = ["IMC 3/4 LB body", "FMC 1/2 conduit", "FMC 1/2 flex connector", "EMT 1/2 to FMC coupling"];
  expect(items.map((item) => quantity(item))).toEqual([1, 3, 1, 1]);
});

test("boxes: every name once, less panels, starters, pumps and fans", () => {
  const names = new Set(readded.flatMap(({ ends }) => ends).filter((name) => !PASSED_OVER.test(name)));
  expect(quantity("Box")).toBe(names.size);
});

test("expansion fittings: 148 ft of PVC move 3.6 in. over 60 °F, one fitting of 4 in.", () => {
  // NEC table 352.44: 4.06 in. for 100 ft and 100 °F.
  const [run] = readded.filter(({ kind }) => kind === "PVC 40 1-1/2");
  const moves = run!.stretches.map((length) => (4.06 * (length / 1200) * 60) / 100);
  expect(Math.max(...moves)).toBeCloseTo(3.6, 1);
  expect(quantity("PVC 40 1-1/2 expansion fitting")).toBe(
    sum(moves.map((move) => (move < 0.25 ? 0 : Math.ceil(move / 4)))),
  );
});

test("conductors: the run and 4 ft at each end by the job's rule, 2 ft at each pull box", () => {
  const feet = new Map<string, number>();
  for (const { conductors, pulls, whip, bodies, quantity: times } of readded) {
    for (const [, count, size, type] of conductors.matchAll(/(\d+) (#\S+) (\w+)/g)) {
      const name = `${size} ${type} conductor`;
      const each = (sum(pulls) + whip + 2 * 48 + 24 * (pulls.length - 1 - bodies)) / 12;
      feet.set(name, (feet.get(name) ?? 0) + times * Number(count) * each);
    }
  }
  expect(feet.size).toBeGreaterThanOrEqual(5);
  for (const [name, length] of feet) expect(quantity(name)).toBeCloseTo(length, DECIMALS);
});

test("the bends of the whole job", () => {
  const total = rowWhere(bendCounts(demo, { shoes, rules }), { Job: "Total" });
  expect(total["Bends"]).toBe(sum(readded.map((run) => run.quantity * run.bends.length)));
});
