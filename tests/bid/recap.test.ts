import { recap, recapTable } from "../../src/bid/recap";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { demoBid, demoCosts } from "../../workbench/demo/ferryBid";
import { demoLabor, demoPrices, demoRules, demoStock } from "../../workbench/demo/ferryTables";
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { records, rowWhere, runsRange, shoesRange, type Cell } from "../takeoff/tables";

const demo = { prices: demoPrices, labor: demoLabor, rules: demoRules, stock: demoStock };
const withCosts = { ...demo, costs: demoCosts };
const shoes = shoesRange(["EMT", "1/2", 4]);
const bidOf = (...rows: Cell[][]): Cell[][] => [["Line", "Value", "Unit", "Of"], ...rows];
const cents = (amount: unknown): number => Math.round(Number(amount) * 100);

describe("conservation, the demo's bid", () => {
  const table = recapTable(demoRuns, demoBid, withCosts);
  const total = rowWhere(takeoff(demoRuns, demo), { Item: "Total, without what the note names" });

  test("material is the take-off's total to the cent, labor its hours at the rate", () => {
    expect(rowWhere(table, { Line: "Material" })["Amount"]).toBe(total["Extension"]);
    expect(cents(rowWhere(table, { Line: "Labor" })["Amount"])).toBe(
      Math.round(Number(total["Hours"]) * 0.9 * 49.01 * 100),
    );
  });

  test("minutes for sticks count as they do in the take-off", () => {
    const labor = [...demoLabor, ["stick", 10]];
    const hours = rowWhere(takeoff(demoRuns, { ...demo, labor }), { Item: "Total, without what the note names" })[
      "Hours"
    ];
    const bid = bidOf(["Hours", 1, "per hour"]);
    expect(cents(recap(demoRuns, bid, { ...demo, labor }).total[0]! / 100)).toBe(cents(hours));
  });

  test("the lines that are no sums add up to the total", () => {
    const lines = records(table).filter(({ Amount }) => typeof Amount === "number");
    const sums = ["Prime cost", "Break-even", "Total"];
    const added = lines.filter(({ Line }) => !sums.includes(String(Line))).reduce((sum, row) => sum + cents(row["Amount"]), 0); // prettier-ignore
    expect(added).toBe(cents(rowWhere(table, { Line: "Total" })["Amount"]));
    expect(lines.length).toBeGreaterThan(8);
  });

  test.each(["Area", "Crew", "Area, Date", "Job"])("by %s: every line's groups add up to the ungrouped line", (by) => {
    const [headers = [], ...rows] = recapTable(demoRuns, demoBid, { ...withCosts, by });
    expect(headers.length).toBeGreaterThan(3);
    const plain = table.slice(1);
    rows.forEach(([line, basis, amount, ...groups], at) => {
      expect([line, basis, amount]).toEqual(plain[at]!.slice(0, 3));
      if (typeof amount === "number") expect(groups.reduce<number>((sum, cell) => sum + cents(cell), 0)).toBe(cents(amount)); // prettier-ignore
    });
  });

  test("what is in one area alone is that area's: material of runs that share no item", () => {
    const only = demoRuns.filter((row, at) => at === 0 || row[2] === "Pump room");
    const alone = recap(only, demoBid, demo);
    const together = recap(demoRuns, demoBid, { ...demo, by: "Area" });
    const place = together.groups.indexOf("Pump room");
    const labor = together.lines.find(({ name }) => name === "Labor")!.amount![place]!;
    expect(Math.abs(labor - alone.lines.find(({ name }) => name === "Labor")!.amount![0]!)).toBeLessThanOrEqual(1);
  });
});

test("what was not priced, counted or read is said below the total, which says so", () => {
  const runs = [...runsRange({ Run: "A", Route: "up 40, east 60" }), ...runsRange({ Run: "X", Route: "up" }).slice(1)];
  const prices = [["Item", "Price"], ["EMT 1/2 strap", 0.5]]; // prettier-ignore
  const bid = bidOf(["Material", null, "material"], ["Labor", 60, "per hour"], ["Fee", "?", "%"]);
  const rows = records(recapTable(runs, bid, { shoes, prices, costs: [["Job cost", "Price"], ["Permit", 5], ["Lift", 0]] })); // prettier-ignore
  expect(rows.slice(0, 3)).toEqual([
    { Line: "Material", Basis: "1 priced line of the take-off", Amount: 1 },
    { Line: "Labor", Basis: "0 h at 60.00", Amount: 0 },
    { Line: "Total", Basis: "without what stands below", Amount: 1 },
  ]);
  expect(rows.slice(3).map(({ Line, Basis }) => `${Line}: ${Basis}`)).toEqual([
    "note: without a price: EMT 1/2 conduit, 10 ft stick, EMT 1/2 set-screw connector",
    "note: without minutes: conduit, connector, strap, stub-up",
    expect.stringMatching(/^note: not counted: X: /),
    'note: not read: bid row 4: Value must be a number; got "?".',
    "note: not read: costs row 3: Price of Lift is 0 or empty; it is not counted.",
    "note: left out: job costs of 5.00; no line of the bid has the Unit costs",
  ]);
});

test("a line that is not filled in adds nothing and is named; none is nothing at all", () => {
  const bid = bidOf(["Fee", 100, "lump sum"], ["Bond", null, "%"], ["Tax", 0, "%"], ["Gift", "none", "%"]);
  const rows = records(recapTable(runsRange({ Run: "A", Route: "east 5'" }), bid, { shoes }));
  expect(rows.map(({ Line, Amount }) => [Line, Amount]).slice(0, 5)).toEqual([["Fee", 100], ["Bond", ""], ["Tax", ""], ["Gift", 0], ["Total", 100]]); // prettier-ignore
  expect(rows.map(({ Basis }) => Basis)).toEqual(expect.arrayContaining(["not filled in: Bond", "not filled in: Tax"]));
});

test.each([
  [["Fee", 5, "percents"], 'Unit must be words, material, costs, per hour, %, margin %, lump sum, subtotal or total; got "percents".'], // prettier-ignore
  [["Fee", 100, "margin %"], "Value must be at least 0 and below 100; got 100."],
  [["Fee", 5, "%", "Nothing"], 'Of must name lines above it, or say above; got "Nothing".'],
  [["", 5, "%"], "Line is empty."],
  [["Material", 5, "%"], '"Material" stands twice; keep one row for each line.'],
])("a row of Bid that cannot be read is told: %j", (row, message) => {
  const bid = bidOf(["Material", null, "material"], row as Cell[]);
  const rows = records(recapTable(runsRange({ Run: "A", Route: "east 5'" }), bid, { shoes }));
  expect(rows.map(({ Basis }) => Basis)).toContain(`not read: bid row 3: ${message}`);
});

test("a percent that a cell of percent format turned into a fraction is doubted; text with its sign is read", () => {
  const bid = bidOf(["Fee", 100, "lump sum"], ["Tax", 0.0825, "%"], ["Profit", "10 %", "margin %"]);
  const rows = records(recapTable(runsRange({ Run: "A", Route: "east 5'" }), bid, { shoes }));
  expect(rows.map(({ Basis }) => Basis)).toContain(
    "Tax: 0.0825 % is less than one half of one percent: was 8.25 % meant?",
  );
  expect(rowWhere(recapTable([["Run", "Raceway", "Size", "Route"]], bid), { Line: "Profit" })["Amount"]).toBe(11.12);
});

test("sticks are bought for the whole job and shared by feet, a box of two areas is the first one's", () => {
  const runs = runsRange(
    { Run: "A", Area: "North", Route: "east 2'", To: "Tee" },
    { Run: "B", Area: "South", Route: "east 6'", From: "Tee" },
  );
  const prices = [["Item", "Price"], ["EMT 1/2 conduit, 10 ft stick", 8], ["Box", 3]]; // prettier-ignore
  const { groups, lines } = recap(runs, bidOf(["Material", null, "material"]), { shoes, prices, by: "Area" });
  // One stick of 8.00 for 2 ft and 6 ft: 2.00 and 6.00; the box 3.00 in North.
  expect([groups, lines[0]!.amount]).toEqual([
    ["North", "South"],
    [500, 600],
  ]);
});
