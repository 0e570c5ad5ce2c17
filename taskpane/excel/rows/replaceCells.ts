import { strings } from "../../strings";
import type { Cell } from "../../workbook/items";
import { batch, ExcelProblem } from "../batch";
import { stillThere, type Seen } from "./stillThere";

/** One cell to write. */
export interface Edit {
  sheet: string;
  row: number;
  column: number;
  cell: Cell;
}

/** A cell that was written: what stood there, formula and all, and what stood there then. */
export interface Replaced {
  sheet: string;
  row: number;
  column: number;
  before: Cell;
  after: Cell;
}

const rangeOf = (context: Excel.RequestContext, { sheet, row, column }: Pick<Edit, "sheet" | "row" | "column">) =>
  context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, 1);

/**
 * Writes single cells and touches no other, once the place is known again.
 * @returns what it takes to put back what stood there
 * @throws ExcelProblem when the place no longer holds what was read
 */
export function replaceCells(edits: readonly Edit[], seen: readonly Seen[]): Promise<Replaced[]> {
  return batch(async (context, commit) => {
    await stillThere(context, seen);
    const ranges = edits.map((edit) => rangeOf(context, edit).load("formulas"));
    await context.sync();
    const before = ranges.map((range) => range.formulas[0]?.[0] as Cell);
    edits.forEach(({ cell }, index) => (ranges[index]!.formulas = [[cell]]));
    await commit();
    const written = edits.map((edit) => rangeOf(context, edit).load("formulas"));
    await context.sync();
    return edits.map(({ sheet, row, column }, index) => ({
      ...{ sheet, row, column },
      before: before[index] as Cell,
      after: written[index]!.formulas[0]?.[0] as Cell,
    }));
  });
}

/**
 * Puts back what stood in cells before {@link replaceCells}.
 * @throws ExcelProblem when one of them no longer holds what was written
 */
export function putBack(replaced: readonly Replaced[], seen: readonly Seen[]): Promise<void> {
  return batch(async (context, commit) => {
    await stillThere(context, seen);
    const ranges = replaced.map((cell) => rangeOf(context, cell).load("formulas"));
    await context.sync();
    if (ranges.some((range, index) => String(range.formulas[0]?.[0]) !== String(replaced[index]!.after)))
      throw new ExcelProblem(strings.excel.moved);
    replaced.forEach(({ before }, index) => (ranges[index]!.formulas = [[before]]));
    await commit();
  });
}
