import { changes } from "../../../src/takeoff/reports/changes";
import { missingTable } from "../../../src/takeoff/reports/missing";
import { recap, recapTable } from "../../../src/bid/recap";
import { hoursTable } from "../../../src/bid/hoursTable";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { trace } from "../../../src/takeoff/reports/trace";
import { demoBid, demoCosts, demoCounts, demoFactors } from "../../../workbench/demo/ferryBid";
import { demoLabor, demoPrices, demoRules, demoStock } from "../../../workbench/demo/ferryTables";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { quantityOf, records, rowWhere, runsRange, shoesRange, type Cell } from "../tables";

const shoes = shoesRange(["EMT", "1/2", 4]);
const runs = runsRange({ Run: "A", Area: "Hall", Route: "up 40, east 60" });
const countsOf = (...rows: Cell[][]): Cell[][] => [["Item", "Quantity", "Unit", "Area", "Phase", "Height"], ...rows];
const counts = countsOf(
  ["Exit sign", 3, null, "Hall", "1", 12],
  ["Exit sign", 2, "each", "Yard", "2", null],
  ["Strut 1-5/8", 12.5, "ft", "Yard", "2", null],
);
const lists = {
  prices: [["Item", "Unit", "Price"], ["Exit sign", "each", 40], ["Strut 1-5/8", "C ft", 318]], // prettier-ignore
  labor: [["Operation", "Hours"], ["Exit sign", 0.5]], // prettier-ignore
};

test("what hangs on no run stands in the take-off with its price and hours, by area too", () => {
  const table = takeoff(runs, { shoes, counts, ...lists });
  expect(rowWhere(table, { Item: "Exit sign" })).toMatchObject({
    Quantity: 5,
    Unit: "each",
    Extension: 200,
    Hours: 2.5,
  });
  expect(rowWhere(table, { Item: "Strut 1-5/8" })).toMatchObject({ Quantity: 12.5, Unit: "ft", Extension: 39.75 });
  const grouped = takeoff(runs, { shoes, counts, by: "Phase, Area" });
  expect(rowWhere(grouped, { Item: "Exit sign", Phase: "2" })).toMatchObject({ Area: "Yard", Quantity: 2 });
});

test("its trace leads to the rows of Counts", () => {
  expect(
    records(trace(runs, "exit sign", { shoes, counts })).map(({ Run, Row, Amount }) => [Run, Row, Amount]),
  ).toEqual([
    ["Counts row 2", 2, 3],
    ["Counts row 3", 3, 2],
    ["Total", "", 5],
  ]);
});

test("it is missed where it has no price or minutes, and in the changes where it changes", () => {
  const missing = records(missingTable(runs, { shoes, counts, labor: lists.labor }));
  expect(
    missing
      .filter(({ Name }) => /Exit|Strut/.test(String(Name)))
      .map(({ List, Name, Unit, Quantity }) => [List, Name, Unit, Quantity]),
  ).toEqual([
    // prettier-ignore
    ["Prices", "Exit sign", "each", 5],
    ["Prices", "Strut 1-5/8", "ft", 12.5],
    ["Labor", "Strut 1-5/8", "ft", 12.5],
  ]);
  const before = countsOf(["Exit sign", 4, null, "Hall", null, null]);
  const told = records(changes(runs, runs, { shoes, countsBefore: before, counts }));
  expect(rowWhere(changes(runs, runs, { shoes, countsBefore: before, counts }), { "Run or item": "Exit sign" })).toMatchObject({ Before: 4, After: 5, Difference: 1 }); // prettier-ignore
  expect(told.find((row) => row["Run or item"] === "Strut 1-5/8")).toMatchObject({ Before: 0, Difference: 12.5 });
});

test("conditions of its row add to its hours", () => {
  const factors = [["Column", "Is", "Percent"], ["Height", 12, 10]]; // prettier-ignore
  const table = hoursTable(runs, { shoes, counts, factors, labor: lists.labor });
  expect(rowWhere(table, { Work: "Exit sign" })).toMatchObject({ Hours: 2.5, "By factors": expect.closeTo(0.15, 9) });
});

test("areas that only counts have are groups of the bid; groups add up", () => {
  const bid = [["Line", "Value", "Unit"], ["Material", null, "material"]]; // prettier-ignore
  const { groups, lines } = recap(runs, bid, { shoes, counts, ...lists, by: "Area" });
  expect([groups, lines[0]!.amount]).toEqual([
    ["Hall", "Yard"],
    [12000, 8000 + 3975],
  ]);
});

test.each(["Area", "Phase, Area", "Crew"])(
  "the demo's bid with counts, by %s: groups add up to the take-off to the cent",
  (by) => {
    const demo = { prices: demoPrices, labor: demoLabor, rules: demoRules, stock: demoStock, counts: demoCounts };
    const total = rowWhere(takeoff(demoRuns, demo), { Item: "Total, without what the note names" });
    const { lines } = recap(demoRuns, demoBid, { ...demo, costs: demoCosts, factors: demoFactors, by });
    const material = lines.find(({ name }) => name === "Material")!.amount!;
    expect(material.reduce((sum, part) => sum + part, 0)).toBe(Math.round(Number(total["Extension"]) * 100));
    expect(material.length).toBeGreaterThan(2);
  },
);

test("a row that cannot be read is told and hides no other", () => {
  const spoilt = countsOf(["Exit sign", null, null, null, null, null], ["", 2, null, null, null, null], ["Sign", 3, "box", null, null, null], ["Lamp", 1, null, null, null, null]); // prettier-ignore
  const table = takeoff(runs, { shoes, counts: spoilt });
  expect(quantityOf(table, "Lamp")).toBe(1);
  expect(
    records(table)
      .filter(({ Item }) => Item === "not read")
      .map(({ Note }) => Note),
  ).toEqual([
    // prettier-ignore
    "counts row 2: Quantity of Exit sign is 0 or empty; it is not counted.",
    "counts row 3: Item is empty.",
    'counts row 4: Unit must be each or ft; got "box".',
  ]);
  const words = records(recapTable(runs, demoBid, { shoes, counts: spoilt })).map(({ Basis }) => Basis);
  expect(words).toContain("not read: counts row 3: Item is empty.");
});
