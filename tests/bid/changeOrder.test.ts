/** Change orders: a law (the difference of two recaps to the cent) and a small one worked out by hand. */
import fc from "fast-check";
import { changeOrder } from "../../src/bid/change/changeOrder";
import { recap } from "../../src/bid/recap";
import { standing } from "../../src/made/standing/standing";
import { demoBid, demoCosts, demoCounts, demoFactors } from "../../workbench/demo/ferryBid";
import { demoLabor, demoMade, demoPrices, demoRules, demoStock } from "../../workbench/demo/ferryTables";
import { demoRuns, issuedRuns } from "../../workbench/demo/ferryTerminal";
import { runsAndShuffled } from "../takeoff/randomRuns";
import { records, rowWhere, runsRange, shoesRange, type Cell } from "../takeoff/tables";

const demo = { prices: demoPrices, labor: demoLabor, rules: demoRules, stock: demoStock, costs: demoCosts, factors: demoFactors, counts: demoCounts }; // prettier-ignore
const cents = (amount: unknown) => Math.round(Number(amount) * 100);
type Row = ReturnType<typeof records>[number];
const sumOf = (rows: readonly Row[], column: string) => rows.reduce((sum, row) => sum + Number(row[column]), 0);
const isItem = ({ Change }: Row) => ["added", "deducted", "repriced"].includes(String(Change));

const totalOf = (runs: unknown, bid: unknown, ranges: object) => recap(runs, bid, ranges).total[0]!;

test("the demo since its issue: total, lines, items and hours are the difference of its recaps", () => {
  const rows = records(changeOrder(issuedRuns, demoRuns, demoBid, demo));
  const [was, now] = [recap(issuedRuns, demoBid, demo), recap(demoRuns, demoBid, demo)];
  expect(cents(rows.find(({ Change }) => Change === "total")!["Difference"])).toBe(now.total[0]! - was.total[0]!);
  for (const line of now.lines.filter(({ amount }) => amount !== null)) {
    const moved = line.amount![0]! - was.lines.find(({ name }) => name === line.name)!.amount![0]!;
    const row = rows.find(
      (each) => each["Item or line"] === line.name && ["price", "subtotal", "total"].includes(String(each["Change"])),
    );
    expect(cents(row?.["Difference"] ?? 0)).toBe(moved);
  }
  expect(cents(sumOf(rows.filter(isItem), "Amount"))).toBe(cents(rowWhere(changeOrder(issuedRuns, demoRuns, demoBid, demo), { "Item or line": "Material" })["Amount"])); // prettier-ignore
  // Only what moved: the pump room did not.
  expect(rows.map((row) => row["Item or line"])).not.toContain("RMC 3/4 strap");
  expect(rows[0]).toMatchObject({ Change: "Job", "Item or line": "Ferry terminal, raceways and wire" });
});

test("random states: the change is the difference of two recaps to the cent, and back again takes it off", () => {
  const bid: Cell[][] = [["Line", "Value", "Unit", "Of"], ["Material", null, "material", ""], ["Tax", 7.37, "%", "Material"], ["Labor", 51.03, "per hour", ""], ["Overhead", 11, "%", ""], ["Profit", 9, "margin %", ""]]; // prettier-ignore
  const lists = { prices: [["Item", "Unit", "Price"], ["EMT 1/2 conduit", "ft", 0.337], ["EMT 1/2 strap", "C", 31.77], ["Box", "each", 2.99]], labor: [["Operation", "Minutes"], ["bend", 3.7], ["strap", 4.1], ["conduit", 1.3]] }; // prettier-ignore
  fc.assert(
    fc.property(runsAndShuffled, runsAndShuffled, ([before], [after]) => {
      const total = (a: Cell[][], b: Cell[][]) => records(changeOrder(a, b, bid, lists)).find(({ Change }) => Change === "total")!; // prettier-ignore
      const difference = totalOf(after, bid, lists) - totalOf(before, bid, lists);
      expect(cents(total(before, after)["Difference"])).toBe(difference);
      expect(cents(total(after, before)["Difference"])).toBe(-difference);
      const rows = records(changeOrder(before, after, bid, lists));
      const hours = sumOf(rows.filter(({ Change }) => Change === "labor"), "Hours"); // prettier-ignore
      const labor = rows.find((row) => row["Item or line"] === "Labor")?.["Amount"] ?? 0;
      // Each recap is rounded to the cent: their difference is the hours' within one.
      expect(Math.abs(Number(labor) - hours * 51.03)).toBeLessThanOrEqual(0.0100001);
    }),
    { numRuns: 25 },
  );
});

test("by hand: a run 10 ft longer, one gone, a device more", () => {
  const shoes = shoesRange(["EMT", "1/2", 4]);
  const before = runsRange({ Run: "A", Route: "east 10'" }, { Run: "B", Route: "east 10'" });
  const after = runsRange({ Run: "A", Route: "east 20'" });
  const count = (quantity: number): Cell[][] => [["Item", "Quantity"], ["Exit sign", quantity]]; // prettier-ignore
  const prices: Cell[][] = [["Item", "Price"], ["EMT 1/2 conduit, 10 ft stick", 6], ["EMT 1/2 set-screw connector", 0.5], ["EMT 1/2 set-screw coupling", 0.4], ["EMT 1/2 strap", 0.25], ["Exit sign", 80]]; // prettier-ignore
  const labor: Cell[][] = [["Operation", "Minutes"], ["connector", 6], ["counted item", 30]]; // prettier-ignore
  const bid: Cell[][] = [["Line", "Value", "Unit"], ["Material", null, "material"], ["Labor", 60, "per hour"], ["Overhead", 10, "%"]]; // prettier-ignore
  const table = changeOrder(before, after, bid, { shoes, prices, labor, countsBefore: count(1), counts: count(3) });
  const row = (name: string) => rowWhere(table.filter(([change]) => change !== "labor"), { "Item or line": name }); // prettier-ignore
  // Two sticks before and after; two connectors fewer, one coupling more, one strap fewer (2 + 2, then 3), two signs more.
  expect(row("EMT 1/2 set-screw connector")).toMatchObject({ Change: "deducted", Difference: -2, Amount: -1 });
  expect(row("EMT 1/2 set-screw coupling")).toMatchObject({ Change: "added", Difference: 1, Amount: 0.4 });
  expect(row("EMT 1/2 strap")).toMatchObject({ Change: "deducted", Difference: -1, Amount: -0.25 });
  expect(row("Exit sign")).toMatchObject({ Change: "added", Before: 1, After: 3, Amount: 160 });
  expect(table.flat()).not.toContain("EMT 1/2 conduit, 10 ft stick");
  // -1 + 0.40 - 0.25 + 160 = 159.15. Hours -0.2 + 1 = 0.8, 48.00. Overhead 20.715, as the two recaps round it.
  expect(row("Material")["Difference"]).toBe(159.15);
  expect(row("Labor")["Difference"]).toBe(48);
  expect(Math.abs(Number(row("Overhead")["Difference"]) - 20.715)).toBeLessThan(0.0051);
});

test("what is made and left over is told with what can be done", () => {
  const shoes = shoesRange(["EMT", "1/2", 4]);
  const before = runsRange({ Run: "A", Route: "up 3', east 4'", Quantity: 2 });
  const after = runsRange({ Run: "A", Route: "up 3', east 5'", Quantity: 2 });
  const made = [["Piece", "Good"], ["A/1", 2]]; // prettier-ignore
  const told = standing(after, made, { issued: before, shoes });
  const rows = records(changeOrder(before, after, [["Line", "Value", "Unit"]], { shoes, standing: told }));
  const over = rows.filter(({ Change }) => Change === "made, left over");
  expect(over).toHaveLength(1);
  expect(over[0]).toMatchObject({ "Item or line": expect.stringContaining("A"), Before: 2, Note: expect.stringMatching(/^made and not returnable; cut off what is straight/) }); // prettier-ignore
  expect(records(changeOrder(issuedRuns, demoRuns, demoBid, { ...demo, standing: standing(demoRuns, demoMade, { issued: issuedRuns, rules: demoRules }) })).filter(({ Change }) => String(Change).startsWith("made")).length).toBeGreaterThan(0); // prettier-ignore
});
