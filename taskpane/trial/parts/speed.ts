import { manyRuns } from "../manyRuns";
import { line, seconds, type Bench, type Line, type Part } from "../types";
import { isAnswered } from "../waiting";

const RESULTS = ["SCHEDULE", "TAKEOFF", "BENDS"];
/** Columns from one result to the next, from the first on; and how much of each is looked at. */
const [FIRST, APART, ROWS, COLUMNS] = [10, 40, 40, 8];

/** How long Excel takes to work a job out, at first and after a change of one route. */
export const speedPart = (runs: number): Part => ({
  id: `speed ${runs}`,
  title: `A job of ${runs.toLocaleString("en-US")} runs`,
  async run(bench): Promise<Line[]> {
    const { scratch, step, tableName } = bench;
    const name = tableName("Many");
    const cells = manyRuns(runs);
    step("writes the runs");
    await scratch.enter(0, 0, cells);
    await scratch.addTable(name, 0, 0, cells.length, cells[0]!.length);
    step("works them out");
    // A sheet of the local page is as large as what was asked of it.
    await scratch.read(10 * runs, FIRST + APART * RESULTS.length, 1, 1);
    const blank = RESULTS.map(() => "");
    for (const [at, result] of RESULTS.entries())
      await scratch.enter(0, FIRST + APART * at, [[`=CONDUIT.JOB.${result}(${name}[#All])`]]);
    const first = await allChanged(bench, blank);
    const before = await atRest(bench);
    step("changes one route");
    await scratch.enter(1, 4, [["up 30, east 400, north 90"]]);
    const edit = await allChanged(bench, before);
    return RESULTS.flatMap((result, at) => [
      line(`${result}, first`, timeOf(first[at]!), "told"),
      line(`${result}, after a change`, timeOf(edit[at]!), "told"),
    ]);
  },
});

const timeOf = (milliseconds: number | undefined): string =>
  milliseconds === undefined ? "no answer in time" : seconds(milliseconds);

const look = async ({ scratch }: Bench, at: number): Promise<string> => {
  const cells = await scratch.read(0, FIRST + APART * at, ROWS, COLUMNS);
  return isAnswered(cells[0]![0]) ? JSON.stringify(cells) : "";
};

/** How long it took until each result was another than before [ms]. */
async function allChanged(bench: Bench, before: readonly string[]): Promise<(number | undefined)[]> {
  const times = before.map((): number | undefined => undefined);
  const begun = performance.now();
  await bench.until(async () => {
    for (const [at, time] of times.entries()) {
      if (time !== undefined) continue;
      const seen = await look(bench, at);
      if (seen !== "" && seen !== before[at]) times[at] = performance.now() - begun;
    }
    return times.includes(undefined) ? undefined : true;
  });
  return times;
}

/** A result that stays the same for so long is whole [ms]: cells may follow their first one later. */
const REST = 500;

/** What the results are once nothing changes any more. */
async function atRest(bench: Bench): Promise<string[]> {
  let last = "";
  const { answer } = await bench.until(async () => {
    await new Promise((resolve) => setTimeout(resolve, REST));
    const seen = await Promise.all(RESULTS.map((_, at) => look(bench, at)));
    const same = JSON.stringify(seen) === last;
    last = JSON.stringify(seen);
    return same ? seen : undefined;
  });
  return answer ?? (JSON.parse(last) as string[]);
}
