import { buildJob, type Job } from "../shop/job/job";
import { addAllowances, idleAllowances } from "../takeoff/allowances/addAllowances";
import { readAllowances } from "../takeoff/allowances/allowanceTable";
import { countsIn, type CountBook } from "../takeoff/amounts/counts";
import { jobWork, type RowWork } from "../takeoff/amounts/jobWork";
import { unusedTypicals } from "../takeoff/lists/unusedTypicals";
import { stockIn } from "../takeoff/cuts/cutStock";
import { priceLine, type PricedLine } from "../takeoff/lines/priceLine";
import { takeoffLines } from "../takeoff/lines/takeoffLines";
import { LACKING } from "../takeoff/lines/takeoffTable";
import { readLabor, type LaborBook } from "../takeoff/lists/labor";
import { notRead } from "../takeoff/lists/notRead";
import { readPrices } from "../takeoff/lists/prices";
import { readFactors, type FactorBook } from "./labor/factors";

/** What a bid may be given of the job besides the runs. */
export interface JobLists {
  readonly prices?: unknown;
  readonly labor?: unknown;
  readonly shoes?: unknown;
  readonly rules?: unknown;
  readonly stock?: unknown;
  readonly factors?: unknown;
  readonly counts?: unknown;
  readonly allowances?: unknown;
  /** False for a state of the job that is past: what rules and allowances have for nothing in it is no slip. */
  readonly tellIdle?: boolean;
}

/** The take-off of a whole job in no groups, each line with its price and hours. */
export interface PricedJob {
  readonly job: Job;
  readonly works: readonly RowWork[];
  readonly lines: readonly PricedLine[];
  readonly labor: LaborBook;
  readonly factors: FactorBook;
  readonly counts: CountBook;
  /** What is not in it, in words. */
  readonly problems: readonly string[];
}

const NO_PRICES = [["Item", "Price"]];
const NO_LABOR = [["Operation", "Minutes"]];

/** Takes a job off and prices it. @throws InputError when a range lacks a needed column */
export function pricedJob(runs: unknown, ranges: JobLists): PricedJob {
  const job = buildJob({ runs, ...ranges });
  const stock = stockIn(ranges.stock);
  const prices = readPrices(ranges.prices ?? NO_PRICES);
  const labor = readLabor(ranges.labor ?? NO_LABOR);
  const factors = readFactors(ranges.factors);
  const counts = countsIn(ranges.counts, job.rules);
  const { works, problems } = jobWork(job);
  const allowances = readAllowances(ranges.allowances);
  const taken = takeoffLines(works, [], job.rules, stock, counts);
  const lines = addAllowances(taken, allowances, prices).map((line) => priceLine(line, { prices, labor }));
  const { tellIdle = true } = ranges;
  const idle = tellIdle ? [...idleAllowances(taken, allowances), ...unusedTypicals(job, ranges.counts)] : [];
  return {
    ...{ job, works, lines, labor, factors, counts },
    problems: [
      ...lacking(
        LACKING.prices,
        lines.flatMap((entry) => entry.noPrice ?? []),
      ),
      ...lacking(
        LACKING.labor,
        lines.flatMap((entry) => entry.noLabor),
      ),
      ...problems.map(({ name, message }) => `not counted: ${name}: ${message}`),
      ...notRead(job, job.rules, stock, prices, labor, factors, counts, allowances).map(
        (words) => `not read: ${words}`,
      ),
      ...idle.map((words) => `not read: ${words}`),
    ],
  };
}

/** All that lacks something, in one line. */
const lacking = (what: string, names: readonly string[]): string[] =>
  names.length === 0 ? [] : [`${what}: ${[...new Set(names)].join(", ")}`];
