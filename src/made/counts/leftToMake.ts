import { remember } from "../../memory/remember";
import type { BuiltRow, Job } from "../../shop/job/job";
import type { LeftToMake, Told } from "../../takeoff/amounts/leftToMake";
import { readMade, type MadeBook } from "../records/madeTable";
import { tallyJob } from "./tally";

/** What stands on finished pieces is not left out; said once, where something is. */
const WHOLE =
  "conduit, cuts and bends of these are left out; couplings, fittings, straps, boxes and conductors count whole, those that came with sticks already cut too";

/**
 * What of a job a Made range leaves to be made, for a take-off or a cutting plan; undefined where no range is given, so
 * that all of it is.
 */
export function leftToMake(made: unknown): LeftToMake | undefined {
  if (made === null || made === undefined) return undefined;
  return (job) => leftOf(job, readMade(made));
}

const leftOf = remember((job: Job, book: MadeBook): ReturnType<LeftToMake> => {
  const { pieces, strangers } = tallyJob(job, book);
  const left = new Map<BuiltRow, number[]>();
  for (const piece of pieces) left.set(piece.row, [...(left.get(piece.row) ?? []), piece.left]);
  const count = pieces.reduce((sum, piece) => sum + piece.made, 0);
  const told: Told[] = [
    ...(count > 0 ? [{ what: `made: ${count} ${count === 1 ? "piece" : "pieces"}`, words: WHOLE }] : []),
    ...strangers.map(({ record, reason }) => ({
      what: `made row ${record.rowNumber}: ${record.piece}`,
      words: reason,
    })),
    ...book.problems.map((problem) => ({ what: "not read", words: problem })),
  ];
  return { left, told };
});
