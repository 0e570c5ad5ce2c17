/** A part of a sheet: zero-based first row and column, and how many of each. */
export interface PrintArea {
  row: number;
  column: number;
  rows: number;
  columns: number;
}
