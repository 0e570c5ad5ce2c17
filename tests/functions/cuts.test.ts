import { cutPlanOf, jobCutsOf } from "../../functions/job/cuts";
import { runsRange } from "../takeoff/tables";

const runs = runsRange({ Run: "A", Route: "east 40", Quantity: 3 });
/** What Excel hands over for an omitted argument. */
const omitted = null as never;

test("omitted arguments arrive as null and mean the defaults", () => {
  expect(jobCutsOf(runs, omitted, omitted, omitted, omitted, omitted)).toEqual(jobCutsOf(runs));
  expect(cutPlanOf([[40]], omitted, omitted, omitted, omitted)).toEqual(cutPlanOf([[40]]));
});

test("arguments reach their place", () => {
  const stock = [
    ["Raceway", "Size", "Length"],
    ["EMT", "1/2", 96],
  ];
  const shoes = [
    ["Raceway", "Size", "Radius"],
    ["EMT", "3/4", "?"],
  ];
  const rules = [
    ["Rule", "Value"],
    ["Saw kerf", 0.5],
  ];
  const table = jobCutsOf(runs, stock, shoes, omitted, 14, rules);
  // Two of 40 and two cuts of 1/2 in. leave 15 in. of 96.
  expect(table[2]).toEqual(["EMT", "1/2", 1, '96"', '2 × 40"', '15"', "A/1 ×2", "", "drop 1", "Stock"]);
  expect(table[table.length - 1]!.join()).toContain("shoes row 2");
  expect(jobCutsOf(runs, stock, omitted, 1, 14.5, rules)[2]).toEqual([
    "EMT",
    "1/2",
    1,
    '96"',
    '2 × 40"',
    '14"',
    ...["A/1 ×2", "", "", "scrap"],
  ]);
  expect(cutPlanOf([[40]], [[3]], [[100]], 0.25, 19)[1]!.join()).toContain("2 sticks to buy");
  expect(cutPlanOf([[40]], [[2]], [[100]], 0.25, 19)[2]).toEqual([
    1,
    '100"',
    '2 × 40"',
    '19-1/2"',
    "",
    "drop 1",
    "Stock",
  ]);
});

test.each([
  ["no runs", () => jobCutsOf(omitted), "runs must be a range with a header row"],
  ["a kerf that cannot be", () => jobCutsOf(runs, omitted, omitted, -1), "kerf must be at least 0 in."],
  ["no lengths", () => cutPlanOf(omitted), "lengths must have at least one length"],
])("%s is #VALUE! with its words", (_, call, message) => {
  expect(call).toThrow(expect.objectContaining({ code: "#VALUE!", message: expect.stringContaining(message) }));
});
