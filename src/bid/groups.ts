import { compareGroups } from "../takeoff/amounts/groupBy";
import { labelKey, rowCell } from "../takeoff/amounts/lineBook";
import type { PricedJob } from "./pricedJob";

/** Cells of a group, one for each column that is grouped by. */
export type Group = readonly string[];

/**
 * The groups of a job in their order, each once; one without cells where nothing is grouped by.
 * @param more groups of other tables
 */
export function groupsOf(
  { works, counts }: Pick<PricedJob, "works" | "counts">,
  by: readonly string[],
  more: readonly Group[] = [],
): Group[] {
  const rows = [...works.map(({ row }) => row), ...counts.counts.map(({ row }) => row)];
  const all = [...rows.map((row) => by.map((column) => rowCell(row, column))), ...more];
  const groups = [...new Map(all.map((cells) => [labelKey(cells), cells])).values()];
  if (groups.length === 0) return [by.map(() => "")];
  return groups.sort((a, b) => isBlank(a) - isBlank(b) || compareGroups(by, a, b));
}

/** What belongs to no group stands last. */
const isBlank = (cells: Group): number => Number(cells.every((cell) => cell === ""));
