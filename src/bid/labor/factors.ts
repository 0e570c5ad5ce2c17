import { rememberTable } from "../../memory/tables";
import type { RuleBook } from "../../rules/rules";
import type { TableRow } from "../../table/headerTable";
import { optionalRows, takeRows } from "../../table/takeRows";
import { RUN_GROUP_NAMES } from "../../takeoff/amounts/groupBy";
import { rowCell, type SourceRow } from "../../takeoff/amounts/lineBook";
import { InputError, quoteValue } from "../../units/errors";
import { lookUpKey } from "../../units/names/lookUpKey";
import { asNumber, toNumber } from "../../units/number";

/** Labor that a condition adds: a row of the Factors table. */
interface Factor {
  readonly column: string;
  /** A word the cell must be; a number counts from there up to the next. */
  readonly is: string | number;
  /** [%], below zero where the work is easier */
  readonly percent: number;
}

/** What the conditions of a row add to its labor. */
export interface FactorBook {
  /** Part of the hours that is added: 0.13 for 13 %. */
  addedTo(row: SourceRow, rules: RuleBook): number;
  readonly problems: readonly string[];
  readonly empty: boolean;
}

export const FACTOR_COLUMNS = [
  { name: "Column", required: true },
  { name: "Is", required: true, also: ["From"] },
  { name: "Percent", required: true, zero: true },
];

/**
 * Reads a Factors range: Column (of Runs), Is, Percent. A number under Is holds from there up, so that a ladder's table can
 * be written as it is printed; a word holds where the cell says it. One row of each column holds for a run; those of several
 * columns are multiplied or added, as the rule "Labor factors of several columns" has it.
 */
export const readFactors: (range: unknown) => FactorBook = rememberTable((range) => {
  const columns = new Map<string, Factor[]>();
  const problems = takeRows(optionalRows(range, "factors", FACTOR_COLUMNS), "factors", (row) => {
    const factor = readFactor(row);
    columns.set(factor.column, [...(columns.get(factor.column) ?? []), factor]);
  });
  return {
    problems,
    empty: columns.size === 0,
    addedTo(row, rules) {
      const parts = [...columns].map(([column, factors]) => percentOf(factors, rowCell(row, column)) / 100);
      return rules.text("Labor factors of several columns") === "added"
        ? parts.reduce((sum, part) => sum + part, 0)
        : parts.reduce((product, part) => product * (1 + part), 1) - 1;
    },
  };
});

function readFactor(row: TableRow): Factor {
  const name = row.get("Column");
  const column = RUN_GROUP_NAMES.find((known) => lookUpKey(known) === lookUpKey(name));
  if (!column) throw new InputError(`Column must be one of ${RUN_GROUP_NAMES.join(", ")}; got ${quoteValue(name)}.`);
  const cell = row.get("Is");
  if (cell === null) throw new InputError(`Is is empty; write what ${column} must say, or the number it counts from.`);
  const text = row.get("Percent");
  if (text === null || text === 0) throw new InputError("Percent is 0 or empty.");
  const percent = toNumber(typeof text === "string" ? text.replace(/\s*%\s*$/, "") : text, "Percent", PERCENT);
  return { column, is: asNumber(cell) ?? String(cell).trim(), percent };
}

/** Nothing is done in no time, and nothing takes eleven times as long. */
const PERCENT = { above: -100, max: 1000 };

/** The row that holds: the word's, else the highest number that the cell reaches; 0 for none. */
function percentOf(factors: readonly Factor[], cell: string): number {
  if (cell === "") return 0;
  const word = factors.find(({ is }) => lookUpKey(is) === lookUpKey(cell));
  if (word) return word.percent;
  const value = asNumber(cell);
  if (value === undefined) return 0;
  const reached = factors.filter(({ is }) => typeof is === "number" && is <= value);
  return (
    reached.reduce<Factor | undefined>((top, each) => (top && top.is >= each.is ? top : each), undefined)?.percent ?? 0
  );
}

/** Part of the hours that is added for rows that share a source: the mean of theirs; nothing where no row stands behind it. */
export const addedTo = (rows: readonly SourceRow[], factors: FactorBook, rules: RuleBook): number =>
  rows.length === 0 ? 0 : rows.reduce((sum, row) => sum + factors.addedTo(row, rules), 0) / rows.length;
