import { InputError } from "../../units/errors";
import { stockIn, type StockBook } from "../cuts/cutStock";
import { readBy, RUN_GROUP_NAMES } from "../amounts/groupBy";

/** How an order is put together: its groups, or the stock it starts from. */
export interface Order {
  readonly by: readonly string[];
  readonly stock: StockBook | undefined;
}

/**
 * Reads the groups and the stock of an order; it has one or the other.
 * @throws InputError when `by` names no column, when the stock lacks a needed one, or when both are given
 */
export function readOrder(ranges: { readonly by?: unknown; readonly stock?: unknown }): Order {
  const by = readBy(ranges.by, RUN_GROUP_NAMES, []);
  const stock = stockIn(ranges.stock);
  if (stock && by.length > 0) {
    throw new InputError(
      `stock must be left out where the order has groups, for what is on hand belongs to none; got by ${by.join(", ")}.`,
    );
  }
  return { by, stock };
}
