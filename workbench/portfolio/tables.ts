import type { CellValue } from "../engine";
import type { Answer } from "./threads";

type Line = CellValue[];

/** What is known of one file. */
export interface Read {
  /** Below the folder, with / between its parts. */
  file: string;
  answer: Answer;
}

/** The files that are written, each a table with its header row. */
export interface PortfolioTables {
  items: Line[];
  workbooks: Line[];
  differences: Line[];
  problems: Line[];
}

/**
 * The tables of a portfolio.
 * @param left files of the folder that no reader is for
 * @param version of Raceway Ledger, which worked it out
 */
export function portfolioTables(read: readonly Read[], left: readonly string[], version: string): PortfolioTables {
  const items: Line[] = [["File", "Job", "Issue", "Item", "Unit", "Quantity", "Hours", "Hash", "Version"]];
  const workbooks: Line[] = [
    ["File", "Jobs", "Runs", "Items", "Results", "Different", "Not compared", "Problems", "Hash", "Version"],
  ];
  const differences: Line[] = [["File", "Sheet", "Cell", "Saved", "Now"]];
  const problems: Line[] = [["File", "Where", "What"]];
  const first = new Map<string, string>();
  for (const file of left) problems.push([file, "file", "It is no .xlsx file: save it as one to have it read."]);
  for (const { file, answer } of read) {
    const { hash, reading } = answer;
    if (!reading) {
      problems.push([file, "file", answer.problem]);
      continue;
    }
    const twin = first.get(hash);
    if (twin) problems.push([file, "file", `It is the same as ${twin}, byte for byte: its job is in the items twice.`]);
    else first.set(hash, file);
    for (const { job, issue, item, unit, quantity, hours } of reading.items) {
      items.push([file, job, issue, item, unit, quantity, hours, hash, version]);
    }
    for (const { sheet, cell, was, now } of reading.differences) differences.push([file, sheet, cell, was, now]);
    for (const { where, what } of reading.problems) problems.push([file, where, what]);
    const { jobs, runs, compared, different, notCompared } = reading;
    const counts = [runs, reading.items.length, compared, different, notCompared, reading.problems.length];
    workbooks.push([file, jobs.join("; "), ...counts, hash, version]);
  }
  return { items, workbooks, differences, problems };
}
