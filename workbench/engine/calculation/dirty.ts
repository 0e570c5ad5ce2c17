import {
  Disposable,
  type ICommandInfo,
  type Injector,
  type IUnitRange,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import { type IFormulaDirtyData, SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";

/** What the engine has to work out anew. */
export type Dirty = IFormulaDirtyData;

/** Tells what changes make dirty, in the engine's own way. */
export interface DirtyReader {
  _setTimeoutKey: number;
  _generateDirty(changes: readonly ICommandInfo[]): Dirty;
  _mergeDirty(first: Dirty, second: Dirty): Dirty;
}

/**
 * Takes over from the engine's own trigger. It loses work: it starts a second calculation while the first is still being
 * prepared, and forgets the newer change when the older calculation ends before it could be stopped. It knows what a
 * change makes dirty, so that much of it stays in use.
 */
export function takeOverTrigger(injector: Injector): DirtyReader {
  const trigger = injector.get(TriggerCalculationController);
  // Not by its own dispose: that also ends the progress which the grid's footer goes on reading.
  Disposable.prototype.dispose.call(trigger);
  const reader = trigger as unknown as DirtyReader;
  clearTimeout(reader._setTimeoutKey);
  return reader;
}

export const nothingDirty: Dirty = {
  forceCalculation: false,
  dirtyRanges: [],
  dirtyNameMap: {},
  dirtyDefinedNameMap: {},
  dirtySuperTableMap: {},
  dirtyUnitFeatureMap: {},
  dirtyUnitOtherFormulaMap: {},
  clearDependencyTreeCache: {},
};

/** A change that makes these cells dirty and changes nothing. */
export function changeOf(dirtyRanges: IUnitRange[]): ICommandInfo {
  return { id: SetTriggerFormulaCalculationStartMutation.id, params: { ...nothingDirty, dirtyRanges } };
}

/** Every cell of every sheet. */
export function allCells(injector: Injector): IUnitRange[] {
  const books = injector.get(IUniverInstanceService).getAllUnitsForType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  return books.flatMap((book) =>
    book.getSheets().map((sheet) => ({
      unitId: sheet.getUnitId(),
      sheetId: sheet.getSheetId(),
      range: { startRow: 0, startColumn: 0, endRow: sheet.getRowCount() - 1, endColumn: sheet.getColumnCount() - 1 },
    })),
  );
}
