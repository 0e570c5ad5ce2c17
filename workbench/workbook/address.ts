import { cellName } from "../../taskpane/workbook/address";
import type { CellBlock } from "./content/sheetContent";

export function blockAddress({ startRow, endRow, startColumn, endColumn }: CellBlock): string {
  return `${cellName(startRow, startColumn)}:${cellName(endRow, endColumn)}`;
}

/** The block of "A1:C9" or "B2", dollar signs or not. */
export function readBlock(address: string): CellBlock {
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
