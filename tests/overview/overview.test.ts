/** An overview adds nothing of its own: every number is that of another function, and the parts add up to the whole. */
import fc from "fast-check";
import { hoursTable } from "../../src/bid/hoursTable";
import { recapTable } from "../../src/bid/recap";
import { takeoffInGroups } from "../../src/bid/takeoffInGroups";
import { progress } from "../../src/made/counts/progress";
import { weekOf } from "../../src/overview/hours";
import { overviewTable } from "../../src/overview/overview";
import { jobCuts } from "../../src/takeoff/reports/jobCuts";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { demoAllowances, demoBid, demoCosts, demoCounts, demoFactors } from "../../workbench/demo/ferryBid";
import { demoLabor, demoMade, demoPrices, demoRules, demoStock } from "../../workbench/demo/ferryTables";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { runsAndShuffled } from "../takeoff/randomRuns";
import { dayNumber } from "../../src/units/day";
import { records, shoesRange } from "../takeoff/tables";

const shoes = shoesRange(["EMT", "1/2", 4]);
const lists = {
  ...{ prices: demoPrices, labor: demoLabor, rules: demoRules, stock: demoStock, counts: demoCounts, shoes },
  ...{ allowances: demoAllowances, factors: demoFactors, costs: demoCosts },
};
type Row = ReturnType<typeof records>[number];
type Lists = Partial<typeof lists> & { made?: unknown; bid?: unknown };
const cents = (amount: unknown): number => Math.round(Number(amount) * 100);
const sum = (rows: readonly Row[], column: string) => rows.reduce((all, row) => all + Number(row[column]), 0);
const sumCents = (rows: readonly Row[], column: string) => rows.reduce((all, row) => all + cents(row[column]), 0);
/** Sums of feet and hours are held to so many decimals. */
const CLOSE = 6;

/** The lines of one part of an overview. */
const partOf = (runs: unknown, ranges: Lists) => {
  const rows = records(overviewTable(runs, ranges));
  return (name: string): Row[] => rows.filter(({ Part }) => Part === name);
};

describe.each([
  ["the demo", demoRuns, { ...lists, bid: demoBid, made: demoMade }],
  [
    "the demo without lists, whose stick lengths and labor are nobody's",
    demoRuns,
    { shoes, labor: demoLabor, prices: demoPrices },
  ],
] as [string, unknown, Lists][])("%s", (_, runs, ranges) => {
  const part = partOf(runs, ranges);
  const lines = records(takeoff(runs, ranges));

  test("feet of conduit are those of the take-off, size by size and area by area", () => {
    const conduit = lines.filter(({ Item, Unit }) => Unit === "ft" && String(Item).endsWith(" conduit"));
    expect(part("Conduit by size").map(({ What, Amount }) => [`${What} conduit`, Amount])).toEqual(
      conduit.map(({ Item, Quantity }) => [Item, Quantity]),
    );
    const byArea = records(takeoffInGroups(runs, { ...ranges, by: "Area" }));
    for (const { What, Amount } of part("Conduit by area")) {
      const area = byArea.filter(({ Area, Item }) => Area === (What === "no area" ? "" : What) && String(Item).endsWith(" conduit")); // prettier-ignore
      expect([What, Number(Amount)]).toEqual([What, expect.closeTo(sum(area, "Quantity"), CLOSE)]);
    }
    expect(sum(part("Conduit by area"), "Amount")).toBeCloseTo(sum(conduit, "Quantity"), CLOSE);
  });

  test("material by class adds up to the take-off's total to the cent", () => {
    const total = lines.find(({ Item }) => String(Item).startsWith("Total"))!;
    expect(part("Material by class").length).toBeGreaterThan(3);
    expect(sumCents(part("Material by class"), "Amount")).toBe(cents(total["Extension"]));
  });

  test("hours by crew and by week are those of JOB.HOURS, factors included", () => {
    const hours = (by?: string) => records(hoursTable(runs, { ...ranges, by })).filter(({ Work }) => Work === "Total");
    for (const { What, Amount } of part("Hours by crew")) {
      const crew = hours("Crew").find(({ Crew }) => Crew === (What === "no crew" ? "" : What))!;
      expect([What, Number(Amount)]).toEqual([What, expect.closeTo(Number(crew["Hours in all"]), CLOSE)]);
    }
    for (const name of ["Hours by crew", "Hours by week"]) {
      expect(sum(part(name), "Amount")).toBeCloseTo(Number(hours().at(-1)!["Hours in all"]), CLOSE);
    }
  });

  test("waste is that of the cutting plan", () => {
    const cuts = records(jobCuts(runs, ranges));
    const told = /waste ([\d.,]+) ft/.exec(String(cuts.find(({ Raceway }) => Raceway === "Total")!["Note"]));
    expect(sum(part("Waste by size"), "Amount")).toBeCloseTo(Number(told![1]), 1);
  });

  test("progress is that of JOB.PROGRESS", () => {
    const made = ranges.made ?? [["Piece", "Good"]];
    const [total] = records(progress(runs, made, { by: "none", shoes, rules: ranges.rules }));
    for (const { What, Amount } of part("Progress")) expect([What, Amount]).toEqual([What, total![String(What)]]);
    expect(part("Progress")).toHaveLength(5);
  });
});

test("the lines of the price, the material among them, are those of the recap to the cent", () => {
  const part = partOf(demoRuns, { ...lists, bid: demoBid });
  const recap = records(recapTable(demoRuns, demoBid, lists)).filter(({ Amount, Line }) => Amount !== "" && Line !== "note"); // prettier-ignore
  expect(part("Price by line").map(({ What, Amount }) => [What, Amount])).toEqual(
    recap.map(({ Line, Amount }) => [Line, Amount]),
  );
  const material = recap.find(({ Line }) => Line === "Material")!;
  expect(sumCents(part("Material by class"), "Amount")).toBe(cents(material["Amount"]));
});

test("of any job feet by size and by area are the same feet, and money by class is the total", () => {
  fc.assert(
    fc.property(runsAndShuffled, ([runs]) => {
      const part = partOf(runs, { prices: demoPrices, labor: demoLabor });
      const total = records(takeoff(runs, { prices: demoPrices, labor: demoLabor })).find(({ Item }) => String(Item).startsWith("Total"))!; // prettier-ignore
      const amounts = (name: string) => sum(part(name).filter(({ Amount }) => Amount !== ""), "Amount"); // prettier-ignore
      expect(amounts("Conduit by size")).toBeCloseTo(amounts("Conduit by area"), CLOSE);
      expect(cents(amounts("Material by class"))).toBe(cents(total["Extension"]));
      expect(amounts("Hours by crew")).toBeCloseTo(Number(total["Hours"]), CLOSE);
      expect(amounts("Hours by week")).toBeCloseTo(Number(total["Hours"]), CLOSE);
    }),
    { numRuns: 20 },
  );
});

test("a part with nothing in it says why, and is no number", () => {
  const rows = records(overviewTable([["Run", "Raceway", "Size", "Route"], ["A", "EMT", "1/2", "sideways"]])); // prettier-ignore
  const parts = ["Conduit by size", "Conduit by area", "Material by class", "Price by line", "Hours by crew", "Hours by week", "Waste by size", "Progress"]; // prettier-ignore
  expect(rows.slice(0, 8).map(({ Part }) => Part)).toEqual(parts);
  for (const { What, Amount, Note } of rows.slice(0, 8)) {
    expect([What, Amount]).toEqual(["nothing yet", ""]);
    expect(String(Note)).not.toBe("");
  }
  const notes = rows.slice(8).map(({ Part, Note }) => `${Part}: ${Note}`);
  expect(notes.join("\n")).toMatch(/note: not counted: A: .*sideways/);
});

// By a calendar: 2026-12-01 is a Tuesday, 2026-11-30 the Monday before, 2026-12-06 the Sunday after; 2027-01-01 a Friday.
test("the number of a day is the one that reads as it, by JavaScript's own calendar", () => {
  for (let number = 61; number < 120_000; number += 1) {
    const text = new Date((number - 25_569) * 86_400_000).toISOString().slice(0, 10);
    if (dayNumber(text) !== number) throw new Error(`${text} is day ${number}; got ${dayNumber(text)}.`);
  }
  for (const text of ["2026-02-29", "2100-02-29", "2026-00-10", "2026-13-01", "2026-1-1", "soon", ""]) {
    expect([text, dayNumber(text)]).toEqual([text, undefined]);
  }
  expect(dayNumber("2000-02-29")).toBeDefined();
});

test.each([
  ["2026-11-30", "week of 2026-11-30"],
  ["2026-12-01", "week of 2026-11-30"],
  ["2026-12-06", "week of 2026-11-30"],
  ["2026-12-07", "week of 2026-12-07"],
  ["2027-01-01", "week of 2026-12-28"],
  ["next spring", "next spring"],
  ["2026-13-41", "2026-13-41"],
  ["", ""],
])("the week of %s is the %s", (day, week) => {
  expect(weekOf(day)).toBe(week);
});
