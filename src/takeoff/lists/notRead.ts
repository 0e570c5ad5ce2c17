import { readableRuns, type Job } from "../../shop/job/job";
import { zeroQuantities } from "../../shop/run/zeroQuantity";

/**
 * What of the user's tables could not be used, or is used otherwise than it may be meant, in words: shoes first, then the
 * other tables in their order, then the runs.
 */
export const notRead = (
  job: Job,
  ...tables: readonly ({ readonly problems: readonly string[] } | undefined)[]
): string[] => [
  ...job.shoes.problems.map(({ message }) => message),
  ...tables.flatMap((table) => table?.problems ?? []),
  ...zeroQuantities(readableRuns(job)),
];
