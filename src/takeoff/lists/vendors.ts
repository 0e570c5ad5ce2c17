import { filledRows } from "../../table/filledRows";
import type { Column, TableRow } from "../../table/headerTable";
import { dayText } from "../../units/day";
import { InputError, quoteValue } from "../../units/errors";
import { lookUpKey } from "../../units/names/lookUpKey";
import { isUnfilled } from "./valueList";

/** A price that somebody offers. */
export interface Offer {
  /** Empty for the price of the Price column. */
  readonly vendor: string;
  readonly price: number;
  /** The day of the quote, 2026-12-01 or as it is written; empty where it is not said. */
  readonly quoted: string;
}

const PRICE_BY = /^price by\s+(\S.*)$/i;

/** The vendors of a Prices range, by its headers: Price by Acme. */
export function vendorsOf(range: unknown): string[] {
  if (!Array.isArray(range) || !range.every(Array.isArray)) return [];
  const headers = filledRows(range as unknown[][]).find((row) => row.some((cell) => typeof cell === "string")) ?? [];
  const names = headers.flatMap((header) =>
    typeof header === "string" ? (PRICE_BY.exec(header.trim())?.[1] ?? []) : [],
  );
  return names.map((name) => name.trim());
}

/** The columns of vendors: their prices and the days of their quotes. */
export const offerColumns = (vendors: readonly string[]): Column[] =>
  vendors.flatMap((vendor) => [{ name: `Price by ${vendor}`, zero: true }, { name: `Quoted by ${vendor}` }]);

/** The offers of a row, in the order of the columns. */
export const readOffers = (
  row: TableRow,
  vendors: readonly string[],
  readPrice: (cell: unknown, name: string) => number,
): Offer[] =>
  vendors.flatMap((vendor) => {
    const cell = row.get(`Price by ${vendor}`);
    if (isUnfilled(cell)) return [];
    const day = row.get(`Quoted by ${vendor}`);
    return [{ vendor, price: readPrice(cell, `Price by ${vendor}`), quoted: day === null ? "" : dayText(day) }];
  });

/**
 * The offer that counts: the named vendor's; the lowest where Vendor says so, or says nothing and Price is empty; else Price.
 * @throws InputError when Vendor names nobody
 */
export function chosenOffer(
  cell: unknown,
  own: number | undefined,
  offers: readonly Offer[],
  vendors: readonly string[],
): { offer: Offer | undefined; words: string } {
  const wanted = cell === null ? "" : lookUpKey(cell);
  if (wanted === "" && own !== undefined) return { offer: { vendor: "", price: own, quoted: "" }, words: "" };
  if (wanted === "" || wanted === "lowest") {
    const offer = lowestOf(offers);
    const among = offers.length > 1 ? `, the lowest of ${offers.length}` : "";
    return { offer, words: offer ? `${offerWords(offer)}${among}` : wanted === "" ? "" : "no vendor has a price" };
  }
  const vendor = vendors.find((name) => lookUpKey(name) === wanted);
  if (vendor === undefined) {
    throw new InputError(`Vendor must be ${["lowest", ...vendors].join(" or ")}; got ${quoteValue(cell)}.`);
  }
  const offer = offers.find((each) => each.vendor === vendor);
  return { offer, words: offer ? offerWords(offer) : `no price by ${vendor}` };
}

/** The first of the lowest. */
export const lowestOf = (offers: readonly Offer[]): Offer | undefined =>
  offers.reduce<Offer | undefined>((least, offer) => (least && least.price <= offer.price ? least : offer), undefined);

const offerWords = ({ vendor, quoted }: Offer): string =>
  `price by ${vendor}${quoted === "" ? "" : `, quoted ${quoted}`}`;
