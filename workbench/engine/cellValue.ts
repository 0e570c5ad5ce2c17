import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { ERROR_TYPE_SET, type ErrorType } from "@univerjs/engine-formula";

/** What a cell holds. A blank cell is null; an error cell holds its code, such as "#VALUE!". */
export type CellValue = string | number | boolean | null;

/** An error in a cell: its code and, where the function gave one, its message. */
export interface CellErrorInfo {
  code: string;
  message: string;
}

/** The exact value of a cell's data, not rounded and not formatted. */
export function cellValue(cell: Nullable<ICellData>): CellValue {
  if (!cell) return null;
  const value = cell.v;
  if (value === undefined || value === null) return null;
  if (cell.t === CellValueType.BOOLEAN) return value === 1 || value === true || value === "1";
  if (cell.t === CellValueType.NUMBER) return Number(value);
  return value;
}

/** The error a cell's data holds, or null. The message is read from the cell, so it survives saving. */
export function cellError(cell: Nullable<ICellData>): CellErrorInfo | null {
  const value = cell ? cell.v : null;
  if (typeof value !== "string" || !isErrorCode(value)) return null;
  const message: unknown = cell ? cell.custom?.message : undefined;
  return { code: value, message: typeof message === "string" && message !== "" ? message : usualMeaning(value) };
}

export function isErrorCode(text: string): boolean {
  return ERROR_TYPE_SET.has(text as ErrorType);
}

const meanings: Record<string, string> = {
  "#NAME?": "The formula holds a name that is no function, table or range here.",
  "#REF!": "The formula points at a cell or sheet that does not exist.",
  "#DIV/0!": "The formula divides by zero.",
  "#N/A": "No value is available.",
  "#NUM!": "A number is out of range.",
  "#VALUE!": "The formula cannot be read, or a value is of the wrong kind.",
  "#SPILL!": "The result needs cells that are not empty. Clear the cells it would fill.",
  "#CYCLE!": "The formula depends on its own result.",
};

function usualMeaning(code: string): string {
  return meanings[code] ?? "";
}
