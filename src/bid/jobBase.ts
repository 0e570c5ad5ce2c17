import { buildJob } from "../shop/job/job";
import { compareGroups, groupCell } from "../takeoff/amounts/groupBy";
import { jobWork, type RowWork } from "../takeoff/amounts/jobWork";
import { labelKey, type TakeoffLine } from "../takeoff/amounts/lineBook";
import { priceLine, type PricedLine } from "../takeoff/lines/priceLine";
import { LACKING } from "../takeoff/lines/takeoffTable";
import { takeoffLines } from "../takeoff/lines/takeoffLines";
import { readLabor, type LaborBook } from "../takeoff/lists/labor";
import { notRead } from "../takeoff/lists/notRead";
import { readPrices } from "../takeoff/lists/prices";
import { stockIn } from "../takeoff/cuts/cutStock";
import { addCents, sharedCents, sumOf, type Cents } from "./amounts";
import { Shares } from "./shares";

/** What a bid may be given of the job besides the runs. */
export interface BaseRanges {
  readonly prices?: unknown;
  readonly labor?: unknown;
  readonly shoes?: unknown;
  readonly rules?: unknown;
  readonly stock?: unknown;
}

/** What a bid rests on: the whole job's take-off, priced once and told apart by groups afterwards. */
export interface JobBase {
  /** Cells of each group, in their order; one group without cells where nothing is grouped by. */
  readonly groups: readonly (readonly string[])[];
  readonly material: Cents;
  /** [h] by group */
  readonly hours: readonly number[];
  readonly pricedLines: number;
  /** What is not in it, in words. */
  readonly problems: readonly string[];
}

const NO_PRICES = [["Item", "Price"]];
const NO_LABOR = [["Operation", "Minutes"]];

/**
 * Material and hours of a job by groups. Sticks are bought for the whole job, whatever it is grouped by, so that the
 * groups add up to the ungrouped job to the cent. What no one run stands behind (sticks, the couplings that come with them)
 * is shared by the feet of conduit of its raceway and size; a box that several groups share is in the first of them.
 *
 * @param by columns of Runs
 * @param more groups of other tables
 */
export function jobBase(
  runs: unknown,
  by: readonly string[],
  ranges: BaseRanges,
  more: readonly (readonly string[])[] = [],
): JobBase {
  const job = buildJob({ runs, ...ranges });
  const stock = stockIn(ranges.stock);
  const prices = readPrices(ranges.prices ?? NO_PRICES);
  const labor = readLabor(ranges.labor ?? NO_LABOR);
  const { works, problems } = jobWork(job);
  const lines = takeoffLines(works, [], job.rules, stock).map((line) => priceLine(line, { prices, labor }));
  const groups = groupsOf(works, by, more);
  const shares = new Shares(works, by, groups);
  const nothing = groups.map(() => 0);
  return {
    groups,
    material: lines.reduce<Cents>(
      (sum, { line, extension }) =>
        extension === null ? sum : addCents(sum, sharedCents(extension, shares.ofLine(line))),
      nothing,
    ),
    hours: lines.reduce((sum, { line }) => addHours(sum, line, labor, shares), nothing),
    pricedLines: lines.filter(({ extension }) => extension !== null).length,
    problems: [
      ...lackingWords(lines),
      ...problems.map(({ name, message }) => `not counted: ${name}: ${message}`),
      ...notRead(job, job.rules, stock, prices, labor).map((words) => `not read: ${words}`),
    ],
  };
}

function groupsOf(
  works: readonly RowWork[],
  by: readonly string[],
  more: readonly (readonly string[])[],
): (readonly string[])[] {
  const all = [...works.map(({ run }) => by.map((column) => groupCell(run, column))), ...more];
  const groups = [...new Map(all.map((cells) => [labelKey(cells), cells])).values()];
  return groups.length === 0
    ? [by.map(() => "")]
    : groups.sort((a, b) => isBlank(a) - isBlank(b) || compareGroups(by, a, b));
}

/** What belongs to no group stands last. */
const isBlank = (cells: readonly string[]): number => Number(cells.every((cell) => cell === ""));

function addHours(hours: readonly number[], line: TakeoffLine, labor: LaborBook, shares: Shares): number[] {
  const sum = [...hours];
  for (const source of line.sources) {
    const minutes = labor.minutesFor(line.item, source.operation);
    if (minutes === undefined) continue;
    const weights = shares.ofSource(line, source);
    const all = sumOf(weights);
    weights.forEach((weight, place) => {
      sum[place]! += (((minutes * source.each * source.times) / 60) * weight) / all;
    });
  }
  return sum;
}

/** What has no price, and work that has no minutes, in one line each. */
function lackingWords(lines: readonly PricedLine[]): string[] {
  const noPrice = [...new Set(lines.flatMap((entry) => entry.noPrice ?? []))];
  const noLabor = [...new Set(lines.flatMap((entry) => entry.noLabor))];
  return [
    ...(noPrice.length > 0 ? [`${LACKING.prices}: ${noPrice.join(", ")}`] : []),
    ...(noLabor.length > 0 ? [`${LACKING.labor}: ${noLabor.join(", ")}`] : []),
  ];
}
