import type { Item } from "../amounts/item";
import type { LaborBook } from "../lists/labor";

/** Labor of a line: what the user's minutes come to, and the operations he has none for. */
export interface LineHours {
  /** Null when the user has minutes for none of it. */
  readonly hours: number | null;
  readonly missing: readonly string[];
}

/** @param operations quantity by operation */
export function lineHours(item: Item, operations: ReadonlyMap<string, number>, labor: LaborBook): LineHours {
  let minutes = 0;
  const missing: string[] = [];
  for (const [operation, quantity] of operations) {
    const each = labor.minutesFor(item, operation);
    if (each === undefined) missing.push(operation);
    else minutes += each * quantity;
  }
  return { hours: missing.length === operations.size ? null : minutes / 60, missing: missing.sort() };
}
