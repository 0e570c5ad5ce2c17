import { rememberTable } from "../../memory/tables";
import type { TableRow } from "../../table/headerTable";
import { optionalRows, takeRows } from "../../table/takeRows";
import { InputError, quoteValue } from "../../units/errors";
import { lookUpKey } from "../../units/names/lookUpKey";
import { toNumber } from "../../units/number";
import { ITEM_KINDS, kindsOfClass, type Item } from "../amounts/item";

/** What an allowance is worked out as, by the word in its Unit cell. */
export const ALLOWANCE_UNITS = ["%", "minimum", "lump sum"] as const;

/** What somebody allows for beyond what the runs take. */
export interface Allowance {
  readonly name: string;
  readonly unit: (typeof ALLOWANCE_UNITS)[number];
  /** [%], pieces or feet, or money */
  readonly value: number;
  /** What it is for, as it is written. */
  readonly of: string;
  /** Whether it is for an item. */
  fits(item: Item): boolean;
}

export interface AllowanceBook {
  readonly allowances: readonly Allowance[];
  readonly problems: readonly string[];
}

export const ALLOWANCE_COLUMNS = [
  { name: "Allowance", required: true },
  { name: "Of" },
  { name: "Value", required: true, zero: true },
  { name: "Unit", required: true },
];

/**
 * Reads an Allowances range: Allowance, Of (an item by its name, a class of items, or all), Value, Unit (%, minimum, lump
 * sum). A row that cannot be read is told in words and allows nothing.
 */
export const readAllowances: (range: unknown) => AllowanceBook = rememberTable((range) => {
  const allowances: Allowance[] = [];
  const rows = optionalRows(range, "allowances", ALLOWANCE_COLUMNS);
  const problems = takeRows(rows, "allowances", (row) => void allowances.push(readAllowance(row)));
  return { allowances, problems };
});

function readAllowance(row: TableRow): Allowance {
  const name = String(row.get("Allowance") ?? "").trim();
  if (name === "") throw new InputError("Allowance is empty.");
  const unit = ALLOWANCE_UNITS.find((known) => known === lookUpUnit(row.get("Unit")));
  if (!unit) throw new InputError(`Unit must be %, minimum or lump sum; got ${quoteValue(row.get("Unit"))}.`);
  const cell = row.get("Value");
  if (cell === null || cell === 0) throw new InputError(`Value of ${name} is 0 or empty; nothing is allowed for it.`);
  const text = unit === "%" && typeof cell === "string" ? cell.replace(/\s*%\s*$/, "") : cell;
  const value = toNumber(text, "Value", unit === "%" ? { above: 0, max: 200 } : { above: 0, max: 1e9 });
  return { name, unit, value, of: String(row.get("Of") ?? "").trim(), fits: fitsOf(row.get("Of")) };
}

const lookUpUnit = (cell: unknown): string => {
  const word = String(cell ?? "")
    .trim()
    .toLowerCase();
  return word === "percent" ? "%" : word;
};

/** A class, a kind in one or more of it, all, or an item by its whole name. */
function fitsOf(cell: unknown): Allowance["fits"] {
  const of = lookUpKey(cell);
  if (of === "" || of === "all") return () => true;
  const singular = of.replace(/e?s$/, "");
  const named = ITEM_KINDS.filter((kind) => [of, singular, of.replace(/s$/, "")].includes(lookUpKey(kind)));
  const inClass = kindsOfClass(of);
  const kinds = inClass.length > 0 ? inClass : named;
  return kinds.length > 0 ? ({ kind }) => kinds.includes(kind) : ({ name }) => lookUpKey(name) === of;
}
