import { IRenderManagerService, SheetSkeletonManagerService } from "@univerjs/preset-sheets-core";
import { SetWorksheetActiveOperation, SetWorksheetRowAutoHeightMutation } from "@univerjs/sheets";
import type { Book } from "../../engine";

/** Rows measured at a time, between two moments in which the page has something else to do. */
const AT_A_TIME = 50;
/** Rows of a sheet that are measured: nobody reads on that far at once. */
const MOST = 2000;

/**
 * Makes the rows of the sheet in front as high as their words. By itself the grid does so where somebody types; rows that
 * spill from a formula, and those of a workbook just opened, it leaves at one line. A height that somebody chose stays.
 */
export function fitRowHeights(book: Book): void {
  const { calculation, services } = book;
  const fitted = new Set<string>();
  /** The last row of each sheet that was measured: what a result has left since is measured once more. */
  const measured = new Map<string, number>();
  let latest = {};

  const fit = () => {
    const turn = (latest = {});
    const sheet = book.activeSheet();
    if (fitted.has(sheet.id)) return;
    const unitId = book.id;
    const skeleton = services
      .get(IRenderManagerService)
      .getRenderById(unitId)
      ?.with(SheetSkeletonManagerService)
      .ensureSkeleton(sheet.id);
    if (!skeleton) return;

    const rows = (first: number, end: number) => {
      if (turn !== latest || calculation.busy) return;
      if (first > end) return void fitted.add(sheet.id);
      const endRow = Math.min(end, first + AT_A_TIME - 1);
      const native = sheet.native.getSheet();
      const rowsAutoHeightInfo = skeleton
        .calculateAutoHeightInRange([{ startRow: first, endRow, startColumn: 0, endColumn: 0 }])
        .filter(({ row, autoHeight }) => autoHeight && native.getRowHeight(row) !== autoHeight);
      if (rowsAutoHeightInfo.length > 0) {
        const heights = { unitId, subUnitId: sheet.id, rowsAutoHeightInfo };
        book.api.syncExecuteCommand(SetWorksheetRowAutoHeightMutation.id, heights, { onlyLocal: true });
      }
      requestIdleCallback(() => rows(endRow + 1, end));
    };
    requestIdleCallback(() => {
      if (turn !== latest) return;
      const end = Math.min((sheet.used()?.place.rows ?? 1) - 1, MOST);
      const before = measured.get(sheet.id) ?? 0;
      measured.set(sheet.id, end);
      rows(1, Math.max(end, before));
    });
  };

  calculation.onFinished(() => {
    fitted.clear();
    fit();
  });
  book.api.onCommandExecuted(({ id }) => {
    if (id === SetWorksheetActiveOperation.id) fit();
  });
  fit();
}
