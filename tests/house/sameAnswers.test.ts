/**
 * Recorded, not true: what the whole-job functions answered for the same 500 generated runs before the house was rebuilt.
 * A hash that changes says that an answer changed; whoever changes one on purpose records it anew and says why.
 */
import { createHash } from "node:crypto";
import { jobCutsOf } from "../../functions/job/cuts";
import { jobChecks, jobSchedule, jobSetup } from "../../functions/job/jobs";
import { jobBends, jobTakeoff } from "../../functions/job/takeoff";

const { generatedRuns } = jest.requireActual<{ generatedRuns(count: number, seed: number): unknown[][] }>(
  "../../tools/bench/generatedRuns.cjs",
);

const RUNS = generatedRuns(500, 41);
/** Rows that cannot be built, elbows that are bought, and other words for the same columns. */
RUNS.push(
  ["bad route", "Bench", "Area 1", "EMT", "1/2", "up and away", 1, "", "", ""],
  ["bad size", "Bench", "Area 1", "EMT", "7/8", "up 40", 1, "", "", ""],
  ["too short", "Bench", "Area 1", "EMT", "1", "up 3, east 40", 1, "", "", ""],
  ["plastic", "Bench", "Area 2", "PVC 40", "2", "up 60, east 100, box, north 60", 2, "", "", "3 #4 THHN"],
  ["nothing", "Bench", "Area 2", "RMC", "1", "up 60, east 100, box", 0, "", "", "3 nothing"],
);

/** Words that were added on purpose since the answers were recorded. */
const ADDED = /, or a metric designator, 16 to 155| At (?:most|least) \d+° in step \d+ would do\./g;

const hash = (table: unknown): string =>
  createHash("sha256").update(JSON.stringify(table).replaceAll(ADDED, "")).digest("hex").slice(0, 16);

test.each([
  ["schedule", () => jobSchedule(RUNS), "1a0718c19e1e1320"],
  ["checks", () => jobChecks(RUNS), "57de675685023900"],
  ["set-up", () => jobSetup(RUNS), "0b6c913784b8a535"],
  ["take-off", () => jobTakeoff(RUNS), "9c6fd423ddd46f00"],
  ["take-off by area", () => jobTakeoff(RUNS, undefined, undefined, "Area"), "c1bbf261fa870c15"],
  ["bends", () => jobBends(RUNS), "fafebb4abcb1eb3e"],
  ["cuts", () => jobCutsOf(RUNS), "63a6b7dfee3b0f5b"],
])("the %s of 500 generated runs are as recorded", (_name, answer, recorded) => {
  const table = answer();
  expect(table.length).toBeGreaterThan(10);
  expect(hash(table)).toBe(recorded);
});
