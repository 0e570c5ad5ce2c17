import type { Edition } from "../../raceway/code/rules";
import { buildJob, type JobRanges } from "../job/job";
import { checkRow, quantityFindings } from "./checks";
import { unnamedRows } from "./nameChecks";
import type { Finding } from "../code/finding";

/**
 * Every finding of one row of a Runs table by all of its cells: what JOB.CHECKS says of it, but for what its shoes, its
 * rules and the names of other rows bring.
 *
 * @param headers the table's header row; @param cells the row, its cells in the same order
 * @throws InputError when a needed column is missing
 */
export function checkCells(
  headers: readonly unknown[][],
  cells: readonly unknown[][],
  given: Pick<JobRanges, "shoes" | "rules">,
  edition: Edition,
): Finding[] {
  const job = buildJob({ ...given, runs: [...headers, ...cells], argument: "headers", which: "as written" });
  return [
    ...quantityFindings(job),
    ...unnamedRows(job, "the row"),
    ...job.rows.flatMap((row) => checkRow(row, edition, job.rules)),
  ];
}
