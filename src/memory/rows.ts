import { cellsKey, sameCells } from "./cells";
import { forgetOldest } from "./tables";

/** A row by the cells that tell it from others. */
export interface CellRow {
  readonly cells: readonly unknown[];
}

/** The rows of one table, each with what was made of it. */
interface KnownRows<T> {
  readonly rows: readonly CellRow[];
  readonly made: readonly T[];
}

/**
 * Makes something of each row of a table, and gives the same object again for a row that is known: after an edit, only
 * for the row that changed is anything made. Two equal rows of one table have an object each.
 *
 * The table that has most in common with the new one, from its first row and from its last, serves; what lies between
 * is looked up by its cells, so that moved rows are found too.
 *
 * @param make reads nothing of a row but its cells, directly or by header
 */
export function rememberRows<Row extends CellRow, T>(make: (row: Row) => T): (rows: readonly Row[]) => readonly T[] {
  const tables: KnownRows<T>[] = [];
  return (rows) => {
    const nearest = nearestOf(tables, rows);
    const made = nearest ? reuse(nearest, rows, make) : rows.map(make);
    tables.unshift({ rows: rows.map(({ cells }) => ({ cells })), made });
    forgetOldest(tables, (table) => table.rows.length);
    return made;
  };
}

/** How many rows two tables share at their beginning and at their end. */
interface Common {
  readonly first: number;
  readonly last: number;
}

type Nearest<T> = KnownRows<T> & Common;

function nearestOf<T>(tables: readonly KnownRows<T>[], rows: readonly CellRow[]): Nearest<T> | undefined {
  let nearest: Nearest<T> | undefined;
  for (const table of tables) {
    const common = inCommon(table.rows, rows);
    if (!nearest || common.first + common.last > nearest.first + nearest.last) nearest = { ...table, ...common };
    if (nearest.first + nearest.last === rows.length) break;
  }
  return nearest;
}

const sameRow = (a: CellRow | undefined, b: CellRow | undefined): boolean =>
  a !== undefined && b !== undefined && sameCells(a.cells, b.cells);

function inCommon(a: readonly CellRow[], b: readonly CellRow[]): Common {
  let first = 0;
  while (sameRow(a[first], b[first])) first++;
  const rest = Math.min(a.length, b.length) - first;
  let last = 0;
  while (last < rest && sameRow(a[a.length - 1 - last], b[b.length - 1 - last])) last++;
  return { first, last };
}

function reuse<Row extends CellRow, T>(known: Nearest<T>, rows: readonly Row[], make: (row: Row) => T): T[] {
  const waiting = new Map<string, T[]>();
  for (let index = known.rows.length - known.last - 1; index >= known.first; index--) {
    const key = cellsKey(known.rows[index]!.cells);
    const queue = waiting.get(key);
    if (queue) queue.push(known.made[index]!);
    else waiting.set(key, [known.made[index]!]);
  }
  const shift = known.rows.length - rows.length;
  return rows.map((row, index) => {
    if (index < known.first) return known.made[index]!;
    if (index >= rows.length - known.last) return known.made[index + shift]!;
    return waiting.get(cellsKey(row.cells))?.pop() ?? make(row);
  });
}
