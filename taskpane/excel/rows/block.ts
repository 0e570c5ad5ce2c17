import type { Cell } from "../../workbook/items";
import { strings } from "../../strings";
import { batch, ExcelProblem, reading } from "../batch";
import type { Place } from "../selection";
import { stillThere, type Seen } from "./stillThere";

/** Cells to write (values or formulas) with their number formats; both of the same shape. */
export interface Block {
  cells: Cell[][];
  formats: string[][];
  /** Zero-based rows of the block to print in bold. */
  bold: number[];
}

/** What stood in a block's place before it was written: enough to put it back. */
export interface Before extends Place {
  formulas: Cell[][];
  formats: string[][];
  /** What stands there since. */
  written: Cell[][];
  /** Rows the block prints in bold, and whether they were; null where some cells were and some not. */
  bold: { row: number; was: boolean | null }[];
}

/** What stands in a place, how many of its cells are taken, and the first row below everything in the sheet. */
export function lookAt(
  place: Place,
  rows: number,
  columns: number,
): Promise<{ cells: Cell[][]; taken: number; freeRow: number }> {
  return reading(async (context) => {
    const sheet = context.workbook.worksheets.getItem(place.sheet);
    const range = sheet.getRangeByIndexes(place.row, place.column, rows, columns).load("formulas");
    const used = sheet.getUsedRangeOrNullObject(true).load("rowIndex,rowCount");
    await context.sync();
    const taken = range.formulas.flat().filter((cell) => cell !== "" && cell !== null).length;
    const freeRow = used.isNullObject ? 0 : used.rowIndex + used.rowCount + 1;
    return { cells: range.formulas as Cell[][], taken, freeRow };
  });
}

/**
 * Writes a block over what {@link lookAt} saw in its place, and selects it.
 * @param cells what was seen; left out: nothing stood there
 * @throws ExcelProblem when something else stands there by now; nothing has been written then
 */
export function writeBlock(place: Place, block: Block, cells?: readonly (readonly Cell[])[]): Promise<Before> {
  return batch(async (context, commit) => {
    const sheet = context.workbook.worksheets.getItem(place.sheet);
    const [rows, columns] = [block.cells.length, block.cells[0]?.length ?? 0];
    const range = sheet.getRangeByIndexes(place.row, place.column, rows, columns).load("formulas,numberFormat");
    const fonts = block.bold.map((row) =>
      sheet.getRangeByIndexes(place.row + row, place.column, 1, columns).format.font.load("bold"),
    );
    await context.sync();
    const now = range.formulas as Cell[][];
    if (now.some((row, at) => row.some((cell, column) => String(cell ?? "") !== String(cells?.[at]?.[column] ?? ""))))
      throw new ExcelProblem(strings.excel.moved);
    const before: Omit<Before, "written"> = {
      ...place,
      formulas: now,
      formats: range.numberFormat as string[][],
      bold: block.bold.map((row, index) => ({ row, was: fonts[index]?.bold ?? null })),
    };
    range.numberFormat = block.formats;
    range.formulas = block.cells;
    for (const font of fonts) font.bold = true;
    range.format.autofitColumns();
    sheet.activate();
    range.select();
    await commit();
    const written = sheet.getRangeByIndexes(place.row, place.column, rows, columns).load("formulas");
    await context.sync();
    return { ...before, written: written.formulas as Cell[][] };
  });
}

/**
 * Puts back what stood there before a block was written.
 * @throws ExcelProblem when the place no longer holds what was written
 */
export function takeBack(before: Before): Promise<void> {
  return batch(async (context, commit) => {
    const [rows, columns] = [before.formulas.length, before.formulas[0]?.length ?? 0];
    const sheet = context.workbook.worksheets.getItem(before.sheet);
    const range = sheet.getRangeByIndexes(before.row, before.column, rows, columns).load("formulas");
    await context.sync();
    if (JSON.stringify(range.formulas) !== JSON.stringify(before.written)) throw new ExcelProblem(strings.excel.moved);
    for (const { row, was } of before.bold) {
      if (was !== null) sheet.getRangeByIndexes(before.row + row, before.column, 1, columns).format.font.bold = was;
    }
    range.numberFormat = before.formats;
    range.formulas = before.formulas;
    await commit();
  });
}

/**
 * Writes cells of one place, once it is known again: for cells that are ours, such as a run's route. A cell of null is
 * left as it is.
 * @throws ExcelProblem when the place no longer holds what was read
 */
export function writeCells(place: Place, cells: (Cell | null)[][], seen: readonly Seen[]): Promise<void> {
  return batch(async (context, commit) => {
    await stillThere(context, seen);
    const sheet = context.workbook.worksheets.getItem(place.sheet);
    sheet.getRangeByIndexes(place.row, place.column, cells.length, cells[0]?.length ?? 0).formulas = cells;
    await commit();
  });
}
