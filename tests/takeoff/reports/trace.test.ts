import { trace } from "../../../src/takeoff/reports/trace";
import { runsRange } from "../tables";

const runs = runsRange(
  { Run: "B", Raceway: "IMC", Size: "1", Route: "east 29' 9", Quantity: 2, From: "JB-1", To: "JB-2" },
  { Run: "A", Raceway: "IMC", Size: "1", Route: "up 50, east 60, down 40", From: "jb-2" },
  { Run: "X", Raceway: "IMC", Size: "1", Route: "up 50, sideways 3" },
);
const NOT_COUNTED = ["not counted: X", "", "", "", "", expect.stringContaining("step 2")];

test("the runs behind a quantity stand in the order of their rows, bends of one run together, then the sum", () => {
  expect(trace(runs, "imc 1 BEND")).toEqual([
    ["Run", "Row", "Each", "Times", "Amount", "Note"],
    ["A", 3, 2, 1, 2, ""],
    ["Total", "", "", "", 2, "each"],
    NOT_COUNTED,
  ]);
  expect(trace(runs, "IMC 1 strap").slice(1, 4)).toEqual([
    // 357 in., three sticks of 119 in., takes a strap within 36 in. of each end and none more than 120 in. apart: 4; A's 145 in.: 2.
    ["B", 2, 4, 2, 8, ""],
    ["A", 3, 2, 1, 2, ""],
    ["Total", "", "", "", 10, "each"],
  ]);
});

test("couplings to buy: the joints of each run, less what comes with the sticks", () => {
  // B's 2 x 3 sticks and A's two for its 145 in. bring 8; there are 2 x 2 and 1 joints.
  expect(trace(runs, "IMC 1 threaded coupling").slice(1, -1)).toEqual([
    ["B", 2, 2, 2, 4, ""],
    ["A", 3, 1, 1, 1, ""],
    ["", "", -5, 1, -5, "5 needed, 8 come with the sticks"],
    ["Total", "", "", "", 0, "each"],
  ]);
});

test("a box names all the runs that end at it", () => {
  expect(trace(runs, "Box").slice(1, -1)).toEqual([
    ["B", 2, 1, 1, 1, "JB-1"],
    ["B, A", "2, 3", 1, 1, 1, "jb-2"],
    ["Total", "", "", "", 2, "each"],
  ]);
});

test("rules and shoes that could not be read are told", () => {
  const rules = [
    ["Rule", "Value"],
    ["Staples", 1],
  ];
  const shoes = [
    ["Raceway", "Size"],
    ["EMT", "99"],
  ];
  expect(trace(runs, "Box", { shoes, rules }).slice(-2)).toEqual([
    ["not read", "", "", "", "", expect.stringContaining("shoes row 2")],
    ["not read", "", "", "", "", expect.stringContaining("rules row 2")],
  ]);
});

describe("a trace of an order with groups", () => {
  const [hall, yard] = ["Hall", "Yard"];
  const grouped = runsRange(
    { Run: "A", Area: yard, Route: "up 40, east 60", Quantity: 2 },
    { Run: "B", Area: hall, Route: "east 60" },
    { Run: "C", Area: yard, Route: "east 50" },
  );

  test("each group has its rows and its sum; last, the sum of all", () => {
    // A's two pieces of 94 in. and C's 50 in. share no stick; B's 60 in. would go with C, but is the hall's.
    expect(trace(grouped, "EMT 1/2 conduit, 10 ft stick", { by: "Area" })).toEqual([
      ["Area", "Run", "Row", "Each", "Times", "Amount", "Note"],
      [hall, "B", 3, 1, 1, 1, ""],
      [hall, "Total", "", "", "", 1, "each"],
      [yard, "A, C", "2, 4", 3, 1, 3, ""],
      [yard, "Total", "", "", "", 3, "each"],
      ["", "Total", "", "", "", 4, "each"],
    ]);
  });

  test("an item of one group has one sum", () => {
    expect(trace(grouped, "EMT 1/2 bend", { by: "Area" }).slice(1)).toEqual([
      [yard, "A", 2, 1, 2, 2, ""],
      [yard, "Total", "", "", "", 2, "each"],
    ]);
  });
});

test.each([[""], ["  "], [7], [null]])("%p is no item's name", (item) => {
  expect(() => trace(runs, item)).toThrow("item must be the name of an item of the take-off; got ");
});

test("spaces around an item's name do not matter", () => {
  expect(trace(runs, "  IMC 1 bend ")).toEqual(trace(runs, "IMC 1 bend"));
});

test("sticks are shared by their runs; couplings that come with them belong to none", () => {
  // B's 2 x 3 sticks, and A's 145 in. less two bends take two.
  expect(trace(runs, "IMC 1 conduit, 10 ft stick").slice(1, -1)).toEqual([
    ["B, A", "2, 3", 8, 1, 8, ""],
    ["Total", "", "", "", 8, "each"],
  ]);
  expect(trace(runs, "IMC 1 threaded coupling, with the sticks").slice(1, -1)).toEqual([
    ["", "", 5, 1, 5, "5 needed, 8 come with the sticks"],
    ["Total", "", "", "", 5, "each"],
  ]);
});
