import { CellFault } from "./cellFault";

/**
 * Errors the trade code throws on purpose. Their messages are read by people in a cell or in the pane, so each names
 * the argument, the limit and the value: "angle must be above 0° and below 180°; got 190°."
 */

/** Something the user wrote cannot be used. Shown in a cell as `#VALUE!` with the message. */
export class InputError extends Error {
  override readonly name: string = "InputError";
}

/** A table was asked for a row it does not have. Shown in a cell as `#N/A` with the message. */
export class NotListedError extends Error {
  override readonly name: string = "NotListedError";
}

/** True for the two errors above, whose messages are meant for the user. */
export function isUserError(error: unknown): error is InputError | NotListedError {
  return error instanceof InputError || error instanceof NotListedError;
}

/** How a value that was not understood is quoted in a message: text in quotes, cut at 40 characters; an error by its code. */
export function quoteValue(value: unknown): string {
  if (value === null || value === undefined || value === "") return "an empty cell";
  if (typeof value === "string") return value.length > 40 ? `"${value.slice(0, 40)}…"` : `"${value}"`;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (Array.isArray(value)) return "a range of cells";
  if (typeof value === "object") return value instanceof CellFault ? value.code : "a value that is no number or text";
  return String(value);
}
