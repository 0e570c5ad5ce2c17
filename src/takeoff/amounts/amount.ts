import type { Item } from "./item";

/** How much of an item one run takes, before its Quantity multiplies it. */
export interface Amount {
  readonly item: Item;
  /** [ft] or pieces, as the item's unit says */
  readonly each: number;
  /** How many times, where that is not the run's Quantity. */
  readonly times?: number;
  /** What the work is called in the Labor table, when that is more than the item's kind: the kind of a bend. */
  readonly operation?: string;
  readonly note?: string;
}

/** Amounts above zero. */
export const someOf = (amounts: readonly Amount[]): Amount[] => amounts.filter(({ each }) => each > 0);
