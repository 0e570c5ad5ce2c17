import { rememberTable } from "../../memory/tables";
import { InputError, quoteValue } from "../../units/errors";
import { asNumber, toNumber } from "../../units/number";
import type { TableRow } from "../../table/headerTable";
import type { Item } from "../amounts/item";
import { readPriceUnit, type PriceUnit } from "./priceUnit";
import { lookUpKey } from "../../units/names/lookUpKey";
import { isUnfilled, readValueList, type ValueList } from "./valueList";
import { chosenOffer, offerColumns, readOffers, vendorsOf, type Offer } from "./vendors";

/** What a row of prices says of an item. */
interface PriceRow {
  /** The price to count with; undefined where it waits to be filled in. */
  readonly price: Offer | undefined;
  /** Why there is none although there are offers; else how it was chosen. */
  readonly words: string;
  readonly unit: PriceUnit;
  /** [pieces or feet] */
  readonly onHand: number;
  /** Whole sizes of its packages; empty where none is said. */
  readonly packages: readonly number[];
}

/** What one of an item costs, or why that cannot be told. */
export interface UnitPrice {
  /** Null when the user has no usable price for it; the note says so. */
  readonly unitPrice: number | null;
  readonly note: string;
}

export interface PriceBook {
  priceOf(item: Item): UnitPrice;
  /** The offer that an item is priced by; undefined where its price is no vendor's. */
  quoteOf(item: Item): Offer | undefined;
  /** Sizes of an item's packages; undefined where no item of the list has any. */
  readonly packagesOf?: (item: Item) => readonly number[];
  /** How many or how many feet of it are there already. */
  onHandOf(item: Item): number;
  readonly names: ValueList<unknown>["names"];
  readonly problems: readonly string[];
  readonly empty: boolean;
}

export const PRICE_COLUMNS = [
  { name: "Item", required: true },
  { name: "Unit" },
  { name: "Price", required: true, also: ["Unit price"], zero: true },
  { name: "Package", also: ["Packages"] },
  { name: "On hand" },
  { name: "Vendor" },
];

/**
 * Reads a Prices range: Item, Unit, Price, and as one likes Package, On hand, Vendor and prices of several vendors (Price by
 * Acme, Quoted by Acme). An item goes by the name it has in the take-off. A stick without a price of its own takes the one
 * in Stock, else the price of a foot of its conduit. A Price that is empty or 0 waits to be filled in, and the lowest offer
 * stands for it; what costs nothing is `free` or `by others`.
 */
export const readPrices: (range: unknown) => PriceBook = rememberTable((range) => {
  const vendors = vendorsOf(range);
  const columns = [...PRICE_COLUMNS.slice(1), ...offerColumns(vendors)];
  let hasPackages = false;
  const list: ValueList<PriceRow> = readValueList(range, "prices", "Item", columns, (row) => {
    const unit = readPriceUnit(row.get("Unit"));
    const packages = readPackages(row.get("Package"));
    hasPackages ||= packages.length > 0;
    const [onHand, own] = [row.get("On hand"), ownPrice(row)];
    const { offer, words } = chosenOffer(row.get("Vendor"), own, readOffers(row, vendors, readPrice), vendors);
    const there = onHand === null ? 0 : toNumber(onHand, "On hand", { min: 0 });
    return { price: offer, words, unit, packages, onHand: there };
  });
  return {
    ...list,
    priceOf: (item) => priceOf(item, list),
    quoteOf(item) {
      const own = list.find(item.pricedAs ?? item.name)?.price;
      const offer = own ?? (item.stockPrice === undefined ? footOf(item, list)?.price : undefined);
      return offer && offer.vendor !== "" ? offer : undefined;
    },
    onHandOf: (item) => list.find(item.name)?.onHand ?? 0,
    ...(hasPackages ? { packagesOf: (item: Item) => list.find(item.name)?.packages ?? [] } : {}),
  };
});

const ownPrice = (row: TableRow): number | undefined => {
  const cell = row.get("Price");
  return isUnfilled(cell) ? undefined : readPrice(cell, "Price");
};

const readPrice = (cell: unknown, name: string): number =>
  COSTS_NOTHING.includes(lookUpKey(cell)) ? 0 : toNumber(cell, name, { min: 0 });

const COSTS_NOTHING = ["free", "by others"];

/** Most sizes of one item's packages, and the largest. */
const [MOST_SIZES, LARGEST] = [6, 100_000];

/** Whole numbers parted by commas or the word or. */
function readPackages(cell: unknown): number[] {
  if (cell === null) return [];
  const sizes = String(cell)
    .split(/[,;]|\bor\b/)
    .map((part) => asNumber(part.trim()));
  const isSize = (size: number | undefined): size is number =>
    size !== undefined && Number.isInteger(size) && size >= 1 && size <= LARGEST;
  if (sizes.every(isSize) && sizes.length <= MOST_SIZES) return [...new Set(sizes)];
  throw new InputError(
    `Package must be at most ${MOST_SIZES} whole numbers from 1 to ${LARGEST}, as 500, 1000; got ${quoteValue(cell)}.`,
  );
}

function priceOf(item: Item, list: ValueList<PriceRow>): UnitPrice {
  if (item.setPrice !== undefined) return { unitPrice: item.setPrice, note: "" };
  const name = item.pricedAs ?? item.name;
  const own = list.find(name);
  if (own?.price) return inUnit(own.price, own, { name, unit: item.unit });
  if (item.stockPrice !== undefined) return { unitPrice: item.stockPrice, note: "price from Stock" };
  const none = { unitPrice: null, note: own?.words || `no price for ${name}` };
  const foot = footOf(item, list);
  if (!foot?.price || item.stickFeet === undefined) return none;
  const { unitPrice, note } = inUnit(foot.price, foot, { name: conduitOf(item), unit: "ft" });
  return unitPrice === null
    ? { unitPrice, note }
    : { unitPrice: unitPrice * item.stickFeet, note: note || "priced by the foot" };
}

const conduitOf = ({ raceway, size }: Item): string => `${raceway} ${size} conduit`;

/** The price of a foot of its conduit, for a stick. */
const footOf = (item: Item, list: ValueList<PriceRow>): PriceRow | undefined =>
  item.stickFeet === undefined ? undefined : list.find(conduitOf(item));

function inUnit({ price }: Offer, { unit, words }: PriceRow, item: Pick<Item, "name" | "unit">): UnitPrice {
  if (unit.of !== null && unit.of !== item.unit) {
    return { unitPrice: null, note: `no price for ${item.name} per ${item.unit}: prices has it per ${unit.of}` };
  }
  return { unitPrice: price / unit.per, note: price === 0 ? "costs nothing" : words };
}
