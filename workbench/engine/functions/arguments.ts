import type { Nullable } from "@univerjs/core";
import type { BaseReferenceObject, BaseValueObject, FunctionVariantType } from "@univerjs/engine-formula";
import { CellError } from "./customFunctions";

/** A plain value of one cell, as a worksheet function receives it: a blank is null, an error is a CellError. */
export type PlainArgument = string | number | boolean | null | CellError;

/** The plain rows of an argument: one by one for a single value. Whole columns and rows end at the last used cell. */
export function plainRows(argument: FunctionVariantType): PlainArgument[][] {
  if (argument.isReferenceObject()) return referenceRows(argument as BaseReferenceObject);
  if (argument.isArray()) {
    const rows = (argument as BaseValueObject).getArrayValue();
    return rows.map((row) => Array.from(row, plain));
  }
  return [[plain(argument as BaseValueObject)]];
}

function plain(value: Nullable<BaseValueObject>): PlainArgument {
  if (value == null || value.isNull()) return null;
  if (value.isError())
    return new CellError(String(value.getValue()), `${String(value.getValue())} in the cells it reads`);
  return value.getValue() as PlainArgument;
}

function referenceRows(reference: BaseReferenceObject): PlainArgument[][] {
  if (reference.getForcedSheetName() !== "" && !reference.getForcedSheetId()) {
    throw new CellError("#REF!", `There is no sheet named ${reference.getForcedSheetName()}.`);
  }
  const { startRow, startColumn, endRow, endColumn } = reference.getRangePosition();
  const width = Math.max(endColumn - startColumn + 1, 1);
  const rows: PlainArgument[][] = [];
  let lastUsedRow = 0;
  let lastUsedColumn = 0;
  reference.iterator((value, row, column) => {
    const cell = plain(value);
    const at = row - startRow;
    while (rows.length <= at) rows.push(new Array<PlainArgument>(width).fill(null));
    rows[at]![column - startColumn] = cell;
    if (cell === null) return;
    lastUsedRow = Math.max(lastUsedRow, at);
    lastUsedColumn = Math.max(lastUsedColumn, column - startColumn);
  });
  if (reference.isColumn()) return rows.slice(0, lastUsedRow + 1);
  if (reference.isRow()) return rows.map((row) => row.slice(0, lastUsedColumn + 1));
  return rows.length > 0 ? rows.slice(0, endRow - startRow + 1) : [[null]];
}
