import { addParts, sharedCents, type Cents } from "./amounts";
import { groupsOf, type Group } from "./groups";
import { jobHours } from "./jobHours";
import { pricedJob, type JobLists } from "./pricedJob";
import { Shares } from "./shares";

/** What a bid rests on: the whole job's take-off, priced once and told apart by groups afterwards. */
export interface JobBase {
  /** In their order; one group without cells where nothing is grouped by. */
  readonly groups: readonly Group[];
  readonly material: Cents;
  /** [h] by group, as the Labor table has them */
  readonly hours: readonly number[];
  /** [h] by group, what the Factors table adds to them */
  readonly addedHours: readonly number[];
  readonly pricedLines: number;
  /** What is not in it, in words. */
  readonly problems: readonly string[];
}

/**
 * Material and hours of a job by groups. Sticks are bought for the whole job, whatever it is grouped by, so that the
 * groups add up to the ungrouped job to the cent. What no one run stands behind (sticks, the couplings that come with them)
 * is shared by the feet of conduit of its raceway and size; a box that several groups share is in the first of them.
 *
 * @param by columns of Runs
 * @param more groups of other tables
 */
export function jobBase(runs: unknown, by: readonly string[], ranges: JobLists, more: readonly Group[] = []): JobBase {
  const job = pricedJob(runs, ranges);
  const groups = groupsOf(job, by, more);
  const shares = new Shares(job.works, by, groups);
  const hours = jobHours(job, shares);
  const priced = job.lines.flatMap(({ line, extension }) => (extension === null ? [] : { line, extension }));
  return {
    groups,
    material: priced.reduce<Cents>(
      (sum, { line, extension }) => addParts(sum, sharedCents(extension, shares.ofLine(line))),
      shares.none(),
    ),
    hours: hours.map((work) => work.hours).reduce(addParts, shares.none()),
    addedHours: hours.map((work) => work.added).reduce(addParts, shares.none()),
    pricedLines: priced.length,
    problems: job.problems,
  };
}
