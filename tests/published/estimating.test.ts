/** Estimating arithmetic against published examples; the source stands beside each. */
import { readBid } from "../../src/bid/bidTable";
import { cascade, type BidBase } from "../../src/bid/cascade";
import { recap } from "../../src/bid/recap";
import { hoursTable } from "../../src/bid/hoursTable";
import { crewRate } from "../../src/bid/labor/crews";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { rowWhere, runsRange } from "../takeoff/tables";

/** Thirteen runs between boxes of their own: 26 boxes. */
const BOXES = 26;
const betweenBoxes = runsRange(
  ...Array.from({ length: BOXES / 2 }, (_, at) => ({
    ...{ Run: `R-${at}`, Route: "east 5'", From: `Outlet ${2 * at}`, To: `Outlet ${2 * at + 1}` },
  })),
);

// M. Holt, newsletter 31 (letterID 2473), extract of an estimating textbook: 26 boxes at $53.70 a hundred are $13.96.
test("extension of a price by the hundred", () => {
  const prices = [
    ["Item", "Unit", "Price"],
    ["Box", "C", 53.7],
  ];
  expect(rowWhere(takeoff(betweenBoxes, { prices }), { Item: "Box" })).toMatchObject({
    ...{ Quantity: BOXES, Extension: 13.96 },
  });
});

type Row = [line: string, value: string | number | null, unit: string, of?: string];

/** Works a bid out over so much material [$], labor [h] and other costs [$]; dollars by line. */
function bidOf(rows: readonly Row[], base: { material?: number; hours?: number; costs?: number } = {}) {
  const { lines, problems } = readBid([
    ["Line", "Value", "Unit", "Of"],
    ...rows.map((row) => [...row, ""].slice(0, 4)),
  ]);
  const given: BidBase = {
    ...{ material: [(base.material ?? 0) * 100], hours: [base.hours ?? 0], costs: [(base.costs ?? 0) * 100] },
    ...{ materialWords: "", costWords: "" },
  };
  const worked = cascade(lines, given);
  expect([...problems, ...worked.problems]).toEqual([]);
  return Object.fromEntries(worked.lines.map(({ name, amount }) => [name, amount ? amount[0]! / 100 : null]));
}

// M. Holt, newsletter 36 (letterID 2545): 109.77 adjusted hours at $18.00 are $1,975.86.
test("labor: adjusted hours at a rate", () => {
  expect(bidOf([["Labor", 18, "per hour"]], { hours: 109.77 })["Labor"]).toBe(1975.86);
});

// Open civil-engineering notes, chapter 8 "Indirect Costs and Profit Applications": the inputs are published, the answers
// worked out by hand. Material 500,000, labor 300,000, equipment 100,000; project overhead 10 % and home office 5 % of
// direct cost, contingency 5 % of the sum so far, profit 8 % of all.
const DIRECT: Row[] = [
  ["Material", null, "material"],
  ["Labor", 30, "per hour"],
  ["Equipment", null, "costs"],
  ["Direct", null, "subtotal"],
  ["Project overhead", "10 %", "%", "Direct"],
];
const THEN: Row[] = [
  ["Contingency", 5, "%"],
  ["Profit", 8, "%"],
  ["Total", null, "total"],
];
const NOTES = { material: 500_000, hours: 10_000, costs: 100_000 };

test("recap: overheads of direct cost, then contingency and profit of all above", () => {
  expect(bidOf([...DIRECT, ["Home office", 5, "%", "Direct"], ...THEN], NOTES)).toMatchObject({
    ...{ Labor: 300_000, Direct: 900_000, "Project overhead": 90_000, "Home office": 45_000 },
    ...{ Contingency: 51_750, Profit: 86_940, Total: 1_173_690 },
  });
});

test("recap: home office of direct cost and project overhead", () => {
  const rows: Row[] = [...DIRECT, ["Home office", 5, "%", "Direct, Project overhead"], ...THEN];
  expect(bidOf(rows, NOTES)["Total"]).toBe(1_178_793);
});

// The same notes: (12,000 + 9,000 + 1,500) a month for 8 months, a crane 8,000 a month for 4, a permit 15,000.
test("job costs by time and in one sum", () => {
  const costs = [
    ["Job cost", "Quantity", "Unit", "Price"],
    ["Superintendent", 8, "month", 12_000],
    ["Engineer", 8, "month", 9_000],
    ["Office", 8, "month", 1_500],
    ["Crane", 4, "month", 8_000],
    ["Permit", null, "", 15_000],
  ];
  const bid = [["Line", "Value", "Unit"], ["Costs", null, "costs"]]; // prettier-ignore
  expect(recap(betweenBoxes, bid, { costs }).total).toEqual([22_700_000]);
});

// M. Holt, newsletter 43 (letterID 2633) and a reader's note: $80,000 of overhead in a period of 4,000 field hours, $20 an hour.
test("overhead as dollars an hour of labor", () => {
  expect(bidOf([["Overhead", 80_000 / 4_000, "per hour"]], { hours: 4_000 })["Overhead"]).toBe(80_000);
});

// TileLetter, February 2018, p. 18, printed without cents: an overhead of 100,000 at a margin of 15 % takes sales of 666,666
// to break even; goods of 566,666 at 25 % are sold for 755,555.
test("margin is a share of the price, markup of the cost", () => {
  const sold = bidOf([["Goods", 566_666, "lump sum"], ["Profit", 25, "margin %"]]); // prettier-ignore
  expect(Math.round(sold["Total"]!)).toBe(755_555);
  // Goods of 566,666.67 leave 100,000 of 666,666.67: the break-even sales of that overhead.
  const even = bidOf([["Goods", 566_666.67, "lump sum"], ["Overhead", 15, "margin %"]]); // prettier-ignore
  expect([even["Overhead"], Math.floor(even["Total"]!)]).toEqual([100_000, 666_666]);
  // By hand: the same 25 % as a markup gives 708,332.50.
  expect(bidOf([["Goods", 566_666, "lump sum"], ["Profit", 25, "%"]])["Total"]).toBe(708_332.5); // prettier-ignore
});

// M. Holt, newsletter 31: 26 boxes at 18.00 hours a hundred are 4.68 hours.
test("hours of an operation by the hundred", () => {
  const labor = [
    ["Operation", "Hours", "Unit"],
    ["box", 18, "C"],
  ];
  expect(rowWhere(takeoff(betweenBoxes, { labor }), { Item: "Box" })["Hours"]).toBeCloseTo(4.68, 12);
});

// M. Holt, newsletter 18 (letterID 2290): a ladder adds 3 % at 12 ft, 5, 8, 10, 13, 16, 19, 22 and 25 % at 20 ft. EC&M,
// September 2000 and November 2009: over four stories add 1 to 3 % a floor. By hand: 100 h at 16 ft on the 7th floor at 2 % a
// floor are 100 · 1.13 · 1.06 = 119.78 multiplied, 100 · (1 + .13 + .06) = 119 added.
const LADDER = [3, 5, 8, 10, 13, 16, 19, 22, 25].map((percent, at) => ["Height", 12 + at, percent]);
const FLOORS = [5, 6, 7, 8].map((floor) => ["Floor", floor, (floor - 4) * 2]);
const factors = [["Column", "Is", "Percent"], ...LADDER, ...FLOORS];
const high = (cells: object) => runsRange({ Run: "A", Route: "east 8'", To: "Box 1", From: "open", ...cells });
const hoursOf = (cells: object, rules?: unknown) => {
  const labor = [["Operation", "Hours"], ["box", 100]]; // prettier-ignore
  return Number(rowWhere(hoursTable(high(cells), { labor, factors, rules }), { Work: "Total" })["Hours in all"]);
};

test("height and floor: multiplied unless a rule says added", () => {
  expect(hoursOf({ Height: 16, Floor: 7 })).toBeCloseTo(119.78, 9);
  const rules = [["Rule", "Value"], ["Labor factors of several columns", "added"]]; // prettier-ignore
  expect(hoursOf({ Height: 16, Floor: 7 }, rules)).toBeCloseTo(119, 9);
});

test.each([
  [{ Height: 11 }, 100],
  [{ Height: 12 }, 103],
  [{ Height: 14.5 }, 108],
  [{ Height: "14' 6\"" }, 108],
  [{ Height: 30 }, 125],
  [{ Floor: 4 }, 100],
  [{}, 100],
])("100 h at %j are %p", (cells, hours) => expect(hoursOf(cells)).toBeCloseTo(hours, 9));

// A public-works "CO Hourly Labor Rate Worksheet", scribd.com/document/138050685: base 37.40; fringes 5.65 + 10.40 + .70 + .41,
// of which 11.10 are paid and taxed; FICA 6.20, Medicare 1.45, FUTA .80 %; 58.66 straight, 78.94 overtime, 99.22 double.
test.each([
  [undefined, 58.66],
  ["straight", 58.66],
  ["Overtime", 78.94],
  [1.5, 78.94],
  ["double", 99.22],
])("loaded rate, %s", (time, rate) => {
  const crews = [
    ["Crew", "Worker", "Number", "Base", "Fringes", "Of that paid", "Burden"],
    ["A", "Electrician", 4, 37.4, 5.65 + 10.4 + 0.7 + 0.41, 11.1, 6.2 + 1.45 + 0.8],
  ];
  expect(crewRate(crews, "a", time)).toBe(rate);
});
