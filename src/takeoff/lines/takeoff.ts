import { buildJob } from "../../shop/job/job";
import { addAllowances, idleAllowances } from "../allowances/addAllowances";
import { readAllowances } from "../allowances/allowanceTable";
import { countsIn, type CountBook } from "../amounts/counts";
import { jobWork, type JobWork } from "../amounts/jobWork";
import { unusedTypicals } from "../lists/unusedTypicals";
import { leaveOutMade, type LeftToMake } from "../amounts/leftToMake";
import { readLabor } from "../lists/labor";
import { notRead } from "../lists/notRead";
import { readOrder, type Order } from "./order";
import { readPrices } from "../lists/prices";
import { priceLine, type PricedLine } from "./priceLine";
import { takeoffLines } from "./takeoffLines";
import { takeoffParts, type TakeoffPart } from "./takeoffParts";
import { takeoffTable, type TakeoffView } from "./takeoffTable";
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
  readonly allowances?: unknown;
  readonly left?: LeftToMake | undefined;
}

/** A take-off before it is shown: its priced lines, the work behind them, and what is shown with them. */
export interface TakenOff {
  readonly priced: readonly PricedLine[];
  readonly work: JobWork;
  readonly counts: CountBook;
  readonly view: TakeoffView;
}

/** A take-off as a table with a header row, and the parts its first lines fall into. */
export interface TakeoffInParts {
  readonly table: (string | number)[][];
  readonly parts: TakeoffPart[];
}

/**
 * Take-off of a Runs range as a table with a header row.
 * @throws InputError when a range lacks a needed column or `by` names none
 */
export const takeoff = (runs: unknown, ranges: TakeoffRanges = {}): (string | number)[][] =>
  takeoffInParts(runs, ranges).table;

/** The same table, and the parts its first lines fall into. */
export function takeoffInParts(runs: unknown, ranges: TakeoffRanges = {}): TakeoffInParts {
  const { priced, work, view } = takeOff(runs, ranges, readOrder(ranges));
  return { table: takeoffTable(priced, work, view), parts: takeoffParts(priced, view.by.length > 0) };
}

/** Takes a Runs range off and prices it. @throws InputError when a range lacks a needed column */
export function takeOff(runs: unknown, ranges: TakeoffRanges, { by, stock, notes }: Order): TakenOff {
  const job = buildJob({ runs, ...ranges });
  const prices = listIn(ranges.prices, readPrices);
  const labor = listIn(ranges.labor, readLabor);
  const { work, told } = leaveOutMade(job, jobWork(job), ranges.left);
  const counts = countsIn(ranges.counts, job.rules);
  const allowances = readAllowances(ranges.allowances);
  const taken = takeoffLines(work.works, by, job.rules, stock, counts);
  const lines = addAllowances(taken, allowances, prices);
  const priced = lines.map((line) => priceLine(line, { prices, labor }));
  const problems = [
    ...notRead(job, job.rules, stock, prices, labor, counts, allowances),
    ...unusedTypicals(job, ranges.counts),
    ...idleAllowances(taken, allowances),
  ];
  return { priced, work, counts, view: { by, prices, labor, told, notes, problems } };
}
