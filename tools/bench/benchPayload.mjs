// How many runs each whole-job function serves before a result passes what Excel takes of it: `npm run bench -- --payload`.
import { generatedRuns } from "./generatedRuns.cjs";

/** What a function gives at most [bytes]: functions/cell/answer.ts. */
const MOST = 4 * 1024 ** 2;
/** Rows a function reads at most. */
const ROWS = 20_000;
/** Runs that are measured; JOB.STANDING compares at most 3,000 pieces. */
const SAMPLE = 800;

const bytes = (value) => Buffer.byteLength(JSON.stringify(value));

/** Each whole-job function, with the arguments a new workbook gives it. */
/** @type {[string, (runs: any[][], functionOf: (id: string) => any) => any[]][]} */
const CALLS = [
  ["JOB.SCHEDULE", (runs) => [runs]],
  ["JOB.SETUP", (runs) => [runs]],
  ["JOB.CHECKS", (runs) => [runs]],
  ["JOB.TAKEOFF", (runs) => [runs]],
  ["JOB.TRACE", (runs, functionOf) => [runs, functionOf("JOB.TAKEOFF")(runs)[1][0]]],
  ["JOB.BENDS", (runs) => [runs]],
  ["JOB.CUTS", (runs) => [runs]],
  ["JOB.PROGRESS", (runs) => [runs, [["Piece", "Good"]]]],
  ["JOB.DAILY", (runs) => [runs, [["Piece", "Good"]]]],
  ["JOB.STANDING", (runs) => [runs, [["Piece", "Good"]], runs.map((row) => [...row])]],
  ["JOB.CHANGES", (runs) => [runs.map((row) => [...row]), runs]],
];

/** The lines of the table: bytes a run takes of the result, and the runs that 4 MB hold. */
export function payloadTable(functionOf) {
  const runs = generatedRuns(SAMPLE);
  const handed = bytes(runs) / SAMPLE;
  const lines = CALLS.map(([id, arguments_]) => {
    const call = functionOf(id);
    if (!call) return [id, "not in the bundle", "", ""];
    const start = performance.now();
    let result;
    try {
      result = call(...arguments_(runs, functionOf));
    } catch (error) {
      return [id, error.message.slice(0, 60), "", ""];
    }
    const seconds = (performance.now() - start) / 1000;
    const each = bytes(result) / SAMPLE;
    const served = Math.min(ROWS, Math.floor(MOST / each), Math.floor(MOST / handed));
    return [id, each.toFixed(0), seconds.toFixed(2), served === ROWS ? `${ROWS} (rows read)` : String(served)];
  });
  return [["function", "result, bytes a run", `s for ${SAMPLE} runs, first time`, "serves runs"], ...lines];
}
