import { jobBends, jobChanges, jobRules, jobTakeoff, jobTrace } from "../../functions/job/takeoff";
import { runsRange } from "../takeoff/tables";

const runs = runsRange({ Run: "A", Area: "North", Route: "up 40, east 60", Quantity: 2 });
/** What Excel hands over for an omitted argument. */
const omitted = null as never;

test("omitted arguments arrive as null and mean the defaults", () => {
  expect(jobTakeoff(runs, omitted, omitted, omitted, omitted, omitted)).toEqual(jobTakeoff(runs));
  expect(jobBends(runs, omitted, omitted, omitted, omitted)).toEqual(jobBends(runs));
  expect(jobTrace(runs, "EMT 1/2 bend", omitted, omitted)).toEqual(jobTrace(runs, "EMT 1/2 bend"));
  expect(jobChanges(runs, runs, omitted, omitted)).toEqual(jobChanges(runs, runs));
  expect(jobRules(omitted)).toEqual(jobRules());
});

test("arguments reach their place", () => {
  const shoes = [
    ["Raceway", "Size", "Radius", "Deduct"],
    ["EMT", "1/2", 8, 10],
  ];
  const prices = [
    ["Item", "Price"],
    ["EMT 1/2 strap", 0.25],
  ];
  const labor = [
    ["Operation", "Minutes"],
    ["strap", 3],
  ];
  const rules = [
    ["Rule", "Value"],
    ["Straps per support", 5],
  ];
  const [headers, ...rows] = jobTakeoff(runs, prices, shoes, "Area", labor, rules);
  expect(headers).toEqual(["Area", "Item", "Unit", "Quantity", "Unit price", "Extension", "Minutes", "Hours", "Note"]);
  expect(rows.find((row) => row[1] === "EMT 1/2 strap")).toEqual([
    "North",
    "EMT 1/2 strap",
    "each",
    20,
    0.25,
    5,
    3,
    1,
    "",
  ]);
  const feet = rows.find((row) => row[1] === "EMT 1/2 conduit")![3];
  expect(feet).toBeCloseTo((2 * (100 - 8 * (2 - Math.PI / 2))) / 12, 9);
  expect(jobTrace(runs, "EMT 1/2 strap", shoes, rules)).toEqual([
    ["Run", "Row", "Each", "Times", "Amount", "Note"],
    ["A", 2, 10, 2, 20, ""],
    ["Total", "", "", "", 20, "each"],
  ]);
  expect(jobBends(runs, "Area", shoes, [...labor, ["bend", 6]], rules)).toEqual([
    ["Area", "Bends", "Hours", "Note"],
    ["North", 2, 0.2, ""],
    ["Total", 2, 0.2, ""],
  ]);
  expect(jobChanges(runs, runs, shoes, rules)).toContainEqual(["quantity", "EMT 1/2 strap", "each", 20, 20, 0]);
  expect(jobRules(rules)).toContainEqual(["Straps per support", 5, "each", "rules row 2"]);
});

test.each([
  ["no header row", () => jobTakeoff([[""]]), "#VALUE!", "runs must be a range with a header row; got an empty cell."],
  ["no range", () => jobBends(omitted), "#VALUE!", "runs must be a range with a header row; got an empty cell."],
  ["an unknown column", () => jobTakeoff(runs, omitted, omitted, "Color"), "#VALUE!", 'got "Color".'],
  ["no item", () => jobTrace(runs, omitted), "#VALUE!", "item must be the name of an item of the take-off"],
  ["an unknown item", () => jobTrace(runs, "EMT 9 strap"), "#N/A", 'the take-off has no item "EMT 9 strap"'],
])("%s is an error with its words", (_, call, code, message) => {
  expect(call).toThrow(expect.objectContaining({ code, message: expect.stringContaining(message) }));
});
