import { buildJob, builtRows } from "../../../src/shop/job/job";
import { runsDxf } from "../../../workbench/shapes";
import { runsFromDrawing } from "../../../workbench/workbook/drawing/runsFromDrawing";

const runs = builtRows(
  buildJob({
    runs: [
      ["Run", "Raceway", "Size", "Route", "Start"],
      ["A", "EMT", "1-1/4", "up 40, east 120", "100 20 3"],
      ["B", "PVC 40", "2", "up 24, east 60, box, up 24", ""],
    ],
  }),
).map(({ built }) => built);

test("a drawing becomes rows of Runs, with a line for each", () => {
  const { runs: list, report, left } = runsFromDrawing(runsDxf(runs), "job.dxf", {});
  const cell = (row: number, header: string) => list.rows[row]![list.headers.indexOf(header)];
  expect(["Run", "Raceway", "Size", "Route", "Start", "Quantity"].map((header) => cell(0, header))).toEqual([
    "A",
    "EMT",
    "1-1/4",
    "up 40, east 120",
    "100 20 3",
    null,
  ]);
  expect(["Raceway", "Size", "Route"].map((header) => cell(1, header))).toEqual([
    "PVC 40",
    "2",
    "up 24, east 60, box, up 24",
  ]);
  expect([report, left]).toEqual([["A: as drawn", "B: as drawn"], 0]);
});

const POINTS = "Run,East,North,Up\nA,0,0,0\nA,0,0,4\nA,10,0,4\n";

test("a list of points needs its unit and its conduit said", () => {
  const { runs: list } = runsFromDrawing(POINTS, "points.csv", { unit: "ft", drawnAs: "EMT 3/4" });
  expect(list.rows[0]!.slice(0, 6)).toEqual(["A", null, null, "EMT", "3/4", "up 48, east 120"]);
  expect(() => runsFromDrawing(POINTS, "points.csv", {})).toThrow(
    "points.csv does not say its unit; add --unit with one of inches, feet, millimeters, centimeters, meters.",
  );
  expect(() => runsFromDrawing(POINTS, "points.csv", { unit: "in" })).toThrow(
    /^points\.csv: no run was taken\.\nA: not taken, for its name says no raceway and size; add --drawn-as "EMT 3\/4"$/,
  );
  expect(() => runsFromDrawing(POINTS, "points.csv", { unit: "cubits" })).toThrow(
    "--unit must be one of inches, feet, millimeters, centimeters, meters; got cubits.",
  );
  expect(() => runsFromDrawing(POINTS, "points.csv", { unit: "in", drawnAs: "EMT 9" })).toThrow(/^--drawn-as must be/);
});
