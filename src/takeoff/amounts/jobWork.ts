import { buildRunWith } from "../../shop/run/buildRun";
import type { Run, RunRow } from "../../shop/run/runsTable";
import type { ShoeBook } from "../../shop/shoe/shoeBook";
import { isUserError } from "../../units/errors";
import { elbowRule } from "./elbowRule";
import { compareText } from "../../units/naturalOrder";
import type { RuleBook } from "../../rules/rules";
import { runWork, type RunWork } from "./runWork";

/** A run, or a part of one, that could not be counted, and why. */
export interface RunProblem {
  readonly name: string;
  readonly part: "run" | "conductors";
  readonly message: string;
}

/** A whole job: what its runs take, and the runs that could not be counted. */
export interface JobWork {
  /** In an order of their own, so that the order of the rows changes no result, not by the last digit. */
  readonly works: readonly RunWork[];
  readonly problems: readonly RunProblem[];
}

/** Works every run of a job out. */
export function jobWork(rows: readonly RunRow[], shoes: ShoeBook, rules: RuleBook): JobWork {
  const elbows = elbowRule(rules);
  const works: RunWork[] = [];
  const problems: RunProblem[] = [];
  for (const row of rows) {
    if ("problem" in row) {
      problems.push({ name: row.name, part: "run", message: row.problem });
      continue;
    }
    try {
      const { run } = row;
      const work = runWork(buildRunWith(run, shoes, elbows), rules);
      works.push(work);
      if (work.noConductors)
        problems.push({ name: `conductors of ${run.name}`, part: "conductors", message: work.noConductors });
    } catch (error) {
      if (!isUserError(error)) throw error;
      problems.push({ name: row.run.name, part: "run", message: error.message });
    }
  }
  const sorted = works.map((work) => ({ work, key: runKey(work.run) })).sort((a, b) => compareText(a.key, b.key));
  return { works: sorted.map(({ work }) => work), problems };
}

/** Every cell of a run but its place in the table. */
export const runKey = ({ rowNumber: _place, ...cells }: Run): string => JSON.stringify(Object.values(cells));
