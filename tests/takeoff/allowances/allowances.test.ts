/** Allowances: each a line of its own, never hidden in a quantity. Expected values by hand, the lines beside them. */
import { recap } from "../../../src/bid/recap";
import { takeoffInGroups } from "../../../src/bid/takeoffInGroups";
import { hoursTable } from "../../../src/bid/hoursTable";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { demoCounts } from "../../../workbench/demo/ferryBid";
import { demoLabor, demoPrices, demoRules, demoStock } from "../../../workbench/demo/ferryTables";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { records, rowWhere, runsRange, shoesRange, type Cell } from "../tables";

const shoes = shoesRange(["EMT", "1/2", 4]);
const allowancesOf = (...rows: Cell[][]): Cell[][] => [["Allowance", "Of", "Value", "Unit"], ...rows];
const demo = { prices: demoPrices, labor: demoLabor, rules: demoRules, stock: demoStock, counts: demoCounts };
const isTotal = (row: Record<string, unknown>) => String(row["Item"]).startsWith("Total");
const cents = (amount: unknown) => Math.round(Number(amount) * 100);

/** Two runs of 30 ft with three conductors: 5 straps each, 2 connectors each. */
const runs = runsRange({ Run: "A", Route: "east 30'", Quantity: 2, Conductors: "3 #12 THHN" });
const prices = [["Item", "Unit", "Price", "Package"], ["EMT 1/2 strap", "C", 25, 50], ["#12 THHN conductor", "M ft", 120, "500, 1000"], ["EMT 1/2 set-screw connector", "each", 0.5, ""]]; // prettier-ignore

test("percent, minimum, packages and lump sums stand below what they are for, each with how it comes about", () => {
  const allowances = allowancesOf(["Waste", "conductors", 10, "%"], ["Loss", "fittings", "10 %", "percent"], ["Stock up", "EMT 1/2 strap", 20, "minimum"], ["Small tools", "", 75, "lump sum"]); // prettier-ignore
  const plain = records(takeoff(runs, { shoes, prices: prices.map((row) => row.slice(0, 3)) }));
  const table = takeoff(runs, { shoes, prices, allowances });
  const line = (Item: string) => rowWhere(table, { Item });
  // The items themselves are as before.
  for (const row of plain.filter(({ Quantity }) => Quantity !== "")) expect(line(String(row["Item"]))).toEqual(row);
  // 3 · 2 · (30 + 2 · 3) = 216 ft; 10 % are 21.6 ft; 237.6 of a 500 ft reel leave 262.4. At 0.12 a foot.
  expect(line("#12 THHN conductor")["Quantity"]).toBeCloseTo(216, 9);
  expect(line("#12 THHN conductor: Waste")).toMatchObject({ Quantity: expect.closeTo(21.6, 9), Extension: 2.59 });
  expect(line("#12 THHN conductor: left over of packages")).toMatchObject({ Quantity: expect.closeTo(262.4, 9), Extension: 31.49, Note: "1 × 500 ft for 237.6" }); // prettier-ignore
  // 4 connectors: 10 % is 0.4, one piece. No packages are said.
  expect(line("EMT 1/2 set-screw connector: Loss")).toMatchObject({ Quantity: 1, Extension: 0.5, Note: "10 % of 4, rounded up" }); // prettier-ignore
  // 8 straps: up to 20, and on to the 50 of a box.
  const straps = Number(line("EMT 1/2 strap")["Quantity"]);
  expect(line("EMT 1/2 strap: Stock up")["Quantity"]).toBe(20 - straps);
  expect(line("EMT 1/2 strap: left over of packages")).toMatchObject({ Quantity: 30, Extension: 7.5 });
  expect(line("Small tools")).toMatchObject({ Quantity: 1, "Unit price": 75, Extension: 75 });
  const extensions = records(table).filter((row) => row["Quantity"] !== "").reduce((sum, row) => sum + cents(row["Extension"]), 0); // prettier-ignore
  expect(cents(records(table).find(isTotal)!["Extension"])).toBe(extensions);
});

test("a percent is of what the runs take, not of another allowance", () => {
  const allowances = allowancesOf(["Waste", "wire", 10, "%"], ["Spare", "wire", 10, "%"]);
  const table = takeoff(runs, { shoes, allowances });
  expect(rowWhere(table, { Item: "#12 THHN conductor: Spare" })["Quantity"]).toBeCloseTo(21.6, 9);
});

test("no labor goes with an allowance, and none of it is asked a price of its own", () => {
  const allowances = allowancesOf(["Waste", "all", 5, "%"]);
  const given = { ...demo, allowances };
  const [plain, allowed] = [records(takeoff(demoRuns, demo)), records(takeoff(demoRuns, given))];
  expect(allowed.length).toBeGreaterThan(plain.length + 20);
  expect(allowed.find(isTotal)!["Hours"]).toBe(plain.find(isTotal)!["Hours"]);
  expect(allowed.find(isTotal)!["Note"]).toBe(plain.find(isTotal)!["Note"]);
  const hours = (ranges: object) => hoursTable(demoRuns, ranges);
  expect(hours(given)).toEqual(hours(demo));
});

test("recap, groups and take-off say one sum", () => {
  const allowances = allowancesOf(["Waste", "wire", 10, "%"], ["Misc.", "all", 400, "lump sum"], ["Spare", "strap", 50, "minimum"]); // prettier-ignore
  const given = { ...demo, allowances };
  const total = cents(records(takeoff(demoRuns, given)).find(isTotal)!["Extension"]);
  expect(total).toBeGreaterThan(cents(records(takeoff(demoRuns, demo)).find(isTotal)!["Extension"]) + 40_000);
  const bid = [["Line", "Value", "Unit"], ["Material", null, "material"]]; // prettier-ignore
  expect(recap(demoRuns, bid, given).total).toEqual([total]);
  expect(recap(demoRuns, bid, { ...given, by: "Area" }).total.reduce((sum, part) => sum + part, 0)).toBe(total);
  const rows = records(takeoffInGroups(demoRuns, { ...given, by: "Area, Phase" }));
  expect(rows.filter(({ Item }) => Item === "Subtotal").reduce((sum, row) => sum + cents(row["Extension"]), 0)).toBe(total); // prettier-ignore
});

test.each([
  [["", "all", 5, "%"], "Allowance is empty."],
  [["Waste", "all", 0, "%"], "Value of Waste is 0 or empty; nothing is allowed for it."],
  [["Waste", "all", 5, "dollars"], 'Unit must be %, minimum or lump sum; got "dollars".'],
  [["Waste", "all", 201, "%"], "Value must be above 0 and at most 200; got 201."],
  [["Waste", "all", "some", "%"], 'Value must be a number; got "some".'],
])("a row that cannot be read is told and allows nothing: %j", (row, message) => {
  const notes = records(takeoff(runs, { shoes, allowances: allowancesOf(row as Cell[]) })).map(({ Note }) => Note);
  expect(notes).toContain(`allowances row 2: ${message}`);
});

test("an allowance of something the job has not is told", () => {
  const notes = records(takeoff(runs, { shoes, allowances: allowancesOf(["Waste", "conductrs", 5, "%"]) })).map(({ Note }) => Note); // prettier-ignore
  expect(notes).toContain('Waste: nothing that is bought goes by "conductrs"; nothing is allowed for it');
});

test("a class reaches every kind that is in it: flexible conduit by the foot, bodies, what hangs a rack", () => {
  const table = (of: string, unit = "%") =>
    records(
      takeoff(
        runsRange(
          { Run: "A", Route: "east 30', LB, north 30', flex 3' up 12 east 8" },
          { Run: "R", Route: "east 30'", Rack: "2 at 3 north" },
        ),
        { shoes, allowances: allowancesOf(["Waste", of, 50, unit]) },
      ),
    ).flatMap(({ Item }) => (String(Item).endsWith(": Waste") ? [String(Item).slice(0, -": Waste".length)] : []));
  expect(table("conduit")).toEqual(expect.arrayContaining(["FMC 1/2 conduit", "EMT 1/2 conduit, 10 ft stick"]));
  expect(table("fittings")).toEqual(expect.arrayContaining(["EMT 1/2 LB body", "EMT 1/2 to FMC coupling", "FMC 1/2 flex connector"])); // prettier-ignore
  expect(table("supports")).toEqual(expect.arrayContaining(["EMT 1/2 strap", "EMT 1/2 strut strap", "trapeze", "strut", "threaded rod"])); // prettier-ignore
  for (const one of table("fittings")) expect([...table("conduit"), ...table("supports")]).not.toContain(one);
});
