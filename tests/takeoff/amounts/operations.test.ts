/** Cuts, threads, reams, terminations and supports as work of their own: counted by hand, the lines beside them. */
import { hoursTable } from "../../../src/bid/hoursTable";
import { recap } from "../../../src/bid/recap";
import { leftToMake } from "../../../src/made/counts/leftToMake";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { missingTable } from "../../../src/takeoff/reports/missing";
import { orderForm } from "../../../src/takeoff/reports/orderForm";
import { demoLabor, demoPrices, demoRules, demoStock } from "../../../workbench/demo/ferryTables";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { quantityOf, records, rowWhere, runsRange, type Cell } from "../tables";

const rulesOf = (...rows: Cell[][]): Cell[][] => [["Rule", "Value"], ...rows];
const ALL = rulesOf(["Work counted besides", "all"]);

/**
 * E, twice: 25 ft of EMT are two whole sticks and 5 ft of a third: one cut, one sawn end. Two ends at boxes; supports within
 * 3 ft of each box and 10 ft apart (358.30): 3. T: 10 ft 0 of EMT are a whole stick. S: a stub of 4 ft, its far end open.
 */
const runs = runsRange(
  { Run: "E", Route: "east 25'", Quantity: 2, From: "JB-1", To: "JB-2", Conductors: "3 #12 THHN" },
  { Run: "T", Route: "east 10'", From: "JB-2", To: "JB-3" },
  { Run: "S", Route: "east 4'", From: "JB-3", To: "open" },
);

test("nothing of it is counted until the rule names it", () => {
  const items = records(takeoff(runs)).map(({ Item }) => String(Item));
  expect(items.filter((item) => /cut|thread|ream|termination|support/.test(item))).toEqual([]);
});

test("counted by hand", () => {
  const table = takeoff(runs, { rules: ALL });
  expect(quantityOf(table, "EMT 1/2 cut")).toBe(2 * 1 + 0 + 1);
  expect(quantityOf(table, "EMT 1/2 ream")).toBe(2 * 1 + 0 + 1);
  expect(quantityOf(table, "EMT 1/2 termination")).toBe(2 * 2 + 2 + 1);
  expect(quantityOf(table, "EMT 1/2 support")).toBe(quantityOf(table, "EMT 1/2 strap"));
  expect(quantityOf(table, "#12 THHN conductor termination")).toBe(2 * 3 * 2);
  expect(records(table).some(({ Item }) => String(Item).includes("thread"))).toBe(false);
});

test.each([
  ["RMC", "", 2],
  ["RMC", "compression", 0],
  ["IMC", "", 2],
  ["Aluminum RMC", "", 2],
  ["EMT", "", 0],
  ["PVC 40", "", 0],
])("%s with %j fittings: threads of two cut pieces", (Raceway, Fittings, threads) => {
  const table = takeoff(runsRange({ Run: "A", Route: "east 4'", Quantity: 2, Raceway, Size: "1", Fittings }), { rules: ALL }); // prettier-ignore
  const found = records(table).find(({ Item }) => Item === `${Raceway} 1 thread`);
  expect(found?.["Quantity"] ?? 0).toBe(threads);
  expect(quantityOf(table, `${Raceway} 1 cut`)).toBe(2);
  expect(quantityOf(table, `${Raceway} 1 ream`)).toBe(2);
});

test("two sawn ends to a piece where a rule says so; the cuts stay", () => {
  const table = takeoff(runs, { rules: [...ALL, ["Sawn ends of a cut piece", 2]] });
  expect([quantityOf(table, "EMT 1/2 ream"), quantityOf(table, "EMT 1/2 cut")]).toEqual([6, 3]);
});

test("a flexible piece is cut nowhere and ends at its box; its terminations are of its own size", () => {
  const table = takeoff(runsRange({ Run: "W", Route: "east 4', flex 3' up 12 east 8", From: "JB-1", To: "Motor 1" }), { rules: ALL }); // prettier-ignore
  expect(quantityOf(table, "FMC 1/2 termination")).toBe(quantityOf(table, "FMC 1/2 flex connector"));
  expect(quantityOf(table, "EMT 1/2 termination")).toBe(1);
});

test("hours, what is missing and the recap go by the same counts", () => {
  const labor = [["Operation", "Minutes"], ["cut", 3], ["ream", 2], ["termination", 6], ["support", 5], ["wire termination", 4]]; // prettier-ignore
  const given = { rules: ALL, labor };
  const hours = (Work: string) => Number(rowWhere(hoursTable(runs, given), { Work })["Hours"]);
  // 3 cuts at 3 min, 3 reams at 2, 7 terminations at 6, 12 ends of wires at 4.
  expect(hours("EMT 1/2 cut")).toBeCloseTo(9 / 60, 9);
  expect(hours("EMT 1/2 ream")).toBeCloseTo(6 / 60, 9);
  expect(hours("EMT 1/2 termination")).toBeCloseTo(42 / 60, 9);
  expect(hours("#12 THHN conductor termination")).toBeCloseTo(48 / 60, 9);
  const supports = quantityOf(takeoff(runs, given), "EMT 1/2 support");
  const bid = [["Line", "Value", "Unit"], ["Labor", 60, "per hour"]]; // prettier-ignore
  expect(recap(runs, bid, given).total).toEqual([(9 + 6 + 42 + 48 + supports * 5) * 100]);
  const asked = (labor: Cell[][]) => records(missingTable(runs, { rules: ALL, labor })).flatMap(({ List, Name, Finding }) => List === "Labor" && Finding === "no minutes yet" ? [Name] : []); // prettier-ignore
  expect(asked(labor)).not.toContain("EMT 1/2 cut");
  expect(asked(labor.filter(([name]) => name !== "cut"))).toContain("EMT 1/2 cut");
  expect(records(missingTable(runs, { labor })).map(({ Name }) => Name)).not.toContain("EMT 1/2 cut");
});

test("none of it is bought: order, prices and what is missing of them stay as they are", () => {
  expect(orderForm(runs, { rules: ALL })).toEqual(orderForm(runs));
  const given = { prices: demoPrices, labor: demoLabor, stock: demoStock };
  const total = (rules: readonly (readonly Cell[])[]) => records(takeoff(demoRuns, { ...given, rules })).find(({ Item }) => String(Item).startsWith("Total"))!["Extension"]; // prettier-ignore
  expect(total([...demoRules, ["Work counted besides", "all", "", ""]])).toBe(total(demoRules));
});

test("what is made has been cut and reamed; its ends and supports are still work", () => {
  const left = leftToMake([["Piece", "Good"], ["E/3", 1], ["S/1", 1]]); // prettier-ignore
  const table = takeoff(runs, { rules: ALL, left });
  expect(quantityOf(table, "EMT 1/2 cut")).toBe(1);
  expect(quantityOf(table, "EMT 1/2 ream")).toBe(1);
  expect(quantityOf(table, "EMT 1/2 termination")).toBe(7);
});

test("a word the rule does not know is told, and nothing more is counted", () => {
  const table = records(takeoff(runs, { rules: rulesOf(["Work counted besides", "cuts, bends"]) }));
  expect(table.map(({ Note }) => Note)).toContain('rules row 2: "Work counted besides" must be none, all or some of cuts, threads, reams, terminations, wire terminations, supports; got "bends".'); // prettier-ignore
  expect(table.some(({ Item }) => Item === "EMT 1/2 cut")).toBe(false);
});
