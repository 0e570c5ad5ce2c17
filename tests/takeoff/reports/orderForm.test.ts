import { orderOfBid } from "../../../src/bid/orderOfBid";
import { orderForm } from "../../../src/takeoff/reports/orderForm";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { demoCounts } from "../../../workbench/demo/ferryBid";
import { demoPrices, demoRules, demoStock } from "../../../workbench/demo/ferryTables";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { records, rowWhere, runsRange, shoesRange, type Cell } from "../tables";

const shoes = shoesRange(["EMT", "1/2", 4]);

test("needed, on hand, to buy and packages, by hand", () => {
  // 40 ft: 4 sticks of 10 ft, one of them on hand; 3 · (40 + 6) = 138 ft of wire and 13.8 ft of waste, 100 ft of it there.
  const runs = runsRange({ Run: "A", Route: "east 40'", Conductors: "3 #12 THHN" });
  const stock: Cell[][] = [["Raceway", "Size", "Length", "On hand"], ["EMT", "1/2", 120, null], ["EMT", "1/2", 120, 1]]; // prettier-ignore
  const prices: Cell[][] = [["Item", "Unit", "Price", "Package", "On hand"], ["#12 THHN conductor", "M ft", "", "500 or 1000", 100], ["EMT 1/2 strap", "C", 20, 25, 60], ["EMT 1/2 set-screw connector", "each", "", "", ""]]; // prettier-ignore
  const allowances: Cell[][] = [["Allowance", "Of", "Value", "Unit"], ["Waste", "wire", 10, "%"], ["Misc.", "", 50, "lump sum"]]; // prettier-ignore
  const table = orderForm(runs, { shoes, stock, prices, allowances });
  expect(rowWhere(table, { Item: "EMT 1/2 conduit, 10 ft stick" })).toMatchObject({ Needed: 4, "On hand": 1, "To buy": 3, Packages: "" }); // prettier-ignore
  expect(rowWhere(table, { Item: "#12 THHN conductor" })).toMatchObject({ "On hand": 100, Packages: "1 × 500 ft", Note: "Waste: 10 % of 138 ft" }); // prettier-ignore
  const wire = rowWhere(table, { Item: "#12 THHN conductor" });
  expect([wire["Needed"], wire["To buy"], wire["Left over"]].map((feet) => Number(Number(feet).toFixed(6)))).toEqual([151.8, 51.8, 448.2]); // prettier-ignore
  expect(rowWhere(table, { Item: "EMT 1/2 strap" })).toMatchObject({ "On hand": 60, "To buy": 0, Packages: "" });
  expect(rowWhere(table, { Item: "EMT 1/2 set-screw connector" })).toMatchObject({ Needed: 2, "On hand": 0, "To buy": 2, Packages: "", "Left over": "" }); // prettier-ignore
  expect(records(table).map(({ Item }) => Item)).not.toContain("Misc.");
  expect(table[0]!.join()).not.toMatch(/price|extension/i);
});

test("the demo: what is to be bought is what its take-off prices, item for item", () => {
  const given = { prices: demoPrices, rules: demoRules, stock: demoStock, counts: demoCounts };
  const bought = records(takeoff(demoRuns, given)).filter((row) => row["Unit price"] !== "" && Number(row["Quantity"]) > 0); // prettier-ignore
  const order = records(orderForm(demoRuns, given)).filter((row) => Number(row["To buy"]) > 0);
  expect(order.length).toBeGreaterThan(40);
  expect(order.map((row) => [row["Item"], row["To buy"]])).toEqual(bought.map((row) => [row["Item"], row["Quantity"]]));
});

test("what was not counted or read is told", () => {
  const runs = runsRange({ Run: "A", Route: "up" });
  const rows = records(orderForm(runs, { prices: [["Item", "Price", "Package"], ["Box", 3, "ten"]] })); // prettier-ignore
  expect(rows.map(({ Item }) => Item)).toEqual(["not counted: A", "not read"]);
  expect(rows[1]!["Note"]).toBe('prices row 2: Package must be at most 6 whole numbers from 1 to 100000, as 500, 1000; got "ten".'); // prettier-ignore
});

test("the words of a bid stand on top, with a line that cannot be read below; the order is the same", () => {
  const runs = runsRange({ Run: "A", Route: "east 30'" });
  const bid = [["Line", "Value", "Unit"], ["Job", "Pier 4", "words"], ["Issue", "B", "words"], ["Date", 46126, "words"], ["Tax", 8, "%"], ["Odd", 1, "dozen"]]; // prettier-ignore
  const [headers, ...rows] = orderOfBid(runs, bid);
  const [plainHeaders, ...plain] = orderForm(runs);
  expect(headers).toEqual(plainHeaders);
  expect(rows.slice(0, 3).map(([item]) => item)).toEqual(["Job: Pier 4", "Issue: B", "Date: 2026-04-14"]);
  expect(rows.slice(3, -1)).toEqual(plain);
  expect(rows.at(-1)!.at(-1)).toMatch(/^bid row 6: Unit must be words, /);
  expect(rows.every((row) => row.length === headers!.length)).toBe(true);
  expect(orderOfBid(runs, null)).toEqual(orderForm(runs));
});
