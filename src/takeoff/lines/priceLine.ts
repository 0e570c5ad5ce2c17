import { toCent } from "../../units/money";
import type { TakeoffLine } from "../amounts/lineBook";
import type { LaborBook } from "../lists/labor";
import type { PriceBook } from "../lists/prices";
import { lineHours } from "./lineHours";

/** The user's lists that a take-off is priced and timed by. */
export interface Lists {
  readonly prices?: PriceBook | undefined;
  readonly labor?: LaborBook | undefined;
}

/** A line with its price and labor, or the words for what is missing. */
export interface PricedLine {
  readonly line: TakeoffLine;
  readonly unitPrice: number | null;
  /** To the cent, as it is printed: the total is the sum of what one reads. */
  readonly extension: number | null;
  readonly hours: number | null;
  readonly notes: readonly string[];
  /** Names of what has no price, and of work that has no minutes. */
  readonly noPrice: string | null;
  readonly noLabor: readonly string[];
}

/** Prices a line and times it, by the lists there are. */
export function priceLine(line: TakeoffLine, { prices, labor }: Lists): PricedLine {
  const price = prices && line.item.bought && line.quantity > 0 ? prices.priceOf(line.item) : undefined;
  const work = labor ? lineHours(line.item, line.operations, labor) : undefined;
  const unitPrice = price?.unitPrice ?? null;
  return {
    line,
    unitPrice,
    extension: unitPrice === null ? null : toCent(unitPrice * line.quantity),
    hours: work?.hours ?? null,
    notes: [...line.notes, ...(price?.note ? [price.note] : [])],
    noPrice: price && unitPrice === null ? (line.item.pricedAs ?? line.item.name) : null,
    noLabor: line.item.kind === "stick" ? [] : (work?.missing ?? []),
  };
}
