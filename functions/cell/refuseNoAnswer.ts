import { InputError } from "../../src/units/errors";

/**
 * Excel takes 5 MB of a function's result (OfficeDev/office-js#4654, and "Resource limits and performance optimization");
 * what it counts is not told, so this stops before [bytes].
 */
const MOST = 4 * 1024 ** 2;

/**
 * A number that is none is no answer, alone or anywhere in a table; a result that Excel would not take is refused in
 * words, where Excel itself would only show an error.
 *
 * @throws InputError
 */
export function refuseNoAnswer(result: unknown): void {
  if (!Array.isArray(result)) {
    if (isNoNumber(result)) throw new InputError(`The result is not a finite number (${result}). Check the arguments.`);
    return;
  }
  const rows = result.map((row: unknown): readonly unknown[] => (Array.isArray(row) ? row : [row]));
  if (sum(rows, sizeAtMost) <= MOST) return;
  const size = sum(rows, sizeInJson);
  if (size <= MOST) return;
  const megabytes = (size / 1024 ** 2).toFixed(1);
  throw new InputError(
    `The result has ${result.length} rows and about ${megabytes} MB; Excel takes at most 5 MB of a function, and this one stops at 4. ` +
      "Divide the runs, for example by area into tables of their own, or hand over fewer of them with FILTER.",
  );
}

const isNoNumber = (value: unknown): value is number => typeof value === "number" && !Number.isFinite(value);

const sum = (rows: readonly (readonly unknown[])[], sizeOf: (row: readonly unknown[], at: number) => number): number =>
  rows.reduce((total, row, at) => total + sizeOf(row, at), 0);

/** Sizes of rows, each looked at once: after an edit the rows of what did not change come again, the same arrays. */
function rowSizes(cellSize: (cell: unknown) => number): (row: readonly unknown[], at: number) => number {
  const known = new WeakMap<readonly unknown[], number>();
  return (row, at) => {
    let size = known.get(row);
    if (size !== undefined) return size;
    size = 0;
    for (const [column, cell] of row.entries()) {
      if (isNoNumber(cell)) throw noNumber(cell, at, column);
      size += cellSize(cell) + 1;
    }
    known.set(row, size);
    return size;
  };
}

const noNumber = (value: number, row: number, column: number): InputError =>
  new InputError(
    `Row ${row + 1}, column ${column + 1} of the result is not a finite number (${value}). Check the arguments.`,
  );

/** No number is longer in JSON [characters]. */
const LONGEST_NUMBER = 25;

/** What a row takes at most [bytes], without a look at its letters: three bytes are the most that one takes. */
const sizeAtMost = rowSizes((cell) => (typeof cell === "string" ? 3 * cell.length + 2 : LONGEST_NUMBER));

/** About what a row takes on its way to Excel [bytes]: its text as JSON in UTF-8. */
const sizeInJson = rowSizes((cell) => (typeof cell === "string" ? utf8Size(cell) + 2 : String(cell).length));

function utf8Size(text: string): number {
  let size = text.length;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code > 0x7f) size += code > 0x7ff ? 2 : 1;
  }
  return size;
}
