import type { ICellData, Injector, IRange, Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";

/** Values by row and column. */
type Cells<T> = Record<number, Record<number, T>>;
type BySheet<T> = Record<string, Nullable<Record<string, T>>>;
type Matrix = { forValue(each: (row: number, column: number, cell: Nullable<ICellData>) => void): void };
type Runtime = BySheet<Matrix>;

/**
 * Puts the spilled cells of a calculation among those kept. The engine writes all spilled cells of a sheet to JSON and
 * reads them back, twice in each calculation; here the cells are put in their places and that is all.
 */
export function keepSpillsQuickly(injector: Injector): void {
  const model = injector.get(FormulaDataModel);
  if (Object.hasOwn(model, "mergeArrayFormulaCellData")) return;

  model.clearPreviousArrayFormulaCellData = (results) =>
    eachSheet(results as unknown as Runtime, (unitId, sheetId, anchors) => {
      const { ranges, cells } = keptIn(model, unitId, sheetId);
      anchors.forValue((row, column) => {
        const range = ranges[row]?.[column];
        if (!range) return;
        removeCells(cells, range);
        removeCells(ranges, { startRow: row, endRow: row, startColumn: column, endColumn: column });
      });
    });

  model.mergeArrayFormulaCellData = (results) =>
    eachSheet(results as unknown as Runtime, (unitId, sheetId, spilled) => {
      const { ranges, cells } = keptIn(model, unitId, sheetId);
      spilled.forValue((row, column) => {
        const before = ranges[row]?.[column];
        if (before) removeCells(cells, before);
      });
      spilled.forValue((row, column, cell) => {
        if (cell == null) delete cells[row]?.[column];
        else (cells[row] ??= {})[column] = cell;
      });
    });
}

function eachSheet(results: Runtime, work: (unitId: string, sheetId: string, cells: Matrix) => void): void {
  for (const [unitId, sheets] of Object.entries(results)) {
    for (const [sheetId, cells] of Object.entries(sheets ?? {})) work(unitId, sheetId, cells);
  }
}

/** What is kept for a sheet: the area of each spill by its first cell, and the cells. */
function keptIn(model: FormulaDataModel, unitId: string, sheetId: string) {
  const ranges = model.getArrayFormulaRange() as BySheet<Cells<IRange>>;
  const cells = model.getArrayFormulaCellData() as BySheet<Cells<Nullable<ICellData>>>;
  return {
    ranges: ((ranges[unitId] ??= {})[sheetId] ??= {}),
    cells: ((cells[unitId] ??= {})[sheetId] ??= {}),
  };
}

function removeCells<T>(cells: Cells<T>, { startRow, endRow, startColumn, endColumn }: IRange): void {
  for (let row = startRow; row <= endRow; row++) {
    const line = cells[row];
    if (!line) continue;
    for (let column = startColumn; column <= endColumn; column++) delete line[column];
    if (Object.keys(line).length === 0) delete cells[row];
  }
}
