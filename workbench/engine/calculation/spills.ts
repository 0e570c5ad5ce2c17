import {
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IRange,
  type IUnitRange,
  type Nullable,
  ObjectMatrix,
  type Worksheet,
} from "@univerjs/core";
import type { FormulaDataModel, IArrayFormulaRangeType } from "@univerjs/engine-formula";

/** The cells of a sheet that a spilled formula fills, exact. */
export function spilledCells(
  model: FormulaDataModel,
  sheet: Worksheet,
): IObjectMatrixPrimitiveType<Nullable<ICellData>> {
  return model.getArrayFormulaCellData()[sheet.getUnitId()]?.[sheet.getSheetId()] ?? {};
}

/** Every spilled area of a workbook, by sheet and anchor cell. */
export type Spills = ReadonlyMap<string, { unitId: string; sheetId: string; range: IRange }>;

/** The areas that hold spilled values now; a formula that shows #SPILL! fills only its own cell. */
export function currentSpills(model: FormulaDataModel): Spills {
  const spills = new Map<string, { unitId: string; sheetId: string; range: IRange }>();
  const ranges: IArrayFormulaRangeType = model.getArrayFormulaRange();
  const cells = model.getArrayFormulaCellData();
  for (const [unitId, sheets] of Object.entries(ranges)) {
    for (const [sheetId, anchors] of Object.entries(sheets ?? {})) {
      new ObjectMatrix<IRange>(anchors).forValue((row, column, range) => {
        const anchor = cells[unitId]?.[sheetId]?.[row]?.[column];
        if (!range || (anchor && anchor.v === "#SPILL!")) return;
        spills.set(`${unitId}/${sheetId}/${row}/${column}`, { unitId, sheetId, range: { ...range } });
      });
    }
  }
  return spills;
}

/** The cells that held a spilled value before and hold none of the same spill now. */
export function lostCells(before: Spills, now: Spills): IUnitRange[] {
  const lost: IUnitRange[] = [];
  for (const [key, { unitId, sheetId, range }] of before) {
    const left = now.get(key)?.range;
    for (const part of left ? outside(range, left) : [range]) lost.push({ unitId, sheetId, range: part });
  }
  return lost;
}

/** What of `range` lies outside `kept`, for two ranges with the same first cell: a strip below and a strip beside. */
function outside(range: IRange, kept: IRange): IRange[] {
  const parts: IRange[] = [];
  if (kept.endRow < range.endRow) parts.push({ ...range, startRow: kept.endRow + 1 });
  if (kept.endColumn < range.endColumn) parts.push({ ...range, startColumn: kept.endColumn + 1 });
  return parts;
}
