import type { Cell } from "../../workbook/items";
import { batch } from "../batch";
import type { TableCells } from "./readTables";
import type { Replaced } from "./replaceCells";
import { stillThere } from "./stillThere";

/** A cell of a table by its place in it, 0 for the header row; one under the last row makes the table longer. */
export interface TableEdit {
  row: number;
  column: number;
  cell: Cell;
}

/**
 * Writes cells of a table, in as many new rows under it as they need, once the table is known again: all in one step.
 * @returns what it takes to put back what stood there; new rows are emptied then and stay
 * @throws ExcelProblem when the table no longer holds what was read
 */
export function changeRows(table: TableCells, edits: readonly TableEdit[]): Promise<Replaced[]> {
  const { sheet, row, column, cells } = table;
  const rowsSeen = [...new Set([0, ...edits.map((edit) => edit.row)])].filter((at) => at < cells.length);
  const seen = rowsSeen.flatMap((at) =>
    cells[at]!.map((value, place) => ({ sheet, row: row + at, column: column + place, value })),
  );
  return batch(async (context, commit) => {
    await stillThere(context, seen);
    const rows = context.workbook.tables.getItem(table.name).rows;
    const last = Math.max(0, ...edits.map((edit) => edit.row));
    for (let more = cells.length; more <= last; more++) rows.add();
    await commit();
    const rangeOf = (edit: TableEdit) =>
      context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row + edit.row, column + edit.column, 1, 1);
    const before = edits.map((edit) => rangeOf(edit).load("formulas"));
    await context.sync();
    edits.forEach((edit) => (rangeOf(edit).formulas = [[edit.cell]]));
    await commit();
    const written = edits.map((edit) => rangeOf(edit).load("formulas"));
    await context.sync();
    return edits.map((edit, index) => ({
      ...{ sheet, row: row + edit.row, column: column + edit.column },
      before: before[index]!.formulas[0]?.[0] as Cell,
      after: written[index]!.formulas[0]?.[0] as Cell,
    }));
  });
}
