import * as tables from "../../functions/job/tables";
import { dataOf, expansionOf, fill, fillSizeOf, pullBox, supports } from "../../functions/job/tables";
import { cellError } from "../support/cellError";
import { docExamples } from "../support/docExamples";

const EXAMPLES = docExamples(["tables.ts"]);

test("every function of the tables has an example", () => {
  expect(EXAMPLES.map(({ id }) => id)).toEqual(["DATA", "FILL", "FILL.SIZE", "SUPPORTS", "EXPANSION", "PULLBOX"]);
});

test.each(EXAMPLES)("the example of $id gives $result", ({ name, args, result }) => {
  const value = (tables as Record<string, (...args: unknown[]) => unknown>)[name]!(...args);
  expect(typeof value === "number" ? String(Number(value.toFixed(5))) : value).toBe(result);
});

test("each function answers what its item asks for", () => {
  const wires = [["9 #12 THHN"]];
  expect(fill("EMT", "1/2", wires, "limit")).toBe(0.4);
  expect(fill("EMT", "1/2", wires, " Area ")).toBeCloseTo(0.1197, 12);
  expect(fill("EMT", "1/2", wires, "fits")).toBe(true);
  expect(fill("EMT", "1/2", wires, "limit", 20)).toBe(0.6);
  expect(fill("EMT", "1/2", wires, "rule", `2'`, 2020)).toMatch(/^NEC 2020, chapter 9, table 1, note 4: /);
  expect(fillSizeOf("EMT", [["10 #12 THHN"]], 24)).toBe("1/2");
  expect(supports("RMC", "2", `40'`, "straight")).toBe(4);
  expect(supports("RMC", "2", `40'`, null, "spacing")).toBe(120);
  expect(supports("RMC", "2", `40'`, "straight", "rule", 2020)).toMatch(/^NEC 2020, table 344\.30\(B\)\(2\): /);
  expect(expansionOf("PVC 80", `50'`, -10, "fitting")).toBe(false);
  expect(expansionOf("PVC 80", `50'`, -20, "fitting")).toBe(true);
  expect(expansionOf("PVC 80", 1200, 100, "rule", 2020)).toMatch(/^NEC 2020, 352\.44: /);
  expect(pullBox([["2"]], "straight", "rule")).toMatch(/^NEC 2023, 314\.28\(A\)\(1\): /);
  expect(pullBox([["2-1/2"], ["3"]], "between")).toBe(18);
});

test("omitted arguments arrive as null and count as left out", () => {
  expect(fill("EMT", "1/2", [["9 #12 THHN"]], null, null, null)).toBe(fill("EMT", "1/2", [["9 #12 THHN"]]));
  expect(fillSizeOf("EMT", [["10 #12 THHN"]], null, null)).toBe("3/4");
  expect(supports("EMT", "3/4", 300, null, null, null)).toBe(3);
  expect(expansionOf("PVC 40", 1200, 100, null, null)).toBeCloseTo(4.056, 9);
  expect(pullBox([["2"]], null, null, null)).toBe(16);
});

const A_LENGTH = `a length: a number of inches, or text like 3' 4-1/2", 40.5 or 1028 mm`;

test.each<[() => unknown, string]>([
  [
    () => dataOf("EMT", 46024, "area"),
    "#VALUE! size must be a trade size; got 46024, a date: Excel takes 1/2 for one.",
  ],
  [() => dataOf("EMT", "6", "area"), "#N/A EMT is not listed in size 6;"],
  [() => dataOf("EMT", "1", null), "#VALUE! item must be outside diameter, inside diameter,"],
  [() => fill("EMT", "1", [[""]]), "#VALUE! conductors must be count, size and insulation,"],
  [
    () => fill("EMT", "1", [["3 #12 THHN"]], "percent"),
    '#VALUE! item must be ratio, limit, area, fits or rule; got "percent".',
  ],
  [() => fill("EMT", "1", [["3 #12 THHN"]], null, 0), "#VALUE! length must be above 0 in.; got 0 in."],
  [() => fill("EMT", "1", [["3 #12 THHN"]], null, null, 1999), "#VALUE! edition must be 2020 or 2023; got 1999."],
  [() => supports("EMT", "1", null), `#VALUE! length must be ${A_LENGTH}; got an empty cell.`],
  [() => supports("EMT", "1", -3), "#VALUE! length must be above 0 in.; got -3 in."],
  [() => supports("EMT", "1", 100, "any", "spaces"), '#VALUE! item must be count, spacing or rule; got "spaces".'],
  [() => expansionOf("EMT", 100, 50, "fitting"), "#N/A The code names no change from which EMT takes a fitting."],
  [() => expansionOf("PVC 40", 100, "warm"), '#VALUE! temperatureChange must be a number; got "warm".'],
  [() => expansionOf("PVC 40", 100, 900), "#VALUE! temperatureChange must be at least -500 and at most 500; got 900."],
  [() => pullBox([[""]]), "#VALUE! entries must hold at least one trade size; all cells are empty."],
  [() => pullBox([["2"]], "bent"), "#VALUE! pull must be straight, angle, U, splice or between;"],
])("%s says why", (call, message) => {
  expect(cellError(call).slice(0, message.length)).toBe(message);
});
