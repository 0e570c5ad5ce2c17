import { CellValueType, type ICellData } from "@univerjs/core";
import { LexerTreeBuilder } from "@univerjs/engine-formula";
import type { Book, CellRange, CellValue, Sheet } from "../../engine";
import { cellsAt } from "../sheet/place";
import { growTable, listTables, type GridTable } from "./tableEdits";

/** Grows a table by rows under its last one; what lies below moves down, if anything does. Gives the new cells. */
export function addEmptyRows(book: Book, sheet: Sheet, table: GridTable, count: number): CellRange {
  const { startColumn, endColumn, endRow } = table.range;
  const added = cellsAt(sheet, endRow + 1, startColumn, count, endColumn - startColumn + 1);
  growTable(book, table, count, isFreeBelow(sheet, table));
  takeAfterLastRow(sheet, table, count);
  return added;
}

/**
 * Makes the rows that stand under a table part of it, down to `last`: they get its formats, lists and formulas. Empty
 * rows at the end stay out, and so do rows of another table.
 * @returns how many rows joined
 */
export function takeInRows(book: Book, sheet: Sheet, table: GridTable, last: number): number {
  const { startColumn, endColumn, endRow } = table.range;
  const width = endColumn - startColumn + 1;
  const free = firstRowBelow(book, table) - 1;
  const below = cellsAt(sheet, endRow + 1, startColumn, Math.max(1, Math.min(last, free) - endRow), width).values;
  let count = below.length;
  while (count > 0 && !below[count - 1]!.some(isFilled)) count -= 1;
  if (count === 0 || free <= endRow) return 0;
  growTable(book, table, count, true);
  keepTexts(sheet, table, count);
  takeAfterLastRow(sheet, table, count);
  fillFormulas(book, sheet, table.range, endRow + 1, endRow + count);
  return count;
}

/** Rows that came in between the rows of a table get the formulas of its columns of formulas. */
export function fillNewRows(book: Book, sheet: Sheet, { range }: GridTable): void {
  const { startRow, endRow, startColumn, endColumn } = range;
  const body = sheet.cells(startRow + 1, startColumn, endRow - startRow, endColumn - startColumn + 1);
  const { values, formulas } = body;
  values.forEach((row, at) => {
    const isEmpty = row.every((value, column) => !isFilled(value) && formulas[at]![column] === "");
    if (isEmpty) fillFormulas(book, sheet, range, startRow + 1 + at, startRow + 1 + at);
  });
}

/** New rows under a table's old last one take after it: number formats and lists to choose from. */
export function takeAfterLastRow(sheet: Sheet, { range }: GridTable, count: number): void {
  const { startColumn, endColumn, endRow } = range;
  const columns = endColumn - startColumn + 1;
  const formats = sheet.cells(endRow, startColumn, 1, columns).numberFormats[0]!;
  const added = sheet.cells(endRow + 1, startColumn, count, columns);
  added.setNumberFormats(Array.from({ length: count }, () => formats));
  for (let column = startColumn; column <= endColumn; column++) {
    const rule = sheet.cells(endRow, column).native.getDataValidation();
    rule?.setRanges([...rule.getRanges(), sheet.cells(endRow + 1, column, count, 1).native]);
  }
}

/** What was read as a number or date before its column's text format was there goes back to what was written. */
function keepTexts(sheet: Sheet, { range }: GridTable, count: number): void {
  for (let column = range.startColumn; column <= range.endColumn; column++) {
    if (sheet.cells(range.endRow, column).numberFormats[0]![0] !== "@") continue;
    const added = sheet.cells(range.endRow + 1, column, count, 1);
    const { values, texts, formulas } = added;
    values.forEach(([value], at) => {
      if (typeof value !== "number" || formulas[at]![0] !== "") return;
      const text: ICellData = { v: texts[at]![0]!, t: CellValueType.STRING };
      sheet.cells(range.endRow + 1 + at, column).native.setValue(text);
    });
  }
}

/** A column of formulas goes on in empty cells of rows `from` to `to`. */
function fillFormulas(book: Book, sheet: Sheet, range: GridTable["range"], from: number, to: number): void {
  const shift = book.services.get(LexerTreeBuilder);
  for (let column = range.startColumn; column <= range.endColumn; column++) {
    const source = [from - 1, to + 1].find(
      (row) => row > range.startRow && row <= range.endRow && sheet.cells(row, column).formulas[0]![0] !== "",
    );
    if (source === undefined) continue;
    const formula = sheet.cells(source, column).formulas[0]![0]!;
    const { values, formulas } = sheet.cells(from, column, to - from + 1, 1);
    const isFree = values.map(([value], at) => !isFilled(value!) && formulas[at]![0] === "");
    // Cells that follow each other at once: each writing costs the engine a look at every formula there is.
    for (let first = isFree.indexOf(true); first >= 0;) {
      const taken = isFree.indexOf(false, first);
      const count = (taken < 0 ? isFree.length : taken) - first;
      const row = from + first;
      const made = Array.from({ length: count }, (_, at) => [
        shift.moveFormulaRefOffset(formula, 0, row + at - source),
      ]);
      sheet.cells(row, column, count, 1).setValues(made);
      first = isFree.indexOf(true, first + count);
    }
  }
}

const isFilled = (value: CellValue): boolean => value !== null && value !== "";

/** First row under a table that belongs to another one in some of the same columns. */
function firstRowBelow(book: Book, table: GridTable): number {
  const { range, subUnitId, id } = table;
  const below = listTables(book).filter(
    (other) =>
      other.id !== id &&
      other.subUnitId === subUnitId &&
      other.range.startRow > range.endRow &&
      other.range.startColumn <= range.endColumn &&
      other.range.endColumn >= range.startColumn,
  );
  return Math.min(...below.map((other) => other.range.startRow));
}

function isFreeBelow(sheet: Sheet, { range }: GridTable): boolean {
  const used = sheet.used();
  const last = used ? used.place.rows - 1 : -1;
  if (last <= range.endRow) return true;
  const width = range.endColumn - range.startColumn + 1;
  const below = sheet.cells(range.endRow + 1, range.startColumn, last - range.endRow, width);
  return below.values.flat().every((value) => value === null || value === "");
}

/** Whether the row directly under a table holds anything. */
export function isTakenBelow(sheet: Sheet, { range }: GridTable): boolean {
  const width = range.endColumn - range.startColumn + 1;
  return cellsAt(sheet, range.endRow + 1, range.startColumn, 1, width).values[0]!.some(isFilled);
}
