/** The drawing to import: as it lies in docs/samples, read by the command line's own road. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { SAMPLE_DRAWING, sampleDrawing, UPPER_DECK } from "../../../workbench/samples/sampleDrawing";
import { runsFromDrawing } from "../../../workbench/workbook/drawing/runsFromDrawing";

const committed = readFileSync(join(__dirname, "../../../docs/samples", SAMPLE_DRAWING), "utf8");

test("the file is what npm run samples writes", () => {
  expect(committed).toBe(sampleDrawing());
});

test("its five runs come as they were drawn, in their words, and what else it has is named", () => {
  const { runs, report } = runsFromDrawing(committed, SAMPLE_DRAWING, {});
  const at = UPPER_DECK[0]!.map((header) => runs.headers.indexOf(header));
  // The words may be others for the same shape: lengths in inches, shots of a sweep, a box that splits a run.
  expect(runs.rows.filter(([name]) => name !== "").map((row) => at.map((place) => row[place]))).toEqual([
    ["UD-01", "EMT", "3/4", "up 108, east 171, offset 5 north at 30, ahead 96, down 30", "-240 340 120"],
    ["UD-02", "IMC", "1", "up 40, sweep 24, east 132, north 72", "-240 352 150"],
    ["UD-03", "RMC", "3/4", "west 84, saddle 3 up at 45, ahead 96", "-20 420 138"],
    ["UD-04", "EMT", "1/2", "up 72, east 108, box, north 90, down 20", "-240 380 140"],
    ["UD-05", "EMT", "1/2", expect.stringMatching(/^up 60, east 72, /), "-120 400 132"],
    ...[1, 2, 3].map((number) => [`UD-06-${number}`, "EMT", "1/2", expect.any(String), expect.any(String)]),
  ]);
  expect(report.join("\n")).toMatch(/UD-05: as drawn/);
  expect(report.join("\n")).toMatch(/3 lines meet: say where the box is/);
  expect(report.join("\n")).toMatch(/Deck edge: not taken/);
  expect(report.join("\n")).toMatch(/TEXT/);
});
