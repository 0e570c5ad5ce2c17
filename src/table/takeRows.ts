import { InputError, isUserError } from "../units/errors";
import { readTable, type Column, type TableRow } from "./headerTable";

/** The rows of a table that may be left out. @throws InputError as `readTable` */
export const optionalRows = (range: unknown, argument: string, columns: readonly Column[]): readonly TableRow[] =>
  range === null || range === undefined ? [] : readTable(range, argument, columns).rows;

/**
 * Takes row after row. A row that cannot be read is told in words and hides no other.
 *
 * @param argument what the range is called in messages
 * @param take reads a row; what it tells counts as a problem of that row, which stands all the same
 * @returns the problems, each with its row
 */
export function takeRows(
  rows: readonly TableRow[],
  argument: string,
  take: (row: TableRow, tell: (problem: string) => void) => void,
): string[] {
  const problems: string[] = [];
  for (const row of rows) {
    const tell = (problem: string) => void problems.push(`${argument} row ${row.rowNumber}: ${problem}`);
    try {
      take(row, tell);
    } catch (error) {
      if (!isUserError(error)) throw error;
      tell(error.message);
    }
  }
  return problems;
}

/** Reads every row; the first that cannot be read ends it. @throws InputError with the row before its words */
export const readEach = <T>(rows: readonly TableRow[], argument: string, read: (row: TableRow) => T): T[] =>
  rows.map((row) => {
    try {
      return read(row);
    } catch (error) {
      if (!isUserError(error)) throw error;
      throw new InputError(`${argument} row ${row.rowNumber}: ${error.message}`);
    }
  });
