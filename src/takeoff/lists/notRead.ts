import type { RunRow } from "../../shop/run/runsTable";
import type { ShoeBook } from "../../shop/shoe/shoeBook";
import { zeroQuantities } from "../../shop/run/zeroQuantity";

/**
 * What of the user's tables could not be used, or is used otherwise than it may be meant, in words: shoes first, then the
 * other tables in their order, then the runs.
 */
export const notRead = (
  runs: readonly RunRow[],
  shoes: ShoeBook,
  ...tables: readonly ({ readonly problems: readonly string[] } | undefined)[]
): string[] => [
  ...shoes.problems.map(({ message }) => message),
  ...tables.flatMap((table) => table?.problems ?? []),
  ...zeroQuantities(runs),
];
