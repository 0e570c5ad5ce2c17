/** The headings of a take-off: every line under one, and their sums the total's. */
import { takeoffInParts } from "../../../src/takeoff/lines/takeoff";
import { records, runsRange } from "../tables";

const runs = runsRange(
  { Run: "A", Area: "Hall", Route: "up 36, east 60", Quantity: 3, From: "Box 7", To: "Panel A" },
  { Run: "B", Area: "Yard", Route: "north 7', east 4'", Raceway: "RMC", Size: "1" },
  { Run: "C", Area: "Hall", Route: "north 5'" },
);
const prices = [["Item", "Unit", "Price"], ["EMT 1/2 strap", "each", 0.335], ["EMT 1/2 set-screw connector", "each", 0.58], ["RMC 1 strap", "each", 1.1]]; // prettier-ignore
const labor = [["Operation", "Minutes"], ["bend", 7]]; // prettier-ignore

const cents = (values: readonly unknown[]): number =>
  values.reduce((sum: number, value) => sum + Math.round(100 * (typeof value === "number" ? value : 0)), 0);

test.each([
  ["without groups, by raceway and size", "", ["EMT 1/2", "RMC 1", ""]],
  ["by area", "Area", ["Hall", "Yard"]],
  ["by two columns", "Raceway, Area", ["EMT, Hall", "RMC, Yard", "Hall"]],
])("%s", (_, by, wanted) => {
  const { table, parts } = takeoffInParts(runs, { prices, labor, by });
  expect(parts.map(({ heading }) => heading)).toEqual(wanted);
  const lines = records(table);
  const total = lines.find(({ Item }) => String(Item).startsWith("Total"))!;
  expect(lines.indexOf(total)).toBe(parts.reduce((sum, { count }) => sum + count, 0));
  // Each part's sum from its own lines, and all of them the total's, in whole cents.
  let from = 0;
  for (const { count, extension } of parts) {
    const own = lines.slice(from, (from += count)).map(({ Extension }) => Extension);
    expect(cents([extension])).toBe(cents(own));
  }
  expect(cents(parts.map(({ extension }) => extension))).toBe(cents([total.Extension]));
});
