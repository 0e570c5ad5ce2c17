import { CellFault } from "../../src/units/cellFault";
import { InputError, NotListedError } from "../../src/units/errors";
import { plainArgument } from "./plainValues";

/**
 * Excel takes 5 MB of a function's result (OfficeDev/office-js#4654, and "Resource limits and performance optimization");
 * what it counts is not told, so this stops before [bytes].
 */
const MOST = 4 * 1024 ** 2;

/**
 * Runs a worksheet function's body on its arguments made plain, and turns the trade's errors into the ones a cell can
 * show with their message: InputError becomes `#VALUE!`, NotListedError `#N/A`. Anything else is a fault of ours and says
 * so. An argument that is an error itself is refused; one inside a range is left to whoever reads the range.
 */
export function answer<A extends unknown[], T>(args: readonly [...A], body: (...args: A) => T): T {
  try {
    const plain = args.map(plainArgument) as unknown[] as A;
    const fault = plain.findIndex((argument) => argument instanceof CellFault);
    if (fault >= 0) throw refused(plain[fault] as CellFault, fault + 1);
    const result = body(...plain);
    refuseNotFinite(result);
    refuseTooLarge(result);
    return result;
  } catch (error) {
    throw cellError(error);
  }
}

/** A number that is none is no answer, alone or anywhere in a table. */
function refuseNotFinite(result: unknown): void {
  if (typeof result === "number" && !Number.isFinite(result)) {
    throw new InputError(`The result is not a finite number (${result}). Check the arguments.`);
  }
  if (!Array.isArray(result)) return;
  result.forEach((cells: unknown, row) => {
    const column = Array.isArray(cells)
      ? cells.findIndex((cell) => typeof cell === "number" && !Number.isFinite(cell))
      : -1;
    if (column < 0) return;
    const value = (cells as unknown[])[column];
    throw new InputError(
      `Row ${row + 1}, column ${column + 1} of the result is not a finite number (${String(value)}). Check the arguments.`,
    );
  });
}

/** A result that Excel would not take is refused in words; Excel itself would only show an error. */
function refuseTooLarge(result: unknown): void {
  if (!Array.isArray(result) || sizeAtMost(result as unknown[]) <= MOST) return;
  const size = sizeInJson(result as unknown[]);
  if (size <= MOST) return;
  const megabytes = (size / 1024 ** 2).toFixed(1);
  throw new InputError(
    `The result has ${result.length} rows and about ${megabytes} MB; Excel takes at most 5 MB of a function, and this one stops at 4. ` +
      "Divide the runs, for example by area into tables of their own, or hand over fewer of them with FILTER.",
  );
}

/** No number is longer in JSON [characters]. */
const LONGEST_NUMBER = 25;

/** What a result takes at most [bytes], without a look at its letters: three bytes are the most that one takes. */
const sizeAtMost = (rows: readonly unknown[]): number =>
  sizeOf(rows, (cell) => (typeof cell === "string" ? 3 * cell.length + 2 : LONGEST_NUMBER));

/** About what a result takes on its way to Excel [bytes]: its text as JSON in UTF-8. */
const sizeInJson = (rows: readonly unknown[]): number =>
  sizeOf(rows, (cell) => (typeof cell === "string" ? utf8Size(cell) + 2 : String(cell).length));

/** The sizes of all cells and the commas between them. */
function sizeOf(rows: readonly unknown[], sizeOfCell: (cell: unknown) => number): number {
  let size = 0;
  for (const row of rows) {
    for (const cell of Array.isArray(row) ? (row as unknown[]) : [row]) size += sizeOfCell(cell) + 1;
  }
  return size;
}

function utf8Size(text: string): number {
  let size = text.length;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code > 0x7f) size += code > 0x7ff ? 2 : 1;
  }
  return size;
}

function refused({ code }: CellFault, place: number): InputError | NotListedError {
  const message = `argument ${place} holds the error ${code}.`;
  return code === "#N/A" ? new NotListedError(message) : new InputError(message);
}

function cellError(error: unknown): CustomFunctions.Error {
  if (error instanceof NotListedError) {
    return new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, error.message);
  }
  if (error instanceof InputError) {
    return new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, error.message);
  }
  const detail = error instanceof Error ? error.message : String(error);
  return new CustomFunctions.Error(
    CustomFunctions.ErrorCode.invalidValue,
    `Raceway Ledger could not compute this (internal fault: ${detail}).`,
  );
}
