import { groupsOf } from "../bid/groups";
import { jobHours } from "../bid/jobHours";
import { pricedJob, type JobLists } from "../bid/pricedJob";
import { recap } from "../bid/recap";
import { Shares } from "../bid/shares";
import { feetByArea, feetBySize } from "./footage";
import { hoursByCrew, hoursByWeek, type GroupHours } from "./hours";
import { materialByClass, priceByLine } from "./money";
import type { OverviewPart } from "./part";
import { progressPart } from "./progressPart";
import { wasteBySize } from "./waste";

type Cell = string | number;

/** What an overview may be given besides the runs. */
export interface OverviewRanges extends JobLists {
  readonly made?: unknown;
  readonly bid?: unknown;
  readonly costs?: unknown;
}

export interface Overview {
  readonly parts: readonly OverviewPart[];
  /** What is not in it, in words. */
  readonly problems: readonly string[];
}

export const OVERVIEW_HEADERS = ["Part", "What", "Unit", "Amount", "Note"] as const;

/**
 * A job at a glance: feet of conduit by size and by area, material by class, the lines of the bid, hours by crew and by week,
 * waste, progress. Every number is that of the take-off, the recap, the hours, the cutting plan and the progress.
 *
 * @throws InputError when a range lacks a needed column
 */
export function overview(runs: unknown, ranges: OverviewRanges = {}): Overview {
  const job = pricedJob(runs, ranges);
  const hours = (column: string): GroupHours[] => {
    const groups = groupsOf(job, [column]);
    const works = jobHours(job, new Shares(job.works, [column], groups));
    return groups.map(([group = ""], place) => ({
      group,
      hours: works.reduce((sum, work) => sum + work.hours[place]! + work.added[place]!, 0),
    }));
  };
  const price = hasRows(ranges.bid) ? recap(runs, ranges.bid, ranges) : undefined;
  return {
    parts: [
      feetBySize(job.lines),
      feetByArea(job),
      materialByClass(job.lines),
      priceByLine(price),
      hoursByCrew(hours("Crew")),
      hoursByWeek(hours("Date")),
      wasteBySize(job.job, ranges.stock),
      progressPart(runs, ranges),
    ],
    problems: price?.problems ?? job.problems,
  };
}

const hasRows = (range: unknown): boolean => Array.isArray(range) && range.length > 1;

/** The same as a table with a header row: a line to each bar; a part with nothing in it says why. */
export function overviewTable(runs: unknown, ranges: OverviewRanges = {}): Cell[][] {
  const { parts, problems } = overview(runs, ranges);
  return [
    [...OVERVIEW_HEADERS],
    ...parts.flatMap(({ name, unit, bars, note }): Cell[][] =>
      bars.length === 0
        ? [[name, "nothing yet", "", "", note]]
        : bars.map((bar, at) => [name, bar.label, bar.unit ?? unit, bar.amount, bar.note ?? (at === 0 ? note : "")]),
    ),
    ...problems.map((problem): Cell[] => ["note", "", "", "", problem]),
  ];
}
