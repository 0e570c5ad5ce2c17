import type { Look } from "../../../taskpane/workbook/design/look";
import type { CellErrorInfo, CellValue } from "../../engine";

export type { Look };

/** One cell: its exact value, the formula behind it, and how far the formula spills. */
export interface ContentCell {
  value: CellValue;
  error?: CellErrorInfo;
  formula?: string;
  /** Rows and columns that a spilling formula fills, its own cell included. */
  spill?: { rows: number; columns: number };
  look?: Look;
}

/** A rectangle of cells, counted from 0, both ends in it. */
export interface CellBlock {
  startRow: number;
  endRow: number;
  startColumn: number;
  endColumn: number;
}

export interface ContentTable {
  name: string;
  range: CellBlock;
  headers: string[];
}

export interface Choices {
  list: string[];
  range: CellBlock;
}

/** A picture over a sheet: it hangs from the top left corner of a cell. */
export interface Picture {
  png: Uint8Array;
  row: number;
  column: number;
  /** [pt] */
  width: number;
  height: number;
  /** What it shows, for those who cannot see it. */
  title: string;
  description: string;
}

/** One sheet, on its way to a file or from one. */
export interface SheetContent {
  name: string;
  cells: (ContentCell | null)[][];
  columns: { width?: number; look?: Look; hidden?: boolean }[];
  /** Lines of text each row shows, where it is more than the program that opens the file would find out. */
  rowLines?: number[];
  /** Height of each row [pt], where the sheet lays its rows out itself. */
  rowHeights?: readonly number[];
  /** Printed upright, at its own size, with pages that begin at these rows. */
  pageStarts?: readonly number[];
  pictures?: Picture[];
  /** Said where a heading is selected, by its column. */
  notes?: { column: number; title: string; text: string }[];
  frozenRows: number;
  frozenColumns: number;
  tabColor?: string;
  tables: ContentTable[];
  choices: Choices[];
}
