import type { ICellData, Nullable } from "@univerjs/core";
import type { IArrayFormulaUnitCellType } from "@univerjs/engine-formula";

/** Spilled cells by workbook, sheet, row and column. */
type Cells = IArrayFormulaUnitCellType;
type Level = Record<string, unknown>;

/** Workbook, sheet and row: what lies above the cells. */
const levels = 3;

/**
 * The spilled cells that differ; null for one that is gone. An edit changes few of many thousand, and each that is sent
 * costs the page's thread the time to unpack it.
 */
export const changedSpills = (before: Cells, now: Cells): Cells =>
  changed(before as Level, now as Level, levels) as Cells;

/** The cells with the changes made; neither of them is written to. */
export const withChanges = (cells: Cells, changes: Cells): Cells =>
  merged(cells as Level, changes as Level, levels) as Cells;

/** The same cells, so that later changes to the original do not show. */
export const copyOfSpills = (cells: Cells): Cells => merged({}, cells as Level, levels) as Cells;

function changed(before: Level, now: Level, above: number): Level {
  const found: Level = {};
  for (const key of new Set([...Object.keys(before), ...Object.keys(now)])) {
    if (above > 0) {
      const inside = changed((before[key] ?? {}) as Level, (now[key] ?? {}) as Level, above - 1);
      if (Object.keys(inside).length > 0) found[key] = inside;
    } else if (!isSame(before[key] as Nullable<ICellData>, now[key] as Nullable<ICellData>)) {
      found[key] = now[key] ?? null;
    }
  }
  return found;
}

function merged(cells: Level, changes: Level, above: number): Level {
  const result = { ...cells };
  for (const [key, change] of Object.entries(changes)) {
    if (above > 0) result[key] = merged((cells[key] ?? {}) as Level, (change ?? {}) as Level, above - 1);
    else if (change === null) delete result[key];
    else result[key] = change;
  }
  return result;
}

function isSame(first: Nullable<ICellData>, second: Nullable<ICellData>): boolean {
  if (!first || !second) return !first === !second;
  if (first.v !== second.v || first.t !== second.t) return false;
  return first.custom === second.custom && first.s === second.s
    ? true
    : JSON.stringify(first) === JSON.stringify(second);
}
