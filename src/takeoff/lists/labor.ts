import { rememberTable } from "../../memory/tables";
import { readTable, type TableRow } from "../../table/headerTable";
import { InputError } from "../../units/errors";
import { toNumber } from "../../units/number";
import type { Item } from "../amounts/item";
import { labelKey } from "../amounts/lineBook";
import { lookUpKey } from "../../units/names/lookUpKey";
import { readPriceUnit, type PriceUnit } from "./priceUnit";
import { isUnfilled, readValueList, type ValueList } from "./valueList";

/** What labor needs to know of an item. */
export type Worked = Pick<Item, "name" | "kind" | "unit" | "raceway" | "size">;

/** The user's minutes for each operation. No labor units are built in. */
export interface LaborBook {
  /**
   * Minutes for one of an item, from the most particular operation the user has: the item by its name, then the
   * operation with raceway and size, with the raceway, with the size, alone.
   *
   * @param operation what is done with it: its kind, or for a bend the kind of bend
   * @returns minutes, or undefined when the user has none
   */
  minutesFor(item: Worked, operation: string): number | undefined;
  /** Why there are none although the list has the operation, in words; empty where it has not. */
  whyNone(item: Worked, operation: string): string;
  readonly names: ValueList<unknown>["names"];
  /** Rows that could not be read, in words. */
  readonly problems: readonly string[];
  readonly empty: boolean;
}

/** Labor as the user wrote it. */
interface Labor {
  /** For one of the unit. */
  readonly minutes: number;
  readonly of: PriceUnit["of"];
}

const MINUTES = { name: "Minutes", zero: true };
const HOURS = { name: "Hours", zero: true };

/**
 * Reads a Labor range: Operation, and Minutes or Hours for its Unit (each where it is empty, ft, C, M, C ft, M ft). Minutes
 * that are empty or 0 wait to be filled in; what takes no time is `none`.
 */
export const readLabor: (range: unknown) => LaborBook = rememberTable((range) => {
  const byHours = readTable(range, "labor", [HOURS]).has("Hours");
  const columns = [{ ...MINUTES, required: !byHours }, HOURS, { name: "Unit" }];
  const list = readValueList(range, "labor", "Operation", columns, readTime);
  const known = new Map<string, Labor | undefined>();
  const laborFor = (item: Worked, operation: string): Labor | undefined => {
    const key = labelKey([item.name, operation]);
    if (!known.has(key)) known.set(key, list.find(...operationNames(item, operation)));
    return known.get(key);
  };
  const fits = (labor: Labor, { unit }: Worked): boolean => labor.of === null || labor.of === unit;
  return {
    ...list,
    minutesFor(item, operation) {
      const labor = laborFor(item, operation);
      return labor && fits(labor, item) ? labor.minutes : undefined;
    },
    whyNone(item, operation) {
      const labor = laborFor(item, operation);
      return labor && !fits(labor, item) ? `no minutes per ${item.unit}: labor has them per ${labor.of}` : "";
    },
  };
});

function readTime(row: TableRow): Labor | undefined {
  const [minutes, hours] = [row.get("Minutes"), row.get("Hours")];
  const { of, per } = readPriceUnit(row.get("Unit"));
  if (isUnfilled(minutes) && isUnfilled(hours)) return undefined;
  if (!isUnfilled(minutes) && !isUnfilled(hours)) throw new InputError("write Minutes or Hours, not both.");
  const [cell, column, each] = isUnfilled(hours) ? [minutes, "Minutes", 1] : [hours, "Hours", 60];
  if (lookUpKey(cell) === "none") return { minutes: 0, of };
  return { minutes: (toNumber(cell, column as string, { min: 0 }) * (each as number)) / per, of };
}

/** What work is called in the tables that list it: with raceway and size, by which it goes, where it has them. */
export const workName = (
  { name, raceway, size }: Pick<Worked, "name" | "raceway" | "size">,
  operation: string,
): string => (raceway ? `${raceway} ${size} ${operation}` : name);

/** What an operation may be called in a Labor table, the most particular first. */
export function operationNames({ name, kind, raceway, size }: Omit<Worked, "unit">, operation: string): string[] {
  const words = operation === kind ? [kind] : [operation, kind];
  const named = words.flatMap((word) => [`${raceway} ${size} ${word}`, `${raceway} ${word}`, `${size} ${word}`, word]);
  return operation === kind ? [name, ...named] : named;
}
