import { InputError, NotListedError, quoteValue } from "../units/errors";
import { MIXED_NUMBER, mixedNumber } from "../units/mixedNumber";
import { plainMarks } from "../units/plainMarks";
import designators from "./data/designators.json";
import { inWords } from "./inWords";

/** Trade sizes the tables know, smallest first. */
export const TRADE_SIZES = ["1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4", "5", "6"] as const;

export type TradeSize = (typeof TRADE_SIZES)[number];

/** Excel counts days from 1900; a fraction it took for a date is a number far above any size. */
const SMALLEST_DATE = 1000;

const SIZE_TEXT = new RegExp(String.raw`^(${MIXED_NUMBER})\s*(?:"|in\.?|inch)?$`);

/** By the size in inches, and by the metric designator: the smallest designator, 16, is far above the largest size, 6. */
const BY_VALUE = new Map(
  TRADE_SIZES.flatMap((size): [number, TradeSize][] => [
    [mixedNumber(size, "size"), size],
    [designators.designators[size], size],
  ]),
);

/** As a message lists them. */
const KNOWN = `${inWords(TRADE_SIZES)}, or a metric designator, 16 to 155`;

/**
 * Reads a trade size: `1/2`, 0.5, `1 1/4`, `1-1/4"`, `½`; or its metric designator, 16 … 155.
 *
 * @param argument its name in messages
 * @throws InputError that lists the sizes; a fraction that Excel took for a date is told so, with what to do
 * @example readTradeSize("1 1/4") //=> "1-1/4"
 */
export function readTradeSize(value: unknown, argument = "size"): TradeSize {
  const number = asSize(value, argument);
  const size = number === undefined ? undefined : BY_VALUE.get(number);
  if (size !== undefined) return size;
  if (number !== undefined && number > SMALLEST_DATE) {
    throw new InputError(
      `${argument} must be a trade size; got ${number}, a date: Excel takes 1/2 for one. ` +
        "Format the cell as Text and type the size again, or write '1/2 or 0.5.",
    );
  }
  throw new InputError(`${argument} must be ${KNOWN}; got ${quoteValue(value)}.`);
}

function asSize(value: unknown, argument: string): number | undefined {
  if (typeof value === "number") return value;
  if (typeof value !== "string" || value.length > 100) return undefined;
  const text = SIZE_TEXT.exec(plainMarks(value))?.[1];
  return text === undefined ? undefined : mixedNumber(text, argument);
}

/**
 * The next larger trade size.
 *
 * @throws NotListedError after the largest
 * @example nextTradeSize("1") //=> "1-1/4"
 */
export function nextTradeSize(size: TradeSize): TradeSize {
  const next = TRADE_SIZES[TRADE_SIZES.indexOf(size) + 1];
  if (next === undefined) throw new NotListedError(`There is no trade size above ${size}.`);
  return next;
}
