import { buildJob, type Job } from "../../shop/job/job";
import { stockIn } from "../cuts/cutStock";
import { readRules } from "../../rules/rules";
import { countsIn, type CountBook } from "../amounts/counts";
import { jobWork, type JobWork } from "../amounts/jobWork";
import type { TakeoffLine } from "../amounts/lineBook";
import { notRead } from "../lists/notRead";
import { runChanges } from "./runChanges";
import { compareLines, takeoffLines } from "../lines/takeoffLines";

type Cell = string | number;

const HEADERS = ["Change", "Run or item", "Column or unit", "Before", "After", "Difference"];

/** What a comparison may be given besides the runs: what their take-offs were given. */
export interface ChangeRanges {
  readonly shoes?: unknown;
  readonly rules?: unknown;
  readonly stock?: unknown;
  readonly countsBefore?: unknown;
  readonly counts?: unknown;
}

/**
 * What changed between two Runs ranges, as a table with a header row: runs added, gone and changed, then every line of
 * the take-off before and after with the difference, then the runs that could not be counted.
 *
 * @throws InputError when a range lacks a needed column
 */
export function changes(before: unknown, after: unknown, ranges: ChangeRanges = {}): Cell[][] {
  const stock = stockIn(ranges.stock);
  const rules = readRules(ranges.rules);
  const [countsBefore, counts] = [countsIn(ranges.countsBefore, rules), countsIn(ranges.counts, rules)];
  const stateOf = (runs: unknown, argument: string, counts: CountBook): JobState => {
    const job = buildJob({ runs, argument, ...ranges });
    const work = jobWork(job);
    return { job, work, lines: takeoffLines(work.works, [], job.rules, stock, counts) };
  };
  const [old, now] = [stateOf(before, "before", countsBefore), stateOf(after, "after", counts)];
  return [
    HEADERS,
    ...runChanges(old.job.rows, now.job.rows).map((entry) => [
      entry.change,
      entry.run,
      entry.column,
      entry.before,
      entry.after,
      "",
    ]),
    ...quantityRows(old.lines, now.lines),
    ...problemRows(old.work, "before"),
    ...problemRows(now.work, "after"),
    ...notRead({ ...now.job, rows: [...old.job.rows, ...now.job.rows] }, now.job.rules, stock, countsBefore, counts).map((text) => ["not read", text, "", "", "", ""]),
  ];
}

interface JobState {
  readonly job: Job;
  readonly work: JobWork;
  readonly lines: readonly TakeoffLine[];
}

function quantityRows(before: readonly TakeoffLine[], after: readonly TakeoffLine[]): Cell[][] {
  const [old, now] = [byName(before), byName(after)];
  const all = [...new Map([...old, ...now]).values()].sort((a, b) => compareLines([], a, b));
  return all.map(({ item }) => {
    const [was, is] = [old.get(item.name)?.quantity ?? 0, now.get(item.name)?.quantity ?? 0];
    return ["quantity", item.name, item.unit, was, is, is - was];
  });
}

const byName = (lines: readonly TakeoffLine[]): Map<string, TakeoffLine> =>
  new Map(lines.map((line) => [line.item.name, line]));

const problemRows = (work: JobWork, state: string): Cell[][] =>
  work.problems.map(({ name, message }) => ["not counted", name, state, message, "", ""]);
