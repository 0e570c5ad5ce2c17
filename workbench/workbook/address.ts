import type { Block } from "./content/sheetContent";

/** Column letters of a place counted from 0: 0 is A, 26 is AA. */
export function columnName(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnName(Math.floor(column / 26) - 1) + last;
}

export function cellAddress(row: number, column: number): string {
  return `${columnName(column)}${row + 1}`;
}

export function blockAddress({ startRow, endRow, startColumn, endColumn }: Block): string {
  return `${cellAddress(startRow, startColumn)}:${cellAddress(endRow, endColumn)}`;
}

/** The block of "A1:C9" or "B2", dollar signs or not. */
export function readBlock(address: string): Block {
  const match = /^\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+)\$?(\d+))?$/i.exec(address.trim());
  if (!match) throw new Error(`${address} is no range of cells.`);
  const [, column, row, endColumn = column!, endRow = row!] = match;
  return {
    startRow: Number(row) - 1,
    endRow: Number(endRow) - 1,
    startColumn: columnPlace(column!),
    endColumn: columnPlace(endColumn),
  };
}

function columnPlace(letters: string): number {
  return [...letters.toUpperCase()].reduce((place, letter) => place * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}
