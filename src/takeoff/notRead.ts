import type { ShoeBook } from "../shop/shoeBook";

/** Rows of the user's tables that could not be used, in words: shoes first, then the others in their order. */
export const notRead = (
  shoes: ShoeBook,
  ...tables: readonly ({ readonly problems: readonly string[] } | undefined)[]
): string[] => [...shoes.problems.map(({ message }) => message), ...tables.flatMap((table) => table?.problems ?? [])];
