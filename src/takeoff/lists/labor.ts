import { rememberTable } from "../../memory/tables";
import { toNumber } from "../../units/number";
import type { Item } from "../amounts/item";
import { labelKey } from "../amounts/lineBook";
import { lookUpKey } from "../../units/lookUpKey";
import { isUnfilled, readValueList, type ValueList } from "./valueList";

/** The user's minutes for each operation. No labor units are built in. */
export interface LaborBook {
  /**
   * Minutes for one of an item, from the most particular operation the user has: the item by its name, then the
   * operation with raceway and size, with the raceway, with the size, alone.
   *
   * @param operation what is done with it: its kind, or for a bend the kind of bend
   * @returns minutes, or undefined when the user has none
   */
  minutesFor(item: Pick<Item, "name" | "kind" | "raceway" | "size">, operation: string): number | undefined;
  readonly names: ValueList<unknown>["names"];
  /** Rows that could not be read, in words. */
  readonly problems: readonly string[];
  readonly empty: boolean;
}

/**
 * Reads a Labor range: Operation, Minutes. Minutes that are empty or 0 wait to be filled in; what takes no time is `none`.
 */
export const readLabor: (range: unknown) => LaborBook = rememberTable((range) => {
  const list = readValueList(range, "labor", "Operation", [{ name: "Minutes", required: true, zero: true }], (row) => {
    const cell = row.get("Minutes");
    if (isUnfilled(cell)) return undefined;
    return lookUpKey(cell) === "none" ? 0 : toNumber(cell, "Minutes", { min: 0 });
  });
  const known = new Map<string, number | undefined>();
  return {
    ...list,
    minutesFor(item, operation) {
      const key = labelKey([item.name, operation]);
      if (!known.has(key)) known.set(key, list.find(...operationNames(item, operation)));
      return known.get(key);
    },
  };
});

/** What an operation may be called in a Labor table, the most particular first. */
export function operationNames(
  { name, kind, raceway, size }: Parameters<LaborBook["minutesFor"]>[0],
  operation: string,
): string[] {
  const words = operation === kind ? [kind] : [operation, kind];
  const named = words.flatMap((word) => [`${raceway} ${size} ${word}`, `${raceway} ${word}`, `${size} ${word}`, word]);
  return operation === kind ? [name, ...named] : named;
}
