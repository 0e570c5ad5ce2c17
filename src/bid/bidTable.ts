import { rememberTable } from "../memory/tables";
import { readTable, type TableRow } from "../table/headerTable";
import { takeRows } from "../table/takeRows";
import { dayText } from "../units/day";
import { InputError, quoteValue } from "../units/errors";
import { lookUpKey } from "../units/names/lookUpKey";
import { asNumber, toNumber } from "../units/number";

/** What a line of a bid is worked out as, by the word in its Unit cell. */
export const BID_UNITS = [
  "words",
  "material",
  "costs",
  "per hour",
  "%",
  "margin %",
  "lump sum",
  "subtotal",
  "total",
] as const;

export type BidUnit = (typeof BID_UNITS)[number];

/** A line of a bid, in the order in which they are worked out and printed. */
export interface BidLine {
  readonly name: string;
  readonly unit: BidUnit;
  /** Undefined where it waits to be filled in (empty or 0; `none` is nothing), or none is asked for. */
  readonly value: number | undefined;
  /** For words alone. */
  readonly words: string;
  /** Lines it is a part of; empty for all above it. */
  readonly of: readonly string[];
  /** For per hour: the part of the hours it is for [%]; undefined for all. */
  readonly share?: number;
  readonly note: string;
}

/** A Bid table: its lines, and the rows that could not be read. */
export interface BidTable {
  readonly lines: readonly BidLine[];
  readonly problems: readonly string[];
}

export const BID_COLUMNS = [
  { name: "Line", required: true },
  { name: "Value", required: true, zero: true },
  { name: "Unit", required: true },
  { name: "Of" },
];

const WITH_VALUE: readonly BidUnit[] = ["per hour", "%", "margin %", "lump sum"];
const OTHER_WORDS: Readonly<Record<string, BidUnit>> = {
  percent: "%",
  margin: "margin %",
  "% margin": "margin %",
  "an hour": "per hour",
  hour: "per hour",
  lump: "lump sum",
};

/** Percent written as a cell of percent format holds it: 8.25 % as 0.0825. */
const LIKELY_FRACTION = 0.5;

/**
 * Reads a Bid range: Line, Value, Unit, Of. The order of the rows is the order of the sum.
 * @throws InputError when a needed column is missing
 */
export const readBid: (range: unknown) => BidTable = rememberTable((range) => {
  const lines: BidLine[] = [];
  const rows = readTable(range, "bid", BID_COLUMNS).rows;
  const problems = takeRows(rows, "bid", (row) => void lines.push(readLine(row, lines)));
  return { lines, problems };
});

function readLine(row: TableRow, above: readonly BidLine[]): BidLine {
  const name = String(row.get("Line") ?? "").trim();
  if (name === "") throw new InputError("Line is empty.");
  if (above.some((line) => lookUpKey(line.name) === lookUpKey(name))) {
    throw new InputError(`"${name}" stands twice; keep one row for each line.`);
  }
  const unit = readUnit(row.get("Unit"));
  const cell = row.get("Value");
  const words = unit === "words" && cell !== 0 ? wordsOf(name, cell) : "";
  const share = unit === "per hour" ? readShare(row.get("Of")) : {};
  const of = unit === "per hour" ? [] : readOf(row.get("Of"), above);
  if (!WITH_VALUE.includes(unit)) return { name, unit, words, of, value: undefined, note: "" };
  if (cell === null || cell === 0) return { name, unit, words, of, value: undefined, note: "" };
  return { name, unit, words, of, ...share, ...readValue(cell, unit) };
}

/** A date is a number in a cell; nothing else that is printed as words is. */
const wordsOf = (name: string, cell: unknown): string =>
  /\bdate\b/i.test(name) ? dayText(cell) : String(cell ?? "").trim();

function readUnit(cell: unknown): BidUnit {
  const text = String(cell ?? "")
    .toLowerCase()
    .replace(/\s+/g, " ")
    .trim();
  const unit = BID_UNITS.find((known) => known === text) ?? OTHER_WORDS[text];
  if (unit) return unit;
  throw new InputError(`Unit must be ${BID_UNITS.slice(0, -1).join(", ")} or total; got ${quoteValue(cell)}.`);
}

/** Lines parted by commas or plus signs; `above` for all of them. */
function readOf(cell: unknown, above: readonly BidLine[]): string[] {
  const names = String(cell ?? "")
    .split(/[,;+]/)
    .map((name) => name.trim())
    .filter((name) => name !== "" && lookUpKey(name) !== "above");
  return names.map((name) => {
    const line = above.find((each) => lookUpKey(each.name) === lookUpKey(name) && each.unit !== "words");
    if (!line) throw new InputError(`Of must name lines above it, or say above; got ${quoteValue(name)}.`);
    return line.name;
  });
}

/** Of a rate by the hour: `20 %` of the hours, such as overtime; all where it is empty. */
function readShare(cell: unknown): { share?: number } {
  const text = String(cell ?? "").trim();
  if (text === "" || lookUpKey(text) === "hours") return {};
  if (!text.endsWith("%")) throw new InputError(`Of must be a percent of the hours, as 20 %; got ${quoteValue(cell)}.`);
  return { share: toNumber(text.slice(0, -1).trim(), "Of", { min: 0, max: 100 }) };
}

function readValue(cell: unknown, unit: BidUnit): Pick<BidLine, "value" | "note"> {
  if (lookUpKey(cell) === "none") return { value: 0, note: "" };
  if (unit === "lump sum") return { value: toNumber(cell, "Value"), note: "" };
  if (unit === "per hour") return { value: toNumber(cell, "Value", { min: 0 }), note: "" };
  const text = typeof cell === "string" ? cell.replace(/\s*%\s*$/, "") : cell;
  const limits = unit === "%" ? { min: 0, max: 1000 } : { min: 0, below: 100 };
  const value = toNumber(text, "Value", limits);
  const isDoubtful = asNumber(cell) !== undefined && value > 0 && value < LIKELY_FRACTION;
  return {
    value,
    note: isDoubtful ? `${value} % is less than one half of one percent: was ${value * 100} % meant?` : "",
  };
}
