import { strings } from "../../strings";
import type { Cell } from "../../workbook/items";
import { ExcelProblem } from "../batch";
import type { Place } from "../selection";

/** A cell as it was when it was read, by which a place is known again. */
export interface Seen extends Place {
  value: Cell;
}

/**
 * Looks whether cells still hold what was read: since then somebody may have sorted, inserted or written.
 * @throws ExcelProblem when one does not; nothing has been written then
 */
export async function stillThere(context: Excel.RequestContext, seen: readonly Seen[]): Promise<void> {
  if (seen.length === 0) return;
  const cells = seen.map(({ sheet, row, column }) =>
    context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, 1).load("values"),
  );
  await context.sync();
  const moved = seen.some(({ value }, index) => !same(cells[index]?.values[0]?.[0], value));
  if (moved) throw new ExcelProblem(strings.excel.moved);
}

const same = (now: unknown, then: Cell): boolean => String(now ?? "") === String(then);
