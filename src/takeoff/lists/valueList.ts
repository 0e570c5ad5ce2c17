import { readTable, type Column, type TableRow } from "../../table/headerTable";
import { takeRows } from "../../table/takeRows";
import { InputError, quoteValue } from "../../units/errors";
import { lookUpKey } from "../../units/names/lookUpKey";

/** A user's list of named values: the rows that could be read, by name, and the others in words. */
export interface ValueList<T> {
  /** The value of the first of these names that the list has. */
  find(...names: readonly string[]): T | undefined;
  /** The names as they are written, in the order of the rows; those of rows that could not be read are not among them. */
  readonly names: readonly ListedName[];
  readonly problems: readonly string[];
  /** True when nothing has been filled in below the headers. */
  readonly empty: boolean;
}

/** A name of a list, and where it stands. */
export interface ListedName {
  readonly name: string;
  readonly rowNumber: number;
}

/** Reads a list; none where the range is left out or nothing has been filled in below its headers. */
export function listIn<T extends { readonly empty: boolean }>(
  range: unknown,
  read: (range: unknown) => T,
): T | undefined {
  if (range === null || range === undefined) return undefined;
  const list = read(range);
  return list.empty ? undefined : list;
}

/** A cell that waits to be filled in: some versions of Excel hand an empty cell over as 0. */
export const isUnfilled = (cell: unknown): boolean => cell === null || cell === 0;

/**
 * Reads a range of named values. A row that cannot be read, or a name that stands twice, is told in words and counts as
 * not there; it hides no other. A row without a value waits to be filled in and counts as not there, too.
 *
 * @param argument what the range is called in messages
 * @param nameColumn the column that holds the name
 */
export function readValueList<T>(
  range: unknown,
  argument: string,
  nameColumn: string,
  columns: readonly Column[],
  readValue: (row: TableRow) => T | undefined,
): ValueList<T> {
  const values = new Map<string, T>();
  const seen = new Set<string>();
  const names: ListedName[] = [];
  const { rows } = readTable(range, argument, [{ name: nameColumn, required: true }, ...columns]);
  const problems = takeRows(rows, argument, (row) => {
    const name = row.get(nameColumn);
    const key = lookUpKey(name);
    if (key === "") throw new InputError(`${nameColumn} is empty.`);
    if (seen.has(key)) {
      values.delete(key);
      throw new InputError(`${quoteValue(name)} stands twice; keep one row for each ${nameColumn.toLowerCase()}.`);
    }
    seen.add(key);
    const value = readValue(row);
    if (value !== undefined) values.set(key, value);
    names.push({ name: String(name).trim(), rowNumber: row.rowNumber });
  });
  return {
    problems,
    names,
    empty: rows.length === 0,
    find: (...wanted) => wanted.map((name) => values.get(lookUpKey(name))).find((value) => value !== undefined),
  };
}
