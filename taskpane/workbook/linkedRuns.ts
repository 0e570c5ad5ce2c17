import type { TableCells } from "../excel";
import { cellName } from "./address";
import type { Cell } from "./items";
import { asResult, newSheets, type NewSheet, type SheetWishes } from "./design/newSheets";

/** Empty rows a linked table keeps for rows that its source will grow [rows]. */
const SPARE = 50;

/**
 * A Runs table whose cells are formulas that read the person's own table, column by column. Their table stays as it
 * is; what they change there shows here.
 *
 * @param columns our column by name → their zero-based column in the table
 */
export function linkedRuns(
  source: TableCells,
  columns: Readonly<Record<string, number>>,
  wishes: SheetWishes,
): NewSheet[] {
  const theirs = `'${source.sheet.replace(/'/g, "''")}'!`;
  const rows = Array.from({ length: source.cells.length - 1 + SPARE }, (_, index): Record<string, Cell> => {
    const row = source.row + 1 + index;
    return Object.fromEntries(
      Object.entries(columns).map(([name, column]) => {
        const cell = `${theirs}${cellName(row, source.column + column)}`;
        return [name, `=IF(${cell}="","",${cell})`];
      }),
    );
  });
  return newSheets(["Runs"], { ...wishes, rows: { Runs: rows } }).map((sheet) => ({
    ...sheet,
    // A formula in a cell of text format would stay text.
    columns: sheet.columns.map(({ list: _, ...column }) => ({
      ...column,
      look: asResult(column.look),
    })),
  }));
}
