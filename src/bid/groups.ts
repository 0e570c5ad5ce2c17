import { compareGroups, groupCell } from "../takeoff/amounts/groupBy";
import type { RowWork } from "../takeoff/amounts/jobWork";
import { labelKey } from "../takeoff/amounts/lineBook";

/** Cells of a group, one for each column that is grouped by. */
export type Group = readonly string[];

/**
 * The groups of a job in their order, each once; one without cells where nothing is grouped by.
 * @param more groups of other tables
 */
export function groupsOf(works: readonly RowWork[], by: readonly string[], more: readonly Group[] = []): Group[] {
  const all = [...works.map(({ run }) => by.map((column) => groupCell(run, column))), ...more];
  const groups = [...new Map(all.map((cells) => [labelKey(cells), cells])).values()];
  if (groups.length === 0) return [by.map(() => "")];
  return groups.sort((a, b) => isBlank(a) - isBlank(b) || compareGroups(by, a, b));
}

/** What belongs to no group stands last. */
const isBlank = (cells: Group): number => Number(cells.every((cell) => cell === ""));
