import { InputError, NotListedError, quoteValue } from "../units/errors";
import { inWords } from "../raceway/inWords";
import table from "./data/circularMils.json";

const AWG: Record<string, number> = table.awg;

/** Sizes of conductors from the thinnest: AWG, then kcmil. */
export const WIRE_SIZES: readonly string[] = [
  ...["18", "16", "14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0"],
  ...["250", "300", "350", "400", "500", "600", "700", "750", "800", "900", "1000", "1250"],
];

/**
 * Reads a size of conductor: `12`, `#12`, `1/0 AWG`, `250 kcmil`.
 *
 * @throws InputError when it is no size that is made
 * @example readWireSize("#1/0 AWG") //=> "1/0"
 */
export function readWireSize(value: unknown, argument = "size"): string {
  const text = String(value ?? "")
    .trim()
    .toLowerCase()
    .replace(/^#|no\.?/, "")
    .replace(/\s*(awg|kcmil|mcm)$/, "")
    .trim();
  if (WIRE_SIZES.includes(text)) return text;
  throw new InputError(
    `${argument} must be ${inWords(WIRE_SIZES)} (AWG to 4/0, then kcmil); got ${quoteValue(value)}.`,
  );
}

/** Area of a conductor's metal [cmil]. @example circularMils("12") //=> 6530 */
export const circularMils = (size: string): number => AWG[size] ?? Number(size) * 1000;

/** The smallest size of at least so many circular mils. @throws NotListedError above the largest */
export function sizeOfMils(mils: number): string {
  // A hair under is the size itself: 66,359.99 of 66,360.
  const size = WIRE_SIZES.find((each) => circularMils(each) >= mils * (1 - 1e-9));
  if (size !== undefined) return size;
  throw new NotListedError(`No conductor of ${Math.ceil(mils)} cmil is listed; the largest has 1250 kcmil.`);
}

/** Conductors of one size. */
export interface WireCount {
  readonly count: number;
  readonly size: string;
}

/**
 * Reads how many conductors of which sizes: `7 #12, 2 #10`; nothing is none.
 *
 * @throws InputError when a part is not a count and a size
 */
export function readWireCounts(value: unknown, argument: string): WireCount[] {
  if (value === null || value === undefined || value === "") return [];
  return String(value)
    .split(/[+,;&]|\band\b/i)
    .map((part) => {
      const [, count, size] = /^\s*(\d{1,3})\s*(?:x|×|\s|(?=#))\s*(\S.*)$/i.exec(part) ?? [];
      if (count === undefined || Number(count) < 1) {
        throw new InputError(`${argument} must be counts and sizes, as in 7 #12, 2 #10; got ${quoteValue(value)}.`);
      }
      return { count: Number(count), size: readWireSize(size, argument) };
    });
}

/** A size as people write it. @example sizeInWords("250") //=> "250 kcmil" */
export const sizeInWords = (size: string): string => (Number(size) >= 250 ? `${size} kcmil` : `#${size}`);
