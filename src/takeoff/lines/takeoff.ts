import { buildJob } from "../../shop/job/job";
import { readCounts } from "../amounts/counts";
import { jobWork } from "../amounts/jobWork";
import { leaveOutMade, type LeftToMake } from "../amounts/leftToMake";
import { readLabor } from "../lists/labor";
import { notRead } from "../lists/notRead";
import { readOrder } from "./order";
import { readPrices } from "../lists/prices";
import { priceLine } from "./priceLine";
import { takeoffLines } from "./takeoffLines";
import { takeoffParts, type TakeoffPart } from "./takeoffParts";
import { takeoffTable } from "./takeoffTable";
import { listIn } from "../lists/valueList";

/** What a take-off may be given besides the runs. */
export interface TakeoffRanges {
  readonly prices?: unknown;
  readonly shoes?: unknown;
  readonly by?: unknown;
  readonly labor?: unknown;
  readonly rules?: unknown;
  readonly stock?: unknown;
  readonly counts?: unknown;
  readonly left?: LeftToMake | undefined;
}

/**
 * Take-off of a Runs range as a table with a header row.
 * @throws InputError when a range lacks a needed column or `by` names none
 */
export const takeoff = (runs: unknown, ranges: TakeoffRanges = {}): (string | number)[][] =>
  takeoffInParts(runs, ranges).table;

/** The same table, and the parts its first lines fall into. */
export function takeoffInParts(
  runs: unknown,
  ranges: TakeoffRanges = {},
): { table: (string | number)[][]; parts: TakeoffPart[] } {
  const { by, stock, notes } = readOrder(ranges);
  const job = buildJob({ runs, ...ranges });
  const prices = listIn(ranges.prices, readPrices);
  const labor = listIn(ranges.labor, readLabor);
  const { work, told } = leaveOutMade(job, jobWork(job), ranges.left);
  const counts = readCounts(ranges.counts);
  const problems = notRead(job, job.rules, stock, prices, labor, counts);
  const lines = takeoffLines(work.works, by, job.rules, stock, counts);
  const priced = lines.map((line) => priceLine(line, { prices, labor }));
  return {
    table: takeoffTable(priced, work, { by, prices, labor, told, notes, problems }),
    parts: takeoffParts(priced, by.length > 0),
  };
}
