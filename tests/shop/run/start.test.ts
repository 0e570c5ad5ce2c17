import { buildJob, builtRows, unbuiltRows } from "../../../src/shop/job/job";
import { placedPulls } from "../../../src/shop/run/placed";
import { readStart, writeStart } from "../../../src/shop/cells/start";
import { readRuns } from "../../../src/shop/run/runsTable";

test.each([
  ["100 0 96", [100, 0, 96]],
  [`8' 4", 0, 8'`, [100, 0, 96]],
  [" -12.5   3  0 ", [-12.5, 3, 0]],
  ["1 m; 0; -254 mm", [39.37007874015748, 0, -10]],
])("%p is a place", (cell, point) => {
  expect(readStart(cell)).toEqual(point);
});

test.each([
  ["100 0", /^Start must be three lengths, east, north and up of the job's zero, .*; got "100 0"\.$/],
  [12, /^Start must be three lengths, .*; got 12\.$/],
  ["1, 2, ", /^Start must be three lengths/],
  ["1, 2, high", /^Start, up, must be a length/],
  ["130000000 0 0", /^Start, east, must be at least -120000000 in\. and at most 120000000 in\.; got 130000000 in\.$/],
])("%p is refused by name", (cell, words) => {
  expect(() => readStart(cell)).toThrow(words);
});

test("a place is written as it is read", () => {
  expect(writeStart([100, -0.5, 0.1 + 0.2])).toBe("100 -0.5 0.3");
  expect(readStart(writeStart([1234.0625, -7, 0]))).toEqual([1234.0625, -7, 0]);
});

const HEADERS = ["Run", "Raceway", "Size", "Route", "Start"];

test("a run stands at its Start, one without at the job's zero; a bad Start costs its own row alone", () => {
  const rows = [
    ["A", "EMT", "1/2", "up 10, east 96, box, north 40", "100 20 3"],
    ["B", "EMT", "1/2", "up 10, east 96", ""],
  ];
  const job = buildJob({ runs: [HEADERS, ...rows, ["C", "EMT", "1/2", "up 10", "here"]] });
  const runs = builtRows(job).map(({ built }) => built);
  expect(placedPulls(runs[0]!).map(({ points }) => [points[0], points.at(-1)])).toEqual([
    [
      [100, 20, 3],
      [196, 20, 13],
    ],
    [
      [196, 20, 13],
      [196, 60, 13],
    ],
  ]);
  expect(placedPulls(runs[1]!)[0]!.points[0]).toEqual([0, 0, 0]);
  expect(unbuiltRows(job).map(({ name, problem }) => [name, problem])).toEqual([
    ["C", expect.stringMatching(/^Start must be three lengths/)],
  ]);
});

test("an empty Start that comes as 0 is none", () => {
  expect(readRuns([HEADERS, ["A", "EMT", "1/2", "up 10", 0]])[0]!.run).not.toHaveProperty("start");
});
