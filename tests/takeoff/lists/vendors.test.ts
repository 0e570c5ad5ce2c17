import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { records, rowWhere, runsRange, shoesRange, type Cell } from "../tables";

const shoes = shoesRange(["EMT", "1/2", 4]);
const runs = runsRange({ Run: "A", Route: "east 30'" });
const HEADERS = ["Item", "Unit", "Price", "Vendor", "Price by Acme", "Quoted by Acme", "Price by Bolt & Sons"];
const strap = (...cells: Cell[]) => takeoff(runs, { shoes, prices: [HEADERS, ["EMT 1/2 strap", "C", ...cells]] });
const priced = (...cells: Cell[]) => rowWhere(strap(...cells), { Item: "EMT 1/2 strap" });

test.each<[string, Cell[], number | string, RegExp]>([
  ["Price where Vendor says nothing", [30, "", 25, "", 20], 0.3, /^$/],
  ["the lowest where Price waits to be filled in", ["", "", 25, "", 20], 0.2, /^price by Bolt & Sons, the lowest of 2$/],
  ["the lowest where Vendor says so", [10, "lowest", 25, "2026-03-02", 27], 0.25, /^price by Acme, quoted 2026-03-02, the lowest of 2$/],
  ["a date that is a number in its cell", [10, "acme", 25, 46083, 20], 0.25, /^price by Acme, quoted 2026-03-02$/],
  ["the named vendor's", [10, "bolt & sons", 25, "", 28], 0.28, /^price by Bolt & Sons$/],
  ["a vendor who has none", [10, "Acme", "", "", 28], "no price", /^no price by Acme$/],
  ["nobody has one", ["", "lowest", "", "", ""], "no price", /^no vendor has a price$/],
])("%s", (_name, cells, price, note) => {
  const row = priced(...cells);
  expect(row["Unit price"]).toBe(price);
  expect(row["Note"]).toMatch(note);
}); // prettier-ignore

test("a vendor nobody knows is told with those there are, and the row counts as not there", () => {
  const told = records(strap(10, "Acne", 25, "", 20)).map(({ Note }) => Note);
  expect(told).toContain('prices row 2: Vendor must be lowest or Acme or Bolt & Sons; got "Acne".');
});

test("columns of a person's own whose names begin alike are none of a vendor", () => {
  const prices = [["Item", "Price", "Price source", "Prices"], ["EMT 1/2 strap", 0.3, "the counter", "x"]]; // prettier-ignore
  expect(rowWhere(takeoff(runs, { shoes, prices }), { Item: "EMT 1/2 strap" })["Unit price"]).toBe(0.3);
});
