import type { CellRange, Sheet } from "../../engine";
import { invalidArgument } from "../base/officeError";

/** A range and the sheet it lies on. */
export interface Area {
  sheet: Sheet;
  cells: CellRange;
  /** Whole columns, and rows to come: a look is the columns' own. */
  wholeColumns?: true;
}

/** Excel's size of a sheet. */
const most = { rows: 1048576, columns: 16384 };

/** Cells by zero-based place. The grid's sheet grows where Excel's would have been large enough. */
export function cellsAt(sheet: Sheet, row: number, column: number, rows: number, columns: number): CellRange {
  const whole = [row, column, rows, columns].every(Number.isInteger);
  const inside = row >= 0 && column >= 0 && row + rows <= most.rows && column + columns <= most.columns;
  if (!whole || !inside || rows < 1 || columns < 1) {
    throw invalidArgument(`there are no cells at row ${row}, column ${column}, ${rows} × ${columns}.`);
  }
  const { native } = sheet;
  if (row + rows > native.getMaxRows()) native.setRowCount(row + rows);
  if (column + columns > native.getMaxColumns()) native.setColumnCount(column + columns);
  return sheet.cells(row, column, rows, columns);
}

const corner = String.raw`\$?([A-Z]{1,3})\$?([1-9]\d*)`;
const cells = new RegExp(`^${corner}(?::${corner})?$`, "i");
const wholeLines = /^\$?[A-Z]{1,3}:\$?[A-Z]{1,3}$|^\$?\d+:\$?\d+$/i;

/** Cells by address on a sheet: "B2", "B2:D9", "B:D", "2:9". */
export function cellsByAddress(sheet: Sheet, address: string): CellRange {
  const [, letters, number, endLetters, endNumber] = cells.exec(address) ?? [];
  if (letters && number) {
    const [row, column] = [Number(number) - 1, columnNumber(letters)];
    const endRow = endNumber ? Number(endNumber) - 1 : row;
    const endColumn = endLetters ? columnNumber(endLetters) : column;
    const [top, left] = [Math.min(row, endRow), Math.min(column, endColumn)];
    return cellsAt(sheet, top, left, Math.abs(endRow - row) + 1, Math.abs(endColumn - column) + 1);
  }
  if (wholeLines.test(address)) return sheet.range(address);
  throw invalidArgument(`"${address}" is no address of cells.`);
}

const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** From the first to the last row and column that hold anything; null for an empty sheet. */
export function usedCells(sheet: Sheet): CellRange | null {
  const used = sheet.used();
  if (!used) return null;
  const filled = used.values.map((row) => row.map((value) => value !== null && value !== ""));
  const row = filled.findIndex((line) => line.some(Boolean));
  if (row < 0) return null;
  const firsts = filled.map((line) => line.indexOf(true)).filter((at) => at >= 0);
  const column = firsts.reduce((least, at) => Math.min(least, at));
  const { rows, columns } = used.place;
  return sheet.cells(row, column, rows - row, columns - column);
}
