import { stockIn, toBuy, type StockBook } from "../cuts/cutStock";
import { readBy, RUN_GROUP_NAMES } from "../amounts/groupBy";

/** How an order is put together: its groups, and the stock it starts from. */
export interface Order {
  readonly by: readonly string[];
  readonly stock: StockBook | undefined;
  /** Said of an order in groups that has a stock. */
  readonly notes: readonly string[];
}

/**
 * Reads the groups and the stock of an order. What is on hand belongs to no one group: an order in groups has lengths and
 * prices from the stock, and takes nothing from the rack.
 *
 * @throws InputError when `by` names no column, or the stock lacks a needed one
 */
export function readOrder(ranges: { readonly by?: unknown; readonly stock?: unknown }): Order {
  const by = readBy(ranges.by, RUN_GROUP_NAMES, []);
  const stock = stockIn(ranges.stock);
  if (by.length === 0 || !stock) return { by, stock, notes: [] };
  const notes = ["sticks are counted within each group, none of them taken from what is on hand"];
  return { by, stock: toBuy(stock), notes };
}
