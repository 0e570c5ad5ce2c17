/** Groups of one order: they add up to the take-off without groups, to the cent, and agree with the recap by the same groups. */
import fc from "fast-check";
import { recap } from "../../src/bid/recap";
import { groupedParts, takeoffInGroups } from "../../src/bid/takeoffInGroups";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { demoCounts } from "../../workbench/demo/ferryBid";
import { demoLabor, demoPrices, demoRules, demoStock } from "../../workbench/demo/ferryTables";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { runsAndShuffled } from "../takeoff/randomRuns";
import { records, rowWhere, runsRange, shoesRange } from "../takeoff/tables";

const shoes = shoesRange(["EMT", "1/2", 4]);
const demo = { prices: demoPrices, labor: demoLabor, rules: demoRules, stock: demoStock, counts: demoCounts };
const cents = (amount: unknown): number => Math.round(Number(amount) * 100);
/** Sums of feet, pieces and hours are held to this. */
const CLOSE = 6;
type Row = ReturnType<typeof records>[number];
const isTotal = ({ Item }: Row) => String(Item).startsWith("Total");
const isLine = ({ Quantity }: Row) => Quantity !== "";
const sum = (rows: readonly Row[], column: string) => rows.reduce((all, row) => all + Number(row[column]), 0);
const sumCents = (rows: readonly Row[]) => rows.reduce((all, row) => all + cents(row["Extension"]), 0);

describe.each(["Area", "Area, Crew", "Crew, Area", "Raceway, Size", "Area, Run"])("the demo by %s", (by) => {
  const rows = records(takeoffInGroups(demoRuns, { ...demo, by }));
  const plain = records(takeoff(demoRuns, demo));
  const columns = by.split(", ");
  const groupOf = (row: Row) => columns.map((column) => row[column]).join("|");

  test("the total is the one without groups, and its lines and subtotals add up to it to the cent", () => {
    const total = plain.find(isTotal)!;
    expect(rows.find(isTotal)).toMatchObject({
      Item: total["Item"],
      Extension: total["Extension"],
      Note: total["Note"],
    });
    expect(sumCents(rows.filter(isLine))).toBe(cents(total["Extension"]));
    const innermost = rows.filter(({ Item }, at) => Item === "Subtotal" && isLine(rows[at - 1]!));
    expect(innermost.length).toBe(new Set(rows.filter(isLine).map(groupOf)).size);
    expect(sumCents(innermost)).toBe(cents(total["Extension"]));
    expect(sum(innermost, "Hours")).toBeCloseTo(Number(total["Hours"]), CLOSE);
  });

  test("each subtotal is the sum of its own lines", () => {
    const [first] = columns as [string, string?];
    for (const subtotal of rows.filter(({ Item }) => String(Item).startsWith("Subtotal"))) {
      const isOuter = subtotal["Item"] === `Subtotal, whole ${first.toLowerCase()}`;
      expect(isOuter || subtotal["Item"] === "Subtotal").toBe(true);
      const own = rows.filter((row) => isLine(row) && row[first] === subtotal[first] && (isOuter || groupOf(row) === groupOf(subtotal))); // prettier-ignore
      expect(own.length).toBeGreaterThan(0);
      expect(sumCents(own)).toBe(cents(subtotal["Extension"]));
    }
  });

  test("the parts of every line add up to it", () => {
    for (const line of plain.filter((row) => isLine(row) && row["Quantity"] !== 0)) {
      const parts = rows.filter(({ Item }) => Item === line["Item"]);
      expect(sum(parts, "Quantity")).toBeCloseTo(Number(line["Quantity"]), CLOSE);
      expect(sumCents(parts)).toBe(cents(line["Extension"]));
      for (const part of parts) expect(part["Quantity"]).toBeGreaterThan(0);
    }
  });
});

test("subtotals by area are the material of the recap by area", () => {
  const rows = records(takeoffInGroups(demoRuns, { ...demo, by: "Area" })).filter(({ Item }) => Item === "Subtotal");
  const { groups, lines } = recap(demoRuns, [["Line", "Value", "Unit"], ["Material", null, "material"]], { ...demo, by: "Area" }); // prettier-ignore
  expect(Object.fromEntries(rows.map((row) => [row["Area"], cents(row["Extension"])]))).toEqual(
    Object.fromEntries(groups.map((group, place) => [group, lines[0]!.amount![place]])),
  );
});

test("a stick of two areas is shared by its feet, a coupling by its joints; what an area has none of stays away", () => {
  // 2 ft and 6 ft come from one stick of 8.00: 2.00 and 6.00. South alone has a strap more.
  const runs = runsRange({ Run: "A", Area: "North", Route: "east 2'" }, { Run: "B", Area: "South", Route: "east 6'" });
  const prices = [["Item", "Price"], ["EMT 1/2 conduit, 10 ft stick", 8]]; // prettier-ignore
  const table = takeoffInGroups(runs, { shoes, prices, by: "Area" });
  const stick = { Item: "EMT 1/2 conduit, 10 ft stick" };
  expect(rowWhere(table, { ...stick, Area: "North" })).toMatchObject({ Quantity: 0.25, Extension: 2 });
  expect(rowWhere(table, { ...stick, Area: "South" })).toMatchObject({ Quantity: 0.75, Extension: 6 });
  expect(rowWhere(table, { Area: "North", Item: "Subtotal" })["Extension"]).toBe(2);
});

test("couplings that come with the sticks go where the joints are, however many feet others have", () => {
  const rmc = { Raceway: "RMC", Size: "3/4" };
  const runs = runsRange(
    { Run: "A", Area: "North", ...rmc, Route: "east 9'", Quantity: 6 },
    { Run: "B", Area: "South", ...rmc, Route: "east 25'" },
  );
  const rows = records(takeoffInGroups(runs, { by: "Area" })).filter(({ Item }) => String(Item).includes("coupling"));
  // 25 ft are three pieces with two joints; nine sticks or so bring nine couplings.
  expect(rows.map(({ Area, Item, Quantity }) => [Area, Item, Quantity])).toEqual([
    ["South", "RMC 3/4 threaded coupling, with the sticks", 2],
  ]);
});

test("random jobs: the cents of every group add up, however the job is told apart", () => {
  const prices = [["Item", "Unit", "Price"], ["EMT 1/2 conduit", "ft", 0.337], ["EMT 1/2 conduit, 10 ft stick", "each", 3.333], ["EMT 1/2 strap", "C", 31.77], ["EMT 1/2 set-screw connector", "each", 0.415]]; // prettier-ignore
  fc.assert(
    fc.property(runsAndShuffled, fc.constantFrom("Area", "Run", "Raceway, Area", "Size"), ([runs], by) => {
      const rows = records(takeoffInGroups(runs, { prices, by }));
      const total = records(takeoff(runs, { prices })).find(isTotal)!;
      expect(rows.find(isTotal)!["Extension"]).toBe(total["Extension"]);
      expect(sumCents(rows.filter(isLine))).toBe(cents(total["Extension"]));
    }),
    { numRuns: 40 },
  );
});

test("the headings of the pane come to the subtotals of the sheet", () => {
  const given = { ...demo, by: "Area, Phase" };
  const subtotals = records(takeoffInGroups(demoRuns, given)).filter(({ Item }) => Item === "Subtotal");
  const { parts, table } = groupedParts(demoRuns, given);
  expect(parts.map(({ heading, extension }) => [heading, cents(extension)])).toEqual(
    subtotals.map((row) => [`${row["Area"]}, ${row["Phase"]}`, cents(row["Extension"])]),
  );
  expect(parts.reduce((count, part) => count + part.count, 0)).toBe(records(table).filter(isLine).length);
});

test("no groups: the plain take-off; by that names no column is refused", () => {
  expect(takeoffInGroups(demoRuns, demo)).toEqual(takeoff(demoRuns, demo));
  expect(() => takeoffInGroups(demoRuns, { by: "Color" })).toThrow("by must name columns");
});
