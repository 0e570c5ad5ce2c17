/** Letters of a zero-based column: 0 A, 25 Z, 26 AA. */
export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

/** Address of a zero-based cell, as formulas write it. */
export const cellName = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;
