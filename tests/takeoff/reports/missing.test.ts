import { missingTable } from "../../../src/takeoff/reports/missing";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { demoLabor, demoPrices, demoRules, demoStock } from "../../../workbench/demo/ferryTables";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { records, rowWhere, runsRange, shoesRange } from "../tables";

const shoes = shoesRange(["EMT", "1/2", 4]);
const runs = runsRange({ Run: "A", Route: "up 40, east 60", Quantity: 3 });
const PRICES = ["Item", "Unit", "Price"];
const LABOR = ["Operation", "Minutes"];

test("without lists everything the job buys and does is named, with what it is counted in", () => {
  // 98.28 in. three times: three sticks; two connectors and two straps each; one bend each; no coupling.
  const rows = records(missingTable(runs, { shoes }));
  expect(rows.map(({ List, Name, Unit, Quantity }) => [List, Name, Unit, Quantity])).toEqual([
    ["Prices", "EMT 1/2 conduit, 10 ft stick", "each", 3],
    ["Prices", "EMT 1/2 set-screw connector", "each", 6],
    ["Prices", "EMT 1/2 strap", "each", 6],
    ["Labor", "EMT 1/2 conduit", "ft", expect.closeTo((3 * (100 - 1.716815)) / 12, 5)],
    ["Labor", "EMT 1/2 connector", "each", 6],
    ["Labor", "EMT 1/2 strap", "each", 6],
    ["Labor", "EMT 1/2 stub-up", "each", 3],
  ]);
  expect(new Set(rows.map(({ Finding }) => Finding))).toEqual(new Set(["no price yet", "no minutes yet"]));
});

test("rows written under the names it gives are found: nothing is missing then", () => {
  const rows = records(missingTable(runs, { shoes }));
  const prices = [PRICES, ...rows.filter(({ List }) => List === "Prices").map(({ Name, Unit }) => [Name!, Unit!, 2])];
  const labor = [LABOR, ...rows.filter(({ List }) => List === "Labor").map(({ Name }) => [Name!, 5])];
  expect(records(missingTable(runs, { shoes, prices, labor })).map(({ Name }) => Name)).toEqual(["nothing is missing"]);
  expect(rowWhere(takeoff(runs, { shoes, prices, labor }), { Item: "Total" })).toMatchObject({ Extension: 30 });
});

test.each([["empty", null], ["0, as some versions of Excel hand an empty cell over", 0]])( // prettier-ignore
  "a row whose price is %s waits, and is no second row",
  (_what, blank) => {
    const prices = [PRICES, ["EMT 1/2 strap", "each", blank], ["EMT 1/2 conduit", "ft", 1]];
    const rows = records(missingTable(runs, { shoes, prices, labor: [LABOR, ["strap", blank]] }));
    expect(rows.find(({ Name }) => Name === "EMT 1/2 strap")!["Finding"]).toBe("no price yet: row 2 waits for it");
    expect(rows.some(({ Name }) => Name === "EMT 1/2 conduit, 10 ft stick")).toBe(false);
    expect(rowWhere(takeoff(runs, { shoes, prices }), { Item: "EMT 1/2 strap" })["Unit price"]).toBe("no price");
  },
);

test("what costs nothing and what takes no time are not missing", () => {
  const prices = [PRICES, ["EMT 1/2 strap", "each", "by others"]];
  const rows = records(missingTable(runs, { shoes, prices, labor: [LABOR, ["strap", "none"]] }));
  expect(rows.filter(({ Name }) => String(Name).endsWith("strap"))).toEqual([]);
});

test("rows that match nothing are told, likely slips first, and what is wanted names the row that may be meant", () => {
  const prices = [PRICES, ["Chandelier", "each", 900], ["EMT 1/2 srtap", "C", 21]];
  const rows = records(missingTable(runs, { shoes, prices, labor: [LABOR, ["conector", 4], ["RMC bend", 3]] }));
  expect(rowWhere(missingTable(runs, { shoes, prices }), { Name: "EMT 1/2 strap", List: "Prices" })["Near"]).toBe(
    "EMT 1/2 srtap",
  );
  const told = rows.filter(({ Finding }) => String(Finding).includes("matches nothing"));
  expect(told.map(({ List, Name, Finding }) => [List, Name, Finding])).toEqual([
    ["Prices", "EMT 1/2 srtap", "row 3 matches nothing: did you mean EMT 1/2 strap?"],
    ["Prices", "Chandelier", "row 2 matches nothing in this job"],
    ["Labor", "conector", "row 2 matches nothing: did you mean connector?"],
    ["Labor", "RMC bend", "row 3 matches nothing in this job"],
  ]);
});

test("a price by another unit is told with both; rows and runs that cannot be read are told", () => {
  const prices = [PRICES, ["EMT 1/2 strap", "ft", 1], ["Box", "bundle", 1]];
  const spoilt = [...runs, ...runsRange({ Run: "X", Route: "up and away" }).slice(1)];
  const rows = records(missingTable(spoilt, { shoes, prices }));
  expect(rows.find(({ Name }) => Name === "EMT 1/2 strap")!["Finding"]).toBe(
    "no price for EMT 1/2 strap per each: prices has it per ft: row 2 waits for it",
  );
  const told = rows.filter(({ Name }) => Name === "not read").map(({ Finding }) => Finding);
  expect(told).toEqual([
    expect.stringMatching(/^not counted: X: /),
    'prices row 3: Unit must be each, ft, C, M, C ft or M ft; got "bundle".',
  ]);
});

test("a firm's long list is cut short, the rest counted", () => {
  const list = Array.from({ length: 130 }, (_, at) => [`Lamp ${at}`, "each", 1]);
  const rows = records(missingTable(runs, { shoes, prices: [PRICES, ...list] })).filter(({ Quantity }) => !Quantity);
  expect(rows.at(-1)).toMatchObject({ List: "Prices", Name: "and 30 more rows", Finding: "match nothing in this job" });
});

test("the demo's lists: whatever the take-off calls unpriced or without minutes is listed, and nothing else", () => {
  const given = { prices: demoPrices, labor: demoLabor, rules: demoRules, stock: demoStock };
  const counted = records(takeoff(demoRuns, given));
  const unpriced = counted.filter((row) => row["Unit price"] === "no price").map(({ Item }) => Item);
  const missing = records(missingTable(demoRuns, given));
  expect(missing.filter(({ List, Unit }) => List === "Prices" && Unit).map(({ Name }) => Name)).toEqual(unpriced);
  const named = counted.find(({ Item }) => String(Item).startsWith("without minutes"))?.["Note"] ?? "";
  const operations = missing.filter(({ List, Unit }) => List === "Labor" && Unit).map(({ Name }) => String(Name));
  expect(operations.length > 0).toBe(named !== "");
  for (const word of String(named).split(", ").filter(Boolean)) expect(operations.join("\n")).toContain(word);
});

test("work of several items that go by one name is asked for once, with what they take together", () => {
  // Bushings, plain and insulating, are one work by raceway and size.
  const items = records(takeoff(demoRuns, { rules: demoRules })).filter(({ Item }) => /^IMC 1 (insulating )?bushing$/.test(String(Item))); // prettier-ignore
  const asked = records(missingTable(demoRuns, { rules: demoRules })).filter(({ List, Name }) => List === "Labor" && Name === "IMC 1 bushing"); // prettier-ignore
  expect(items).toHaveLength(2);
  expect(asked.map(({ Quantity }) => Quantity)).toEqual([items.reduce((sum, row) => sum + Number(row["Quantity"]), 0)]);
});
