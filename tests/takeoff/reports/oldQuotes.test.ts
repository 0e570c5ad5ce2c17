/** Quotes and their age on a day that a person names. Days by hand: 2 March to 2 May are 29 + 30 + 2 = 61. */
import { daysBetween } from "../../../src/units/day";
import { missingTable } from "../../../src/takeoff/reports/missing";
import { records, runsRange, shoesRange, type Cell } from "../tables";

const shoes = shoesRange(["EMT", "1/2", 4]);
const runs = runsRange({ Run: "A", Route: "east 30'" });
const prices = (...strap: Cell[]): Cell[][] => [["Item", "Price", "Vendor", "Price by Acme", "Quoted by Acme", "Price by Bolt", "Quoted by Bolt"], ["EMT 1/2 strap", ...strap]]; // prettier-ignore
const rulesOf = (day: Cell, most: Cell = 30): Cell[][] => [["Rule", "Value"], ["Quotes as of", day], ["Oldest quote", most]]; // prettier-ignore
const found = (list: Cell[][], rules?: Cell[][]) =>
  records(missingTable(runs, { shoes, prices: list, rules })).flatMap(({ List, Name, Finding }) =>
    List === "Prices" && Name === "EMT 1/2 strap" ? [Finding] : [],
  );
const acme = (day: Cell) => prices("", "", 0.3, day, "", "");

test.each<[string, Cell[][], Cell[][] | undefined, (string | number)[]]>([
  ["no day is set: no age is told", acme("2026-03-02"), undefined, []],
  ["61 days, at most 30", acme("2026-03-02"), rulesOf("2026-05-02"), ["quoted by Acme on 2026-03-02, 61 days before 2026-05-02: more than 30"]],
  ["the day as a number of Excel's", acme(46083), rulesOf(46144), ["quoted by Acme on 2026-03-02, 61 days before 2026-05-02: more than 30"]],
  ["61 days, at most 61", acme("2026-03-02"), rulesOf("2026-05-02", 61), []],
  ["61 days, at most 60", acme("2026-03-02"), rulesOf("2026-05-02", 60), ["quoted by Acme on 2026-03-02, 61 days before 2026-05-02: more than 60"]],
  ["a leap day between", acme("2028-02-28"), rulesOf("2028-03-01", 1), ["quoted by Acme on 2028-02-28, 2 days before 2028-03-01: more than 1"]],
  ["a quote from the day after", acme("2026-05-03"), rulesOf("2026-05-02"), ["quoted by Acme on 2026-05-03, after 2026-05-02, the day of the rule Quotes as of"]],
  ["a quote without a day", acme(""), rulesOf("2026-05-02"), ["the price by Acme has no day under Quoted by Acme"]],
  ["a day that cannot be read", acme("in March"), rulesOf("2026-05-02"), ["Quoted by Acme is no day as 2026-05-02: in March"]],
  ["an old quote that does not count", prices("", "Bolt", 0.2, "2020-01-01", 0.3, "2026-05-01"), rulesOf("2026-05-02"), []],
  ["a price of one's own has no age", prices(0.3, "", 0.2, "2020-01-01", "", ""), rulesOf("2026-05-02"), []],
])("%s", (_name, list, rules, findings) => expect(found(list, rules)).toEqual(findings)); // prettier-ignore

test("sticks that are priced by the foot go by the quote of the foot", () => {
  const list = [["Item", "Unit", "Price", "Price by Acme", "Quoted by Acme"], ["EMT 1/2 conduit", "ft", "", 0.7, "2026-01-01"]]; // prettier-ignore
  const rows = records(missingTable(runs, { shoes, prices: list, rules: rulesOf("2026-05-02") }));
  expect(rows.find(({ Name }) => Name === "EMT 1/2 conduit, 10 ft stick")!["Finding"]).toMatch(/^quoted by Acme on 2026-01-01, 121 days/); // prettier-ignore
});

test.each(["soon", "2026-02-30", "2026-13-01"])("a day that is none is told: %s", (day) => {
  const rows = records(missingTable(runs, { shoes, rules: rulesOf(day) }));
  expect(rows.map(({ Finding }) => Finding)).toContain(`rules row 2: "Quotes as of" must be a day, as 2026-05-02; got "${day}".`); // prettier-ignore
});

test("days between", () => {
  expect(daysBetween("2026-12-31", "2027-01-01")).toBe(1);
  expect(daysBetween("2024-02-28", "2025-02-28")).toBe(366);
  expect(daysBetween("2026-02-30", "2026-03-01")).toBeUndefined();
});
