/** What is too much is counted and refused in words before it is read; what is merely empty is not counted. */
import { answer } from "../../functions/cell/answer";
import { bendSpringbackModel } from "../../functions/bend/bends";
import { cutPlanOf } from "../../functions/job/cuts";
import { jobChecks, jobSchedule } from "../../functions/job/jobs";
import { jobProgress } from "../../functions/job/made";
import { pullBox } from "../../functions/job/tables";
import { cellError } from "../support/cellError";

const HEADERS = ["Run", "Raceway", "Size", "Route"];
const RUN = ["A", "EMT", "1/2", "up 20, east 60"];
const filled = (rows: number, columns: number, cell: unknown): unknown[][] =>
  Array.from({ length: rows }, () => Array.from({ length: columns }, () => cell));

test.each<[string, () => unknown, string]>([
  ["runs", () => jobChecks([HEADERS, ...filled(20_000, 4, "x")]), "runs must have at most 20000 rows; got 20001."],
  [
    "records",
    () => jobProgress([HEADERS, RUN], [["Piece", "Good"], ...filled(60_000, 2, 1)]),
    "made must have at most 50000 rows; got 60001.",
  ],
  ["lengths", () => cutPlanOf(filled(300, 300, 10)), "lengths must have at most 50000 cells; got 90000."],
  ["entries", () => pullBox(filled(1000, 1000, "2"), "angle"), "entries must have at most 2000 cells; got 1000000."],
  [
    "test bends",
    () => bendSpringbackModel([["Angle", "Dial"], ...filled(200_000, 2, 48)]),
    "tests must have at most 1000 rows; got 200001.",
  ],
])("too many %s", (_name, call, words) => {
  expect(cellError(call)).toBe(`#VALUE! ${words}`);
});

test.each([
  ["plain letters", "x", 4000, 4300],
  ["letters of two bytes", "é", 2000, 2200],
  ["letters of three", "目", 1300, 1450],
])("a result that Excel would not take is refused in words; a little less is given: %s", (_name, letter, few, many) => {
  const MOST = 4 * 1024 ** 2;
  const table = (rows: number) => Array.from({ length: rows }, () => [letter.repeat(1000), 1]);
  const sizes = [few, many].map((rows) => Buffer.byteLength(JSON.stringify(table(rows))));
  expect(sizes[0]).toBeLessThan(MOST);
  expect(sizes[1]).toBeGreaterThan(MOST);
  expect(answer([], () => table(few))).toHaveLength(few);
  expect(cellError(() => answer([], () => table(many))).slice(0, 400)).toMatch(
    new RegExp(
      `^#VALUE! The result has ${many} rows and about 4\\.\\d MB; Excel takes at most 5 MB of a function, and this one stops at 4\\. Divide the runs`,
    ),
  );
});

test.each([["", null, undefined, 0]])("empty rows below a job, however many, change nothing", (...blanks) => {
  const expected = jobSchedule([HEADERS, RUN]);
  expect(expected).toHaveLength(2);
  for (const blank of blanks) {
    const table = [HEADERS, RUN, ...filled(100_000, 4, blank)];
    expect(jobSchedule(table)).toEqual(expected);
  }
});

test("a row after many empty ones is read", () => {
  const far = [HEADERS, RUN, ...filled(10_000, 4, ""), ["B", ...RUN.slice(1)]];
  expect(jobSchedule(far).map(([run]) => run)).toEqual(["Run", "A", "B"]);
});
