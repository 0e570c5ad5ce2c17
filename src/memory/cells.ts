import { CellFault } from "../units/cellFault";

/** True for two cells that say the same to every reader. */
export const sameCell = (a: unknown, b: unknown): boolean =>
  a === b ||
  (typeof a === "number" && Number.isNaN(a) && Number.isNaN(b)) ||
  (a instanceof CellFault && b instanceof CellFault && a.code === b.code);

/** True for two rows of the same cells. */
export function sameCells(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false;
  for (let place = 0; place < a.length; place++) if (!sameCell(a[place], b[place])) return false;
  return true;
}

/** A text that two rows share when they have the same cells, and only then. */
export const cellsKey = (cells: readonly unknown[]): string => JSON.stringify(cells.map(cellKey));

const cellKey = (cell: unknown): string =>
  cell instanceof CellFault ? `fault ${cell.code}` : `${cell === null ? "null" : typeof cell} ${String(cell)}`;
