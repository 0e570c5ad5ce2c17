import { readBy } from "../takeoff/amounts/groupBy";
import { readBid } from "./bidTable";
import { moneyOf, sumOf, type Cents } from "./amounts";
import { cascade, type Recap, type RecapLine } from "./cascade";
import { readRules } from "../rules/rules";
import { costsIn } from "./costs";
import { jobBase } from "./jobBase";
import type { JobLists } from "./pricedJob";
import { COUNT_GROUPS } from "../takeoff/amounts/counts";
import { labelKey } from "../takeoff/amounts/lineBook";

type Cell = string | number;

/** What a recap may be given besides the runs and the bid. */
export interface RecapRanges extends JobLists {
  /** Costs of the job. */
  readonly costs?: unknown;
  /** Columns to tell the bid apart by. */
  readonly by?: unknown;
}

/** A bid worked out, with what its groups are called. */
export interface JobRecap extends Recap {
  readonly groups: readonly string[];
}

/**
 * Works a job's bid out: material and hours of the take-off, job costs, then the lines of the Bid table in their order.
 * @throws InputError when a range lacks a needed column or `by` names none
 */
export function recap(runs: unknown, bid: unknown, ranges: RecapRanges = {}): JobRecap {
  const by = readBy(ranges.by, COUNT_GROUPS, []);
  const table = readBid(bid);
  const { costs, problems } = costsIn(ranges.costs, readRules(ranges.rules));
  const base = jobBase(
    runs,
    by,
    ranges,
    costs.map(({ cell }) => by.map(cell)),
  );
  const places = new Map(base.groups.map((cells, place) => [labelKey(cells), place]));
  const costCents = costs.reduce<Cents>(
    (sum, { cents, cell }) => {
      const place = places.get(labelKey(by.map(cell)));
      return sum.map((own, other) => (other === place ? own + cents : own));
    },
    base.groups.map(() => 0),
  );
  const worked = cascade(table.lines, {
    ...{ material: base.material, addedHours: base.addedHours, costs: costCents },
    hours: base.hours.map((hours, place) => hours + base.addedHours[place]!),
    materialWords: `${counted(base.pricedLines, "priced line")} of the take-off`,
    costWords: counted(costs.length, "job cost"),
  });
  return {
    ...worked,
    groups: base.groups.map((cells) => cells.map((cell, at) => cell || `no ${by[at]!.toLowerCase()}`).join(", ")),
    problems: [
      ...base.problems,
      ...[...table.problems, ...problems].map((words) => `not read: ${words}`),
      ...worked.problems,
    ],
  };
}

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;

/** The recap as a table with a header row: a line each, group by group where there are groups, then what is not in it. */
export function recapTable(runs: unknown, bid: unknown, ranges: RecapRanges = {}): Cell[][] {
  const worked = recap(runs, bid, ranges);
  const grouped = worked.groups.length > 1 || worked.groups[0] !== "";
  const groups = grouped ? worked.groups : [];
  const lacks = worked.problems.length > 0;
  return [
    ["Line", "Basis", "Amount", ...groups],
    ...worked.lines.map((line, at) => lineCells(line, groups, lacks && at === worked.lines.length - 1)),
    ...worked.problems.map((problem): Cell[] => ["note", problem, "", ...groups.map(() => "")]),
  ];
}

function lineCells({ name, basis, amount }: RecapLine, groups: readonly string[], lacks: boolean): Cell[] {
  const words = lacks ? [basis, "without what stands below"].filter(Boolean).join("; ") : basis;
  return [
    name,
    words,
    amount ? moneyOf(sumOf(amount)) : "",
    ...groups.map((_, place) => (amount ? moneyOf(amount[place]!) : "")),
  ];
}
