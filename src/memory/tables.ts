import { filledRows } from "../table/filledRows";
import { sameCells } from "./cells";

type Cells = readonly (readonly unknown[])[];

/** How many tables a reader keeps: a job as it is and as it was issued, and a few states before. */
const TABLES = 6;
/** Most rows that are kept of all of them. */
const ROWS = 25_000;

/**
 * A reader of ranges that gives the same object for the same cells, so that whatever is remembered of the object still
 * holds. It keeps the newest six tables, their cells copied: a range may be changed by whoever owns it.
 *
 * @param read takes what the range is called, for the errors it throws; what it gives does not depend on that
 */
export function rememberTable<T>(
  read: (range: unknown, argument?: string) => T,
): (range: unknown, argument?: string) => T {
  const known: { readonly cells: Cells | null; readonly answer: T }[] = [];
  return (range, argument) => {
    if (range !== null && range !== undefined && !isTable(range)) return read(range, argument);
    const filled = range ? filledRows(range) : null;
    const place = known.findIndex(({ cells }) => sameTable(cells, filled));
    const entry = known.splice(place, place < 0 ? 0 : 1)[0] ?? {
      answer: read(filled, argument),
      cells: filled && filled.map((row) => [...row]),
    };
    known.unshift(entry);
    forgetOldest(known, ({ cells }) => cells?.length ?? 0);
    return entry.answer;
  };
}

/** Takes the oldest tables, which stand last, off a list until no more of them and of their rows are left than are kept. */
export function forgetOldest<T>(list: T[], rowsOf: (table: T) => number): void {
  let kept = 0;
  let count = 0;
  while (count < Math.min(TABLES, list.length)) {
    kept += rowsOf(list[count] as T);
    if (kept > ROWS) break;
    count++;
  }
  list.length = count;
}

const isTable = (range: unknown): range is Cells => Array.isArray(range) && range.every(Array.isArray);

const sameTable = (a: Cells | null, b: Cells | null): boolean =>
  a === b ||
  (a !== null && b !== null && a.length === b.length && a.every((row, index) => sameCells(row, b[index] ?? [])));
