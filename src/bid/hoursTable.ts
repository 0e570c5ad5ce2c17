import { readBy } from "../takeoff/amounts/groupBy";
import { sumOf } from "./amounts";
import { groupsOf } from "./groups";
import { jobHours, type WorkHours } from "./jobHours";
import { pricedJob, type JobLists } from "./pricedJob";
import { COUNT_GROUPS } from "../takeoff/amounts/counts";
import { Shares } from "./shares";

type Cell = string | number;

/** Less of a quantity than this is none: what the shares of a whole leave [ft or pieces]. */
const NONE = 1e-9;

/** What a table of hours may be given besides the runs. */
export interface HoursRanges extends JobLists {
  readonly by?: unknown;
}

/**
 * Labor hours of a job as a table with a header row: each work of each group with its hours and what the conditions add, a
 * total to each group and one of all; then what has no minutes, in words.
 *
 * @throws InputError when a range lacks a needed column or `by` names none
 */
export function hoursTable(runs: unknown, ranges: HoursRanges = {}): Cell[][] {
  const by = readBy(ranges.by, COUNT_GROUPS, []);
  const job = pricedJob(runs, { ...ranges, prices: undefined });
  const groups = groupsOf(job, by);
  const works = jobHours(job, new Shares(job.works, by, groups));
  const blank = by.map(() => "");
  const { problems } = job;
  return [
    [...by, "Work", "Unit", "Quantity", "Hours", "By factors", "Hours in all"],
    ...groups.flatMap((cells, place) => groupRows(cells, place, works)),
    ...(by.length > 0 ? [totalRow(blank, works, (parts) => sumOf(parts))] : []),
    ...problems
      .filter((words) => !words.startsWith("without a price"))
      .map((words) => [...blank, `note: ${words}`, "", "", "", "", ""]),
  ];
}

function groupRows(cells: readonly string[], place: number, works: readonly WorkHours[]): Cell[][] {
  const here = works.filter(({ quantity, added }) => [quantity, added].some((parts) => Math.abs(parts[place]!) > NONE));
  return [
    ...here.map(({ work, unit, quantity, hours, added }): Cell[] => [
      ...[...cells, work, unit, quantity[place]!],
      ...[hours[place]!, added[place]!, hours[place]! + added[place]!],
    ]),
    totalRow(cells, here, (parts) => parts[place]!),
  ];
}

function totalRow(cells: readonly string[], works: readonly WorkHours[], of: (parts: number[]) => number): Cell[] {
  const hours = sumOf(works.map((work) => of(work.hours)));
  const added = sumOf(works.map((work) => of(work.added)));
  return [...cells, "Total", "", "", hours, added, hours + added];
}
