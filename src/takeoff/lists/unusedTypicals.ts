import type { Job } from "../../shop/job/job";
import { idleTypicals } from "../../shop/job/typicals";
import { readCounts } from "../amounts/counts";
import { rowCell } from "../amounts/lineBook";

/** Typicals that the rules of a job place and no row of its runs or counts belongs to, in words. */
export function unusedTypicals({ rows, rules }: Job, counts: unknown): string[] {
  if (rules.typicals.length === 0) return [];
  const ofRuns = rows.flatMap(({ run }) => run?.typical ?? []);
  const ofCounts = readCounts(counts).counts.map(({ row }) => rowCell(row, "Typical"));
  return idleTypicals(rules, [...ofRuns, ...ofCounts]);
}
