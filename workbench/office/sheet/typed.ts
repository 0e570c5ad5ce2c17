import { CellValueType, type ICellData, numfmt } from "@univerjs/core";
import type { CellRange } from "../../engine";
import { invalidArgument } from "../base/officeError";

/** Explicit nulls: the grid keeps what a new cell does not mention. */
const blank: ICellData = { v: null, f: null, si: null, p: null, t: null, custom: null };

/**
 * Writes cells as Excel takes them from an add-in, which is as if they were typed: 1/2 becomes a date unless the cell
 * is a text cell ("@"), "5" a number, "=A1" a formula, "" empties the cell and null leaves it as it is.
 */
export function writeTyped(range: CellRange, given: unknown): void {
  const { rows, columns } = range.place;
  const values = fill(given, rows, columns, range.address);
  const formats = range.numberFormats;
  // The grid makes a value of a formula that a writing passes over, unless it is named once more.
  const own = values.some((line) => line.some((value) => value === null || value === undefined)) ? range.formulas : [];
  const seen: [row: number, column: number, format: string][] = [];
  const cells = values.map((line, row) =>
    line.map((value, column): ICellData => {
      if (value === null || value === undefined) return own[row]?.[column] ? { f: own[row][column] } : {};
      const { cell, format } = typed(value, formats[row]?.[column] ?? "");
      if (format) seen.push([row, column, format]);
      return cell;
    }),
  );
  range.native.setValues(cells);
  if (seen.length === 0) return;
  for (const [row, column, format] of seen) formats[row]![column] = format;
  range.setNumberFormats(formats);
}

/** A value for each cell of a range: the rows that are given, or one value everywhere. */
export function fill(given: unknown, rows: number, columns: number, address: string): unknown[][] {
  if (!Array.isArray(given)) return Array.from({ length: rows }, () => new Array<unknown>(columns).fill(given));
  const values = given.map((line: unknown) => (Array.isArray(line) ? Array.from<unknown>(line) : [line]));
  if (values.length === rows && values.every((line) => line.length === columns)) return Array.from(values);
  const got = `${values.length} × ${values[0]?.length ?? 0}`;
  throw invalidArgument(`${address} is ${rows} × ${columns} cells; got ${got}.`);
}

/** What one value becomes in a cell of that format, and the format Excel gives the cell with it. */
function typed(value: unknown, format: string): { cell: ICellData; format?: string } {
  if (typeof value === "boolean") return { cell: { ...blank, v: value ? 1 : 0, t: CellValueType.BOOLEAN } };
  if (typeof value === "number" && Number.isFinite(value))
    return { cell: { ...blank, v: value, t: CellValueType.NUMBER } };
  if (typeof value !== "string") throw invalidArgument(`a cell cannot hold ${String(value)}.`);
  if (value === "") return { cell: blank };
  if (format === "@") return { cell: text(value) };
  if (value.startsWith("'")) return { cell: text(value.slice(1)) };
  if (value.startsWith("=") && value.length > 1) return { cell: { ...blank, f: value } };
  // Feet and inches: the grid's reader takes 10' for a number, Excel does not.
  if (/['"]/.test(value)) return { cell: text(value) };
  const read = mixedNumber(value) ?? numfmt.parseValue(value);
  if (!read) return { cell: text(value) };
  const { cell } = typed(read.v, "");
  const plain = format === "" || format === "General";
  return plain && read.z ? { cell, format: read.z } : { cell };
}

const text = (value: string): ICellData => ({ ...blank, v: value, t: CellValueType.STRING });

/** "1 1/2" is a number to Excel; the grid's reader does not know it. */
function mixedNumber(value: string): { v: number; z: string } | null {
  const [, sign, whole, over, under] = /^\s*(-?)(\d+) (\d+)\/(\d+)\s*$/.exec(value) ?? [];
  if (!whole || Number(under) === 0) return null;
  return { v: (sign ? -1 : 1) * (Number(whole) + Number(over) / Number(under)), z: "# ?/?" };
}
