import { CellFault } from "../units/cellFault";
import { InputError, quoteValue } from "../units/errors";
import { filledRows, refuseMore } from "./filledRows";

/** One column a table may have: the name shown to people, whether it must be there, and other spellings. */
export interface Column {
  readonly name: string;
  readonly required?: boolean;
  readonly also?: readonly string[];
  /** The number 0 is a value here. Elsewhere it says nothing: some versions of Excel hand an empty cell over as 0. */
  readonly zero?: boolean;
}

/** One row of a table read by its headers. */
export interface TableRow {
  /** Place of the row in the range that was given, 1 for the first row of the range. */
  readonly rowNumber: number;
  /** The names of the columns that the table has, the same text for every row; then the row's cells under them. */
  readonly cells: readonly unknown[];
  /**
   * The cell under a header; null when the cell is empty or the column is absent.
   * @throws InputError when the cell holds an error
   */
  get(column: string): unknown;
}

/**
 * A range with a header row, read by its headers: any order, extra columns ignored, empty rows passed over. A row is
 * empty, too, where every cell is 0.
 */
export interface HeaderTable {
  readonly rows: readonly TableRow[];
  has(column: string): boolean;
}

const isBlank = (cell: unknown): boolean =>
  cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");

const isBlankOrZero = (cell: unknown): boolean => cell === 0 || isBlank(cell);

/** Most rows of a table that says nothing else. */
const MOST_ROWS = 50_000;

/** Headers match whatever their case, spaces and punctuation. */
const headerKey = (text: unknown): string =>
  String(text ?? "")
    .toLowerCase()
    .replace(/[^a-z0-9/]+/g, "");

/**
 * Reads a range whose first non-empty row holds headers.
 *
 * @param range the cells, row by row
 * @param argument what the range is called in messages
 * @param columns the columns to look for
 * @param most rows that are taken, with what stands above the last filled one
 * @throws InputError when a required header is missing, a header stands twice, or there are more rows
 */
export function readTable(range: unknown, argument: string, columns: readonly Column[], most = MOST_ROWS): HeaderTable {
  const cells = filledRows(asRange(range, argument));
  refuseMore(cells.length, most, argument, "rows");
  const headerRow = cells.findIndex((row) => row.some((cell) => !isBlankOrZero(cell)));
  if (headerRow < 0) throw new InputError(`${argument} must have a header row; the range is empty.`);
  const places = findColumns(cells[headerRow] ?? [], argument, columns);
  const zeros = new Set(columns.flatMap(({ name, zero }) => (zero ? [name] : [])));
  const found: FoundColumns = { places, zeros, used: [...places.values()], names: [...places.keys()].join("\u0001") };
  const rows: TableRow[] = [];
  for (let index = headerRow + 1; index < cells.length; index++) {
    const row = cells[index] ?? [];
    if (!found.used.every((place) => isBlankOrZero(row[place]))) rows.push(new RangeRow(index + 1, row, found));
  }
  return { rows, has: (column) => places.has(column) };
}

/** The columns of a table that were looked for and found, in the order asked. */
interface FoundColumns {
  readonly places: ReadonlyMap<string, number>;
  readonly zeros: ReadonlySet<string>;
  readonly used: readonly number[];
  /** All names in one text. */
  readonly names: string;
}

/** A row as it stands in its range: a job has thousands, so nothing is copied. */
class RangeRow implements TableRow {
  constructor(
    readonly rowNumber: number,
    private readonly row: readonly unknown[],
    private readonly columns: FoundColumns,
  ) {}

  get cells(): readonly unknown[] {
    return [this.columns.names, ...this.columns.used.map((place) => this.row[place])];
  }

  get(column: string): unknown {
    const place = this.columns.places.get(column);
    const cell = place === undefined ? null : this.row[place];
    if (cell instanceof CellFault) throw new InputError(`${column} holds the error ${cell.code}.`);
    return isBlank(cell) || (cell === 0 && !this.columns.zeros.has(column)) ? null : cell;
  }
}

function asRange(range: unknown, argument: string): readonly (readonly unknown[])[] {
  if (!Array.isArray(range) || !range.every(Array.isArray)) {
    throw new InputError(`${argument} must be a range with a header row; got ${quoteValue(range)}.`);
  }
  return range;
}

/**
 * Zero-based place of each column that a header row has.
 * @throws InputError when a column stands twice, or a needed one is missing
 */
export function findColumns(
  headers: readonly unknown[],
  argument: string,
  columns: readonly Column[],
): Map<string, number> {
  const places = new Map<string, number>();
  const keys = headers.map(headerKey);
  for (const column of columns) {
    const wanted = [column.name, ...(column.also ?? [])].map(headerKey);
    const found = keys.flatMap((key, place) => (wanted.includes(key) ? [place] : []));
    if (found.length > 1) {
      throw new InputError(`${argument} must have one column "${column.name}"; the header row has ${found.length}.`);
    }
    if (found[0] !== undefined) places.set(column.name, found[0]);
  }
  const missing = columns.filter((column) => column.required && !places.has(column.name));
  if (missing.length > 0) {
    const read = headers.filter((header) => !isBlankOrZero(header)).map(quoteValue);
    throw new InputError(
      `${argument} must have the column${missing.length > 1 ? "s" : ""} ` +
        `${missing.map((column) => `"${column.name}"`).join(", ")}; the header row reads ${read.join(", ")}.`,
    );
  }
  return places;
}
