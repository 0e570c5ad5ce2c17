import { remember } from "../../memory/remember";
import { readRules, type RuleBook } from "../../rules/rules";
import { RouteError } from "../../route/text/routeError";
import { isUserError } from "../../units/errors";
import { buildRunWith } from "../run/buildRun";
import type { BuiltRun } from "../run/builtRun";
import { whyNotOf, type WhyNot } from "./alternates";
import { fittingRule, type FittingRule } from "../fittings/fittingRule";
import { rackRows } from "./rackRuns";
import { placedRows } from "./typicals";
import { readRuns, type Run, type RunRow } from "../run/runsTable";
import { readShoes, type ShoeBook } from "../shoe/shoeBook";

/** The ranges a job is read from; what is left out has its built-in values. */
export interface JobRanges {
  readonly runs: unknown;
  readonly shoes?: unknown;
  readonly rules?: unknown;
  readonly which?: WhichRows;
  /** What the runs range is called in messages; `runs` where nothing is said. */
  readonly argument?: string;
}

/**
 * Which rows are worked out, how often. `job`: those of the alternates that are in the job, those of a typical once for each
 * area where it is placed. `any alternate`: the same with every alternate. `as written`: every row, once.
 */
export type WhichRows = "job" | "any alternate" | "as written";

/** Where a row stands in the Runs range (1 for the first), and the name it goes by. */
export interface RowPlace {
  readonly rowNumber: number;
  readonly name: string;
}

interface Built {
  readonly built: BuiltRun;
}

interface NotBuilt {
  readonly problem: string;
  /** Step of the route it is about, and the problem without that step's number. */
  readonly step?: number;
  readonly stepProblem?: string;
}

/** A row that was worked out. */
export interface BuiltRow extends RowPlace, Built {
  readonly run: Run;
}

/** A row that was not, with the reason in words. */
export interface UnbuiltRow extends RowPlace, NotBuilt {
  /** Its cells, where they could be read. */
  readonly run?: Run;
}

export type JobRow = BuiltRow | UnbuiltRow;

/** A Runs range with its shoes and rules: every row worked out once, or told in words why not. */
export interface Job {
  /** In the order of the range. */
  readonly rows: readonly JobRow[];
  readonly shoes: ShoeBook;
  readonly rules: RuleBook;
}

export const isBuilt = (row: JobRow): row is BuiltRow => "built" in row;

/** The rows that were worked out. */
export const builtRows = ({ rows }: Job): BuiltRow[] => rows.filter(isBuilt);

/** The rows that were not. */
export const unbuiltRows = ({ rows }: Job): UnbuiltRow[] => rows.flatMap((row) => (isBuilt(row) ? [] : [row]));

/** The cells of every row whose cells could be read. */
export const readableRuns: (job: Job) => readonly Run[] = remember(({ rows }) => rows.flatMap(({ run }) => run ?? []));

/**
 * Reads a job and works every run of it out. A row that cannot be read or built keeps its place and hides no other.
 * @throws InputError when a range lacks a needed column
 */
export const buildJob = ({ runs, shoes, rules, argument, which = "job" }: JobRanges): Job =>
  jobOf(readRuns(runs, argument), readShoes(shoes), readRules(rules), which);

/** Works every row of a job out; the same rows, shoes and rules are the same job. */
export const jobOf: (rows: readonly RunRow[], shoes: ShoeBook, rules: RuleBook, which?: WhichRows) => Job = remember(
  (rows, shoes, rules, which = "job") => {
    const elbows = fittingRule(rules);
    const whyNot = which === "job" ? whyNotOf(rules) : undefined;
    const place = which === "as written" ? asWritten : placed;
    return {
      rows: rows
        .flatMap(rackRows)
        .flatMap((row) => leftOut(row, whyNot) ?? place(row, rules, (each) => buildRow(each, shoes, elbows))),
      shoes,
      rules,
    };
  },
);

/** The one row that a RUN function is asked about. @throws InputError when its arguments cannot be read */
export const buildOneRow = (run: Run, shoes: unknown, rules: unknown): JobRow =>
  buildRow({ rowNumber: 1, name: run.name, run }, readShoes(shoes), fittingRule(readRules(rules)));

function buildRow(row: RunRow, shoes: ShoeBook, elbows: FittingRule): JobRow {
  if (!row.run) return row;
  const { rowNumber, name, run } = row;
  const outcome = buildOrWords(run, shoes, elbows);
  return "built" in outcome ? builtRow(row, outcome.built) : { rowNumber, name, run, ...outcome };
}

/** A built row: the same object for a row that stands where it stood and is built as it was. */
const builtRow = remember(
  ({ rowNumber, name, run }: RunRow, built: BuiltRun): BuiltRow => ({ rowNumber, name, run: run!, built }),
  { most: 3 },
);

/** A row of an alternate that is not in the job, with why; undefined for any other. */
function leftOut(row: RunRow, whyNot: WhyNot | undefined): UnbuiltRow | undefined {
  const { rowNumber, name, run } = row;
  const problem = run?.alternate === undefined ? undefined : whyNot?.(run.alternate);
  return run && problem !== undefined ? { rowNumber, name, run, problem } : undefined;
}

type Place = (row: RunRow, rules: RuleBook, build: (row: RunRow) => JobRow) => JobRow | readonly JobRow[];

const asWritten: Place = (row, _rules, build) => build(row);

/** A row of a typical in each area where that is placed; with why, where it is placed nowhere. */
const placed: Place = (row, rules, build) => {
  if (!row.run?.typical) return build(row);
  const { rowNumber, name, run } = row;
  const rows = placedRows(row, rules);
  return typeof rows === "string" ? { rowNumber, name, run, problem: rows } : rows.map(build);
};

function buildOrWords(run: Run, shoes: ShoeBook, elbows: FittingRule): Built | NotBuilt {
  try {
    return { built: buildRunWith(run, shoes, elbows) };
  } catch (error) {
    if (!isUserError(error)) throw error;
    const at = error instanceof RouteError ? { step: error.step, stepProblem: error.words } : {};
    return { problem: error.message, ...at };
  }
}

/** The lines of every row of a job: those of a built one, or the one line that says why a row has none. */
export function linesOf<T>(
  { rows }: Job,
  lines: (built: BuiltRun) => readonly T[],
  words: (row: UnbuiltRow) => T,
): T[] {
  const all: T[] = [];
  for (const row of rows) {
    if (!isBuilt(row)) all.push(words(row));
    else for (const line of lines(row.built)) all.push(line);
  }
  return all;
}
