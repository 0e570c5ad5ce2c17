import { rememberTable } from "../../memory/tables";
import { toNumber } from "../../units/number";
import type { Item } from "../amounts/item";
import { readPriceUnit, type PriceUnit } from "./priceUnit";
import { lookUpKey } from "../../units/names/lookUpKey";
import { isUnfilled, readValueList, type ValueList } from "./valueList";

/** A price as the user wrote it. */
interface Price {
  readonly price: number;
  readonly unit: PriceUnit;
}

/** What one of an item costs, or why that cannot be told. */
export interface UnitPrice {
  /** Null when the user has no usable price for it; the note says so. */
  readonly unitPrice: number | null;
  readonly note: string;
}

export interface PriceBook {
  priceOf(item: Item): UnitPrice;
  readonly names: ValueList<unknown>["names"];
  readonly problems: readonly string[];
  readonly empty: boolean;
}

/**
 * Reads a Prices range: Item, Unit, Price. An item goes by the name it has in the take-off. A stick without a price of
 * its own takes the one in Stock, else the price of a foot of its conduit. A Price that is empty or 0 waits to be filled
 * in; what costs nothing is `free` or `by others`.
 */
export const readPrices: (range: unknown) => PriceBook = rememberTable((range) => {
  const list: ValueList<Price> = readValueList(
    range,
    "prices",
    "Item",
    [{ name: "Unit" }, { name: "Price", required: true, also: ["Unit price"], zero: true }],
    (row) => {
      const cell = row.get("Price");
      const unit = readPriceUnit(row.get("Unit"));
      if (isUnfilled(cell)) return undefined;
      return { unit, price: COSTS_NOTHING.includes(lookUpKey(cell)) ? 0 : toNumber(cell, "Price", { min: 0 }) };
    },
  );
  return { ...list, priceOf: (item) => priceOf(item, list) };
});

const COSTS_NOTHING = ["free", "by others"];

function priceOf(item: Item, list: ValueList<Price>): UnitPrice {
  const own = list.find(item.name);
  if (own) return inUnit(own, item);
  if (item.stockPrice !== undefined) return { unitPrice: item.stockPrice, note: "price from Stock" };
  const none = { unitPrice: null, note: `no price for ${item.name}` };
  if (item.stickFeet === undefined) return none;
  const conduit = `${item.raceway} ${item.size} conduit`;
  const foot = list.find(conduit);
  if (!foot) return none;
  const { unitPrice, note } = inUnit(foot, { name: conduit, unit: "ft" });
  return unitPrice === null
    ? { unitPrice, note }
    : { unitPrice: unitPrice * item.stickFeet, note: note || "priced by the foot" };
}

function inUnit({ price, unit }: Price, { name, unit: wanted }: Pick<Item, "name" | "unit">): UnitPrice {
  if (unit.of !== null && unit.of !== wanted) {
    return { unitPrice: null, note: `no price for ${name} per ${wanted}: prices has it per ${unit.of}` };
  }
  return { unitPrice: price / unit.per, note: price === 0 ? "costs nothing" : "" };
}
