import { sameList, sameParts } from "../../memory/lists";
import { remember } from "../../memory/remember";
import type { RuleBook } from "../../rules/rules";
import { builtRows, unbuiltRows, type BuiltRow, type Job } from "../../shop/job/job";
import type { Run } from "../../shop/run/runsTable";
import { isUserError } from "../../units/errors";
import { compareText } from "../../units/names/naturalOrder";
import { runWork, type RunWork } from "./runWork";

/** A run, or a part of one, that could not be counted, and why. */
export interface RunProblem {
  readonly name: string;
  readonly part: "run" | "conductors";
  readonly message: string;
}

/** What the run of a row takes. */
export interface RowWork extends RunWork {
  readonly row: BuiltRow;
  /** How many of each piece are still to be made, where some are. */
  readonly left?: readonly number[];
}

/** A whole job: what its runs take, and the runs that could not be counted. */
export interface JobWork {
  /** In an order of their own, so that the order of the rows changes no result, not by the last digit. */
  readonly works: readonly RowWork[];
  readonly problems: readonly RunProblem[];
}

/** What every run of a job takes. */
export const jobWork: (job: Job) => JobWork = remember((job) => {
  const works: RowWork[] = [];
  const problems: (RunProblem & { rowNumber: number })[] = unbuiltRows(job).map(({ rowNumber, name, problem }) => ({
    ...{ rowNumber, name, part: "run", message: problem },
  }));
  for (const row of builtRows(job)) {
    const { rowNumber, name } = row;
    try {
      const work = rowWork(row, job.rules);
      works.push(work);
      if (work.noConductors)
        problems.push({ rowNumber, name: `conductors of ${name}`, part: "conductors", message: work.noConductors });
    } catch (error) {
      if (!isUserError(error)) throw error;
      problems.push({ rowNumber, name, part: "run", message: error.message });
    }
  }
  const sorted = works.map((work) => ({ work, key: runKey(work.run) })).sort((a, b) => compareText(a.key, b.key));
  return {
    works: sameList(sorted.map(({ work }) => work)),
    problems: problems.sort((a, b) => a.rowNumber - b.rowNumber),
  };
});

/** Rules of a row that are kept: with others it takes something else. */
const KEPT = 3;

const rowWork = remember((row: BuiltRow, rules: RuleBook): RowWork => ({ ...runWork(row.built, rules), row }), {
  most: KEPT,
});

/** Every cell of a run. */
export const runKey: (run: Run) => string = remember((run) => JSON.stringify(Object.values(run)));

/** Runs by raceway and size. An edit of one run leaves the parts of all other sizes the same objects. */
export const partsBySize = remember((works: readonly RowWork[]) => sameParts(works, ({ sizeKey }) => sizeKey));

/** Runs of one raceway and size by the stick they ask for. */
export const partsByStick = remember((works: readonly RowWork[]) => sameParts(works, ({ run }) => String(run.stick)));
