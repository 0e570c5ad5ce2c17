/** Every function of the metadata, called as Excel calls it: what comes back, and what an empty cell may be. */
import { demoBid, demoCosts, demoCounts, demoFactors } from "../../workbench/demo/ferryBid";
import { demoBench, demoLabor, demoMade, demoPrices } from "../../workbench/demo/ferryTables";
import { demoRuns, issuedRuns } from "../../workbench/demo/ferryTerminal";
import { call, exampleArguments, functions, shoes, type Cells } from "../support/functionExamples";

const cellsOf = (result: unknown): unknown[] => (Array.isArray(result) ? (result as unknown[][]).flat() : [result]);
/** What Excel shows as 0 or as an error: https://github.com/OfficeDev/office-js/issues/1503 for null. */
const nothing = (cell: unknown): boolean => cell === null || cell === undefined || Number.isNaN(cell);

test.each(functions)("$id fills every cell of its table", ({ id, description }) => {
  const result = call(id, ...exampleArguments(description));
  expect(cellsOf(result).filter(nothing)).toEqual([]);
  const widths = Array.isArray(result) ? (result as unknown[][]).map((row) => row.length) : [1];
  expect(new Set(widths).size).toBe(1);
});

test("the check of the last test sees what it should", () => {
  expect(cellsOf([[1, null], [undefined, NaN], ["", 0]]).filter(nothing)).toHaveLength(3); // prettier-ignore
});

/** Whole jobs with every table there is. */
const JOBS: [id: string, ...ranges: (Cells | null)[]][] = [
  ["JOB.SCHEDULE", demoRuns, shoes],
  ["JOB.CHECKS", demoRuns, shoes],
  ["JOB.SETUP", demoRuns, shoes, demoBench],
  ["JOB.TAKEOFF", demoRuns, demoPrices, shoes, null, demoLabor],
  ["JOB.MISSING", demoRuns, demoPrices, demoLabor, shoes],
  ["JOB.RECAP", demoRuns, demoBid, demoPrices, demoLabor, shoes, null, null, null, demoCosts, demoFactors, demoCounts],
  [
    "JOB.OVERVIEW",
    demoRuns,
    demoPrices,
    demoLabor,
    shoes,
    null,
    null,
    demoCounts,
    null,
    demoFactors,
    demoMade,
    demoBid,
    demoCosts,
  ],
  ["JOB.HOURS", demoRuns, demoLabor, demoFactors, null, shoes],
  ["JOB.BENDS", demoRuns, null, shoes, demoLabor],
  ["JOB.CHANGES", issuedRuns, demoRuns, shoes],
  ["JOB.PROGRESS", demoRuns, demoMade, null, shoes, null, demoLabor],
  ["JOB.DAILY", demoRuns, demoMade, shoes],
  ["JOB.STANDING", demoRuns, demoMade, issuedRuns, shoes],
  ["SHOE.LEARN", demoMade, shoes, demoRuns],
  ["SHOE.CHART", demoMade, demoRuns, shoes],
];

/** A range with rows below its end, its empty cells as one version or another of Excel hands them over. */
const withBlanks = (range: Cells | null, blank: unknown): unknown[][] | null =>
  range &&
  [...range, range[0]!.map(() => null), range[0]!.map(() => null)].map((row) =>
    row.map((cell) => (cell === null || cell === "" ? blank : cell)),
  );

test.each(JOBS)("%s: an empty cell is empty as null, as text, as an object and as 0", (id, ...ranges) => {
  const job = (blank: unknown) => call(id, ...ranges.map((range) => withBlanks(range, blank)));
  const plain = call(id, ...ranges);
  for (const blank of [null, "", { type: "Empty", basicType: "Empty", basicValue: "" }, 0]) {
    expect(job(blank)).toEqual(plain);
  }
});

const RUN = ["Run", "Raceway", "Size", "Route", "Quantity"];
const twoRuns = (quantity: unknown): unknown[][] => [
  RUN,
  ["A-1", "EMT", "1/2", "up 36, east 60", quantity],
  ["A-2", "EMT", "1/2", "up 24, east 48", 3],
];

test.each(["JOB.CHECKS", "JOB.TAKEOFF", "JOB.CUTS", "JOB.BENDS", "JOB.SCHEDULE"])(
  "%s counts a Quantity of 0 as 1 and says so",
  (id) => {
    const words = (quantity: unknown) => JSON.stringify(call(id, twoRuns(quantity)));
    const said = id === "JOB.SCHEDULE" ? "Quantity 0 counts as 1" : "Quantity is 0 or empty and counts as 1: A-1";
    expect(words(0)).toContain(said);
    for (const quantity of [null, 1]) expect(words(quantity)).not.toContain("counts as 1");
    const numbers = (quantity: unknown) =>
      cellsOf(call(id, twoRuns(quantity))).filter((cell) => typeof cell === "number");
    expect(numbers(0)).toEqual(numbers(1));
  },
);

test("a job of many such runs names a dozen and counts the rest", () => {
  const rows = Array.from({ length: 15 }, (_, at) => [`A-${at + 1}`, "EMT", "1/2", "up 36, east 60", 0]);
  const findings = call("JOB.CHECKS", [RUN, ...rows]) as string[][];
  expect(findings.slice(1).flatMap((row) => (row[3]!.includes("NOT MEASURED") ? [] : row[3]))).toEqual([
    "Quantity is 0 or empty and counts as 1: A-1, A-2, A-3, A-4, A-5, A-6, A-7, A-8, A-9, A-10, A-11, A-12 and 3 more.",
  ]);
});

test("a stick with 0 on hand is not taken and is told; the word buy stands for an empty cell", () => {
  const cuts = (onHand: unknown) =>
    call("JOB.CUTS", twoRuns(1), [["Raceway", "Size", "Length", "On hand", "Price"], ["EMT", "1/2", 240, onHand, 9]]) as string[][]; // prettier-ignore
  expect(cuts("Buy")).toEqual(cuts(null));
  // By hand: 94.28 + 3 × 70.28 = 305.1 in., two sticks of 240 in. at 9.
  expect(cuts(null)[1]!.join()).toContain("2 sticks to buy for 18.00;");
  const last = cuts(0).at(-1)!;
  expect(last).toEqual(["", "", "", "not read", "", "", "", expect.stringMatching(/^stock row 2: On hand is 0, so none is taken;/), "", ""]); // prettier-ignore
});

test.each(["Radius", "Deduct", "Springback", "Dial to", "Dial start", "Shortest tail", "Made for"])(
  "%s of 0 in Shoes is an empty cell",
  (column) => {
    const schedule = (cell: unknown) =>
      call("JOB.SCHEDULE", twoRuns(1), [["Raceway", "Size", column, "Notes"], ["EMT", "1/2", cell, 0]]); // prettier-ignore
    expect(schedule(0)).toEqual(schedule(null));
  },
);

test("straps of 0 are a finding that says the cell may be empty", () => {
  const checks = (straps: unknown) =>
    call("JOB.CHECKS", twoRuns(1).map((row, at) => [...row, at === 0 ? "Straps" : straps])) as string[][]; // prettier-ignore
  expect(checks(0)[1]![3]).toMatch(/^0 straps are planned \(or the cell is empty\);/);
  expect(checks(1)[1]![3]).toMatch(/^1 straps are planned; /);
  expect(
    checks(null)
      .slice(1)
      .map((row) => row[3]),
  ).toEqual([expect.stringContaining("NOT MEASURED")]);
});

test("a price of 0 leaves the plan to the number of sticks", () => {
  const cuts = (price: unknown) =>
    call("JOB.CUTS", twoRuns(1), [["Raceway", "Size", "Length", "Price"], ["EMT", "1/2", 240, price]]); // prettier-ignore
  expect(cuts(0)).toEqual(cuts(null));
});

test("prices and minutes of 0 wait to be filled in like empty cells, and are named", () => {
  const said = (cell: unknown) =>
    JSON.stringify(
      call(
        "JOB.TAKEOFF",
        twoRuns(1),
        [["Item", "Unit", "Price"], ["EMT 1/2 conduit", "ft", cell]],
        null,
        null,
        [["Operation", "Minutes"], ["bend", cell]],
      ),
    ); // prettier-ignore
  expect(said(0)).toEqual(said(null));
  expect(said(0)).toMatch(/without a price: 3.*without minutes: 4.*stub-up/);
  expect(said(2)).toMatch(/without a price: 2.*without minutes: 3/);
});

test("a length without its quantity is told; without quantities, cells of 0 are empty", () => {
  expect((call("CUT.PLAN", [[40], [30], [0]], [[2], [0], [0]]) as unknown[][]).at(-1)).toEqual([
    "",
    "not cut",
    "",
    "",
    "quantity 2 is 0 or empty",
    ...["", ""],
  ]);
  expect(call("CUT.PLAN", [[40], [0]])).toEqual(call("CUT.PLAN", [[40]]));
});

test("beside a dial reading a springback of 0 is an empty cell; alone it is refused", () => {
  const tests = (...rows: unknown[][]) => [["Angle", "Dial", "Springback"], ...rows];
  expect(call("BEND.SPRINGBACK", 45, tests([90, 94, 0]))).toBe(2);
  expect(call("BEND.SPRINGBACK", 45, tests([90, 0, 4]))).toBe(2);
  expect(call("BEND.SPRINGBACK", 45, tests([90, 90, 0]))).toBe(0);
  expect(() => call("BEND.SPRINGBACK", 45, tests([90, 0, 0]))).toThrow(/^tests row 2: Springback is 0 or empty;/);
});

test("conductors and entries pass over cells of 0, which no conductor and no size is", () => {
  const rows = [["Count", "Size", "Insulation"], [3, "#10", "THHN"], [0, 0, 0]]; // prettier-ignore
  expect(call("FILL", "EMT", "1/2", rows)).toBe(call("FILL", "EMT", "1/2", "3 #10 THHN"));
  expect(() => call("FILL", "EMT", "1/2", [[0, "#10", "THHN"]])).toThrow(/count must be at least 1/);
  expect(call("PULLBOX", [["3", 0], [0, "2"]])).toBe(call("PULLBOX", [["3", null], [null, "2"]])); // prettier-ignore
});
