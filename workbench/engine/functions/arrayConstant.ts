import {
  ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { isErrorCode } from "../cellValue";

/**
 * The engine splits an array constant at every comma and semicolon, even inside quotes, and reads "3/8" as a date.
 * This teaches it to read them as Excel does: `{"Run","Route";"A-1","up 4', east 10'"}` is two rows of two texts.
 */
export function readArrayConstantsAsText(): void {
  const prototype = ArrayValueObject.prototype as unknown as {
    _formatValue: (raw: unknown) => BaseValueObject[][];
    _rowCount: number;
    _columnCount: number;
    readsText?: boolean;
  };
  if (prototype.readsText) return;
  prototype.readsText = true;
  const original = prototype._formatValue;
  prototype._formatValue = function (raw) {
    if (typeof raw !== "string") return original.call(this, raw);
    const rows = splitArrayConstant(raw).map((row) => row.map(constant));
    this._rowCount = rows.length;
    this._columnCount = Math.max(...rows.map((row) => row.length));
    return rows;
  };
}

/** The rows and columns of an array constant's source, quotes still on. */
export function splitArrayConstant(source: string): string[][] {
  const body = source.trim().replace(/^\{|\}$/g, "");
  const rows: string[][] = [[]];
  // A text runs to the quote that a separator or the end follows: the engine has already undoubled the quotes inside.
  const element = /\s*("(?:[^]*?)"(?=\s*(?:[,;]|$))|[^,;]*)\s*([,;]|$)/g;
  for (let match = element.exec(body); match; match = element.exec(body)) {
    rows[rows.length - 1]!.push(match[1]!.trim());
    if (match[2] === "") break;
    if (match[2] === ";") rows.push([]);
  }
  return rows;
}

function constant(text: string): BaseValueObject {
  if (text.length >= 2 && text.startsWith('"') && text.endsWith('"')) {
    return StringValueObject.create(text.slice(1, -1).replace(/""/g, '"'));
  }
  const upper = text.toUpperCase();
  if (upper === "TRUE" || upper === "FALSE") return BooleanValueObject.create(upper === "TRUE");
  if (isErrorCode(upper)) return ErrorValueObject.create(upper as Parameters<typeof ErrorValueObject.create>[0]);
  if (text !== "" && Number.isFinite(Number(text))) return NumberValueObject.create(Number(text));
  return StringValueObject.create(text);
}
