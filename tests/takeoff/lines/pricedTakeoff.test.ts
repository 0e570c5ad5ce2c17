import { bendCounts } from "../../../src/takeoff/reports/bendCounts";
import { takeoff } from "../../../src/takeoff/lines/takeoff";
import { records, rowWhere, runsRange, shoesRange } from "../tables";

const shoes = shoesRange(["EMT", "1/2", 4]);
const runs = runsRange(
  { Run: "A", Route: "up 40, east 60", Quantity: 2 },
  { Run: "B", Route: "east 60, offset 6 up at 30, east 60" },
);
const prices = [
  ["Item", "Unit", "Price"],
  ["EMT 1/2 conduit", "C ft", 62],
  ["EMT 1/2 set-screw connector", "C", 41],
  ["EMT 1/2 set-screw coupling", "each", 0.47],
  ["EMT 1/2 strap", "each", 0.19],
];
const labor = [
  ["Operation", "Minutes"],
  ["EMT conduit", 1.5],
  ["connector", 4],
  ["strap", 5],
  ["bend", 2],
  ["offset", 3],
];

test("columns for money and labor stand only when asked for", () => {
  const columns = [takeoff(runs), takeoff(runs, { prices }), takeoff(runs, { prices, labor })].map((table) => table[0]);
  expect(columns).toEqual([
    ["Item", "Unit", "Quantity", "Note"],
    ["Item", "Unit", "Quantity", "Unit price", "Extension", "Note"],
    ["Item", "Unit", "Quantity", "Unit price", "Extension", "Minutes", "Hours", "Note"],
  ]);
});

test("tables of prices and labor with nothing filled in are as good as none", () => {
  const blank = { prices: [prices[0]!, [null, null, null]], labor: [labor[0]!, ["", ""]] };
  expect(takeoff(runs, blank)).toEqual(takeoff(runs));
  expect(bendCounts(runs, { labor: blank.labor })).toEqual(bendCounts(runs));
  expect(() => takeoff(runs, { labor: [["Operation"]] })).toThrow('labor must have the column "Minutes"');
});

test("a line extends its quantity, the total adds the extensions up", () => {
  const table = takeoff(runs, { prices, shoes });
  // Two pieces of 98.28 in. and B's 131.9 in., which is a full stick and a short piece beside one of them: 3 sticks.
  expect(rowWhere(table, { Item: "EMT 1/2 conduit, 10 ft stick" })).toMatchObject({
    Quantity: 3,
    "Unit price": 6.2,
    Extension: 18.6,
    Note: "priced by the foot",
  });
  expect(rowWhere(table, { Item: "EMT 1/2 set-screw connector" })).toMatchObject({ Quantity: 6, Extension: 6 * 0.41 });
  expect(rowWhere(table, { Item: "EMT 1/2 conduit" })).toMatchObject({ "Unit price": "", Extension: "" });
  expect(rowWhere(table, { Item: "EMT 1/2 bend" })).toMatchObject({ Quantity: 4, "Unit price": "", Extension: "" });
  // Straps: two runs of 98.28 in. take 2 each, 131.9 in. takes 2.
  expect(rowWhere(table, { Item: "Total" })["Extension"]).toBeCloseTo(18.6 + 6 * 0.41 + 0.47 + 6 * 0.19, 9);
});

test("a missing price is named in its line and in the total, and is not zero", () => {
  const table = takeoff(runs, { prices: prices.filter((row) => row[0] !== "EMT 1/2 strap"), shoes });
  expect(rowWhere(table, { Item: "EMT 1/2 strap" })).toMatchObject({
    "Unit price": "no price",
    Extension: "",
    Note: "no price for EMT 1/2 strap",
  });
  const total = rowWhere(table, { Item: "Total, without what the note names" });
  expect(total["Note"]).toBe("no price for EMT 1/2 strap");
  expect(total["Extension"]).toBeCloseTo(18.6 + 6 * 0.41 + 0.47, 9);
});

test("what need not be bought needs no price: couplings that all come with the sticks", () => {
  const table = takeoff(runsRange({ Run: "R", Raceway: "IMC", Route: "east 29' 9" }), { prices });
  expect(rowWhere(table, { Item: "IMC 1/2 threaded coupling" })).toMatchObject({ Quantity: 0, "Unit price": "" });
  expect(
    records(table)
      .map((row) => row["Note"])
      .join(),
  ).not.toContain("no price for IMC 1/2 threaded coupling");
});

test("hours are quantity times minutes; bends by their kind; what has no minutes is named", () => {
  const table = takeoff(runs, { labor, shoes });
  expect(rowWhere(table, { Item: "EMT 1/2 set-screw connector" })).toMatchObject({ Minutes: 4, Hours: (6 * 4) / 60 });
  // Two stub-ups at 2 minutes (the general bend) and an offset's two bends at 3.
  expect(rowWhere(table, { Item: "EMT 1/2 bend" })).toMatchObject({ Minutes: 2.5, Hours: (2 * 2 + 2 * 3) / 60 });
  const total = rowWhere(table, { Item: "Total, without what the note names" });
  expect(total["Note"]).toBe("no minutes for coupling");
  const conduit = Number(rowWhere(table, { Item: "EMT 1/2 conduit" })["Quantity"]);
  expect(total["Hours"]).toBeCloseTo((conduit * 1.5 + 6 * 4 + 6 * 5 + 10) / 60, 9);
});

test("what could not be counted or read stands in words after the total, and hides nothing", () => {
  const spoilt = runsRange(
    { Run: "A", Route: "up 40, east 60" },
    { Run: "Bad route", Route: "up 40, sideways 3" },
    { Run: "Bad size", Route: "up 40", Size: "9" },
    { Run: "Cannot bend", Route: "up 12, east 3, down 12" },
    { Run: "Odd wire", Route: "east 60", Conductors: "3 #10 copper" },
    { Run: "Bad fittings", Route: "up 40", Fittings: "threaded" },
  );
  const bad = {
    prices: [...prices, ["Box", "crate", 3]],
    labor: [...labor, ["box", "long"]],
    rules: [
      ["Rule", "Value"],
      ["Staples", 1],
    ],
    shoes: [...shoes, ["EMT", "9/9", 4, 5]],
  };
  const rows = records(takeoff(spoilt, { ...bad }));
  const total = rows.findIndex((row) => String(row["Item"]).startsWith("Total"));
  expect(rows[total]!["Note"]).toContain("5 not counted, named below");
  const said = rows.slice(total + 1).map((row) => [row["Item"], row["Note"]]);
  expect(said).toEqual([
    ["not counted: Bad route", expect.stringContaining("step 2")],
    ["not counted: Bad size", expect.stringContaining('"9"')],
    ["not counted: Cannot bend", expect.stringMatching(/short|close/)],
    ["not counted: conductors of Odd wire", expect.stringContaining("copper")],
    ["not counted: Bad fittings", 'Fittings must be set-screw, compression for EMT; got "threaded".'],
    ["not read", expect.stringContaining("shoes row 3")],
    ["not read", 'rules row 2: no rule is called "Staples"; JOB.RULES lists the rules.'],
    ["not read", expect.stringContaining("prices row 6: Unit must be")],
    ["not read", 'labor row 7: Minutes must be a number; got "long".'],
  ]);
  expect(rows[0]!["Quantity"]).toBeCloseTo((160 - 4 * (2 - Math.PI / 2)) / 12, 9);
});

test("a table without its headers is refused", () => {
  expect(() => takeoff([["Run", "Route"]])).toThrow('runs must have the columns "Raceway", "Size"');
  expect(() => takeoff(runs, { prices: [["Item"]] })).toThrow('prices must have the column "Price"');
});

test("all that has no price or no minutes is named, once each, the kinds of note apart", () => {
  const table = takeoff(runs, { prices: [["Item", "Price"], ["paint", 9]], labor: [["Operation", "Minutes"], ["paint", 9]] }); // prettier-ignore
  expect(rowWhere(table, { Item: "Total, without what the note names" })).toMatchObject({
    ...{ Unit: "", Quantity: "", "Unit price": "", Extension: 0, Minutes: "", Hours: 0 },
    Note:
      "no price for EMT 1/2 conduit, 10 ft stick, EMT 1/2 set-screw coupling, EMT 1/2 set-screw connector, " +
      "EMT 1/2 strap; no minutes for conduit, coupling, connector, strap, offset, stub-up",
  });
});

test("couplings that all come with the sticks are installed all the same; a line of none has no minutes", () => {
  const given = [
    ["Operation", "Minutes"],
    ["coupling", 6],
  ];
  const table = takeoff(runsRange({ Run: "R", Raceway: "IMC", Route: "east 29' 9" }), { labor: given });
  expect(rowWhere(table, { Item: "IMC 1/2 threaded coupling" })).toMatchObject({ Quantity: 0, Minutes: "", Hours: 0 });
  expect(rowWhere(table, { Item: "IMC 1/2 threaded coupling, with the sticks" })).toMatchObject({
    ...{ Quantity: 2, Minutes: 6, Hours: 0.2 },
  });
});

test("work without minutes has none in its line; notes of different kinds stand side by side", () => {
  const rules = [
    ["Rule", "Value"],
    ["Factory elbows above size, metal", "3/4"],
  ];
  const run = { Run: "R", Raceway: "RMC", Size: "1", Route: "up 40, east 40, down 40" };
  const table = takeoff(runsRange(run), { rules, prices, labor });
  expect(rowWhere(table, { Item: "RMC 1 threaded coupling" })).toMatchObject({
    ...{ Quantity: 3, Minutes: "", Hours: "" },
    Note: "4 needed, 1 come with the sticks; no price for RMC 1 threaded coupling",
  });
});
