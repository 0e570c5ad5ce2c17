import type { Injector } from "@univerjs/core";
import { IUniverInstanceService, type Workbook } from "@univerjs/core";
import { INumfmtService } from "@univerjs/sheets";

/**
 * The grid formats a cell by its own number format alone, and a spilled cell has none. This lets a cell without one take
 * its column's, as Excel does.
 */
export function formatByColumn(injector: Injector): void {
  const formats = injector.get(INumfmtService);
  const books = injector.get(IUniverInstanceService);
  const own = formats.getValue.bind(formats);
  formats.getValue = (unitId, sheetId, row, column, model) => {
    const found = own(unitId, sheetId, row, column, model);
    if (found) return found;
    const sheet = books.getUnit<Workbook>(unitId)?.getSheetBySheetId(sheetId);
    return sheet?.getColumnStyle(column)?.n ?? null;
  };
}
