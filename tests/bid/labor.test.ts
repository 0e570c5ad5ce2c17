import { hoursTable } from "../../src/bid/hoursTable";
import { crewRate } from "../../src/bid/labor/crews";
import { recap, recapTable } from "../../src/bid/recap";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { demoBid, demoCrews, demoFactors } from "../../workbench/demo/ferryBid";
import { demoLabor, demoRules, demoStock } from "../../workbench/demo/ferryTables";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { quantityOf, records, rowWhere, runsRange, shoesRange, type Cell } from "../takeoff/tables";

const shoes = shoesRange(["EMT", "1/2", 4]);
const runs = runsRange(
  { Run: "A", Area: "Hall", Route: "up 40, east 60", Height: 14 },
  { Run: "B", Area: "Yard", Route: "east 5'" },
);
const given = { labor: demoLabor, rules: demoRules, stock: demoStock };
const factorsOf = (...rows: Cell[][]): Cell[][] => [["Column", "Is", "Percent"], ...rows];

test("hours for the unit are minutes for one: C, C ft and each", () => {
  const by = (...rows: Cell[][]) => records(takeoff(runs, { shoes, labor: [["Operation", "Minutes", "Hours", "Unit"], ...rows] })); // prettier-ignore
  const lines = by(["conduit", null, 4.5, "C ft"], ["strap", null, 5, "C"], ["connector", 6, null, "each"], ["bend", null, 0.05, null]); // prettier-ignore
  const minutes = Object.fromEntries(lines.map(({ Item, Minutes }) => [Item, Minutes]));
  expect(minutes).toMatchObject({ "EMT 1/2 conduit": expect.closeTo(2.7, 9), "EMT 1/2 strap": 3, "EMT 1/2 set-screw connector": 6, "EMT 1/2 bend": 3 }); // prettier-ignore
  const told = by(["conduit", null, 4.5, "each"], ["strap", 5, 5, null]).map(({ Note }) => Note).join("\n"); // prettier-ignore
  expect(told).toContain("conduit");
  expect(told).toContain("labor row 3: write Minutes or Hours, not both.");
});

test("the most particular word or the highest number reached holds; each column once", () => {
  const factors = factorsOf(["Height", 10, 5], ["Height", 14, 9], ["Height", 20, 30], ["Area", "yard", -10]);
  const table = hoursTable(runs, { shoes, factors, by: "Area", labor: [["Operation", "Hours"], ["strap", 1]] }); // prettier-ignore
  expect(records(table).map(({ Area, Work, Hours, ...row }) => [Area, Work, Hours, row["By factors"]])).toEqual([
    ["Hall", "EMT 1/2 strap", 2, expect.closeTo(0.18, 9)],
    ["Hall", "Total", 2, expect.closeTo(0.18, 9)],
    ["Yard", "EMT 1/2 strap", 1, expect.closeTo(-0.1, 9)],
    ["Yard", "Total", 1, expect.closeTo(-0.1, 9)],
    ["", "Total", 3, expect.closeTo(0.08, 9)],
    ["", expect.stringMatching(/^note: without minutes: conduit, connector/), "", ""],
  ]);
});

test.each(["", "Area", "Crew, Area", "Date"])(
  "the demo's hours by '%s' add up to the take-off's, and with factors to the recap's",
  (by) => {
    // prettier-ignore
    const table = hoursTable(demoRuns, { ...given, factors: demoFactors, by });
    const total = records(table).filter(({ Work }) => Work === "Total").at(-1)!; // prettier-ignore
    const plain = rowWhere(takeoff(demoRuns, given), { Item: "Total, without what the note names" });
    expect(total["Hours"]).toBeCloseTo(Number(plain["Hours"]), 9);
    expect(Number(total["By factors"])).toBeGreaterThan(1);
    const perHour = [["Line", "Value", "Unit"], ["Hours", 1, "per hour"]]; // prettier-ignore
    const { total: cents } = recap(demoRuns, perHour, { ...given, factors: demoFactors });
    expect(cents[0]).toBe(Math.round(Number(total["Hours in all"]) * 100));
  },
);

test("every area of the demo has the hours of its own runs alone, but for boxes that two areas share", () => {
  const groups = records(hoursTable(demoRuns, { ...given, by: "Area" })).filter(({ Work, Area }) => Work === "Total" && Area !== ""); // prettier-ignore
  expect(groups.map(({ Area }) => Area)).toEqual(["Dock lighting", "Pump room", "Ticket hall", "Workshop"]);
  for (const { Area, Hours } of groups) {
    const alone = demoRuns.filter((row, at) => at === 0 || row[2] === Area);
    const own = records(takeoff(alone, given)).find(({ Item }) => String(Item).startsWith("Total"))!;
    expect(Hours).toBeCloseTo(Number(own["Hours"]), 6);
  }
});

test.each([
  [["Color", "red", 5], /^note: not read: factors row 2: Column must be one of Job, Area, .*; got "Color"\.$/],
  [["Area", null, 5], /factors row 2: Is is empty/],
  [["Area", "Hall", null], /factors row 2: Percent is 0 or empty/],
  [["Area", "Hall", -100], /factors row 2: Percent must be above -100 and at most 1000; got -100/],
])("a row of Factors that cannot be read is told: %j", (row, words) => {
  const table = hoursTable(runs, { shoes, labor: demoLabor, factors: factorsOf(row as Cell[]) });
  expect(records(table).map(({ Work }) => Work)).toContainEqual(expect.stringMatching(words));
});

test("a Height or Floor that cannot be read costs its row alone", () => {
  const table = takeoff(runsRange({ Run: "A", Route: "east 5'", Height: "high" }, { Run: "B", Route: "east 5'", Floor: 2 })); // prettier-ignore
  expect(quantityOf(table, "EMT 1/2 conduit")).toBe(5);
  expect(rowWhere(table, { Item: "not counted: A" })["Note"]).toMatch(/^Height /);
});

// By hand, the demo's crew B: 58.24 + 2 · 52.61 + 32.57 over 4; overtime 80.88 + 2 · 72.69 + 44.51 over 4.
test("the demo's rates are what its formulas give", () => {
  const value = (line: string) => demoBid.find(([name]) => name === line)![1];
  expect([crewRate(demoCrews, "B", null), crewRate(demoCrews, "B", "overtime")]).toEqual([49.01, 67.69]);
  expect([value("Labor"), value("Labor, overtime")]).toEqual([49.01, 67.69]);
});

test("a rate of part of the hours", () => {
  const bid = [["Line", "Value", "Unit", "Of"], ["Straight", 50, "per hour", "90 %"], ["Overtime", 70, "per hour", "10%"], ["Late", 90, "per hour", "some"]]; // prettier-ignore
  const rows = records(recapTable(runs, bid, { shoes, labor: [["Operation", "Hours"], ["strap", 4]] })); // prettier-ignore
  // Three straps, 12 h.
  expect(rows.slice(0, 2)).toEqual([
    { Line: "Straight", Basis: "90 % of 12 h at 50.00", Amount: 540 },
    { Line: "Overtime", Basis: "10 % of 12 h at 70.00", Amount: 84 },
  ]);
  expect(rows.map(({ Basis }) => Basis)).toContain('not read: bid row 4: Of must be a percent of the hours, as 20 %; got "some".'); // prettier-ignore
});

test.each([
  [[["Worker", "Base"], ["Electrician", 0]], null, "crews row 2: Base must be a number; got an empty cell."], // prettier-ignore
  [[["Worker", "Base", "Fringes", "Of that paid"], ["E", 30, 5, 6]], null, "crews row 2: Of that paid must be at most the Fringes, 5; got 6."], // prettier-ignore
  [[["Crew", "Worker", "Base"], ["A", "E", 30]], "B", 'crews has nobody in crew "B".'], // prettier-ignore
])("a rate that leaves somebody out is refused: %j", (crews, crew, message) => {
  expect(() => crewRate(crews, crew, null)).toThrow(message);
});
