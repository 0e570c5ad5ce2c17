import { CellValueType, type ICellData } from "@univerjs/core";
import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { RUN_COLUMNS } from "../../../src/shop/run/runsTable";
import { columnPlaces, missingColumns } from "../../../taskpane/workbook/columns";
import type { Book, CellRange, CellValue, Sheet } from "../../engine";
import { addEmptyRows } from "../../office/table/newRows";
import { listTables, type GridTable } from "../../office/table/tableEdits";
import { words } from "./words";

/** A workbook's Runs table, read for what goes into it. */
export interface RunsTable {
  headers: string[];
  /** Columns that hold formulas and nothing else: they go on by formula. */
  worked: boolean[];
  names: string[];
  /** Its cells as they are, header row first. */
  cells: CellValue[][];
  /** Adds rows under the last written one, as one step of undo, and gives their cells. */
  append(rows: readonly (readonly CellValue[])[]): CellRange;
}

/**
 * Finds the table that has the columns of runs; the one called Runs, should there be several.
 * @throws Error when there is none, or when its runs are formulas that follow another table
 */
export function findRunsTable(book: Book): RunsTable {
  const candidates = listTables(book).flatMap((table) => {
    const sheet = book.sheets().find(({ id }) => id === table.subUnitId);
    if (!sheet) return [];
    const headers = cellsOf(sheet, table, 0, 1).values[0]!.map((value) => String(value ?? ""));
    return hasRunColumns(headers) ? [{ table, sheet, headers }] : [];
  });
  const found = candidates.find(({ table }) => table.name.toLowerCase() === "runs") ?? candidates[0];
  if (!found) throw new Error(words.runs.noTable);

  const { table, sheet, headers } = found;
  const { formulas: written, values } = cellsOf(sheet, table, 1, table.range.endRow - table.range.startRow);
  const formulas = written.at(-1)!.map((formula, at) => (isWorked({ formulas: written, values }, at) ? formula : ""));
  const worked = formulas.map((formula) => formula !== "");
  const places = columnPlaces(headers, RUN_COLUMNS);
  if (worked[places.get("Route")!]) throw new Error(words.runs.linked(table.name));
  const names = values.map((row) => String(row[places.get("Run")!] ?? ""));
  return {
    headers,
    worked,
    names,
    cells: [headers, ...values],
    append: (rows) => append(book, sheet, table, formulas, rows),
  };
}

/** Whether every cell of a column that holds anything holds a formula; the last one does. */
function isWorked({ formulas, values }: Pick<CellRange, "formulas" | "values">, column: number): boolean {
  const typed = values.some((row, at) => formulas[at]![column] === "" && String(row[column] ?? "").trim() !== "");
  return !typed && formulas.at(-1)![column] !== "";
}

function hasRunColumns(headers: readonly string[]): boolean {
  try {
    return missingColumns(headers, RUN_COLUMNS).length === 0;
  } catch {
    // A header that stands twice.
    return false;
  }
}

function append(
  book: Book,
  sheet: Sheet,
  table: GridTable,
  formulas: readonly string[],
  rows: readonly (readonly CellValue[])[],
): CellRange {
  const { startRow, endRow, startColumn, endColumn } = table.range;
  const free = emptyAtEnd(cellsOf(sheet, table, 1, endRow - startRow), formulas);
  const shift = book.services.get(LexerTreeBuilder);
  const end = book.beginStep();
  try {
    if (rows.length > free) addEmptyRows(book, sheet, table, rows.length - free);
    const first = endRow + 1 - free;
    const cells = sheet.cells(first, startColumn, rows.length, endColumn - startColumn + 1);
    cells.native.setValues(
      rows.map((row, at) =>
        row.map((value, column): ICellData => {
          const formula = formulas[column]!;
          if (formula !== "") return { f: shift.moveFormulaRefOffset(formula, 0, first + at - endRow) };
          return value === null ? {} : cellOf(value);
        }),
      ),
    );
    // So that they stay text when somebody edits them.
    rows.forEach((row, at) =>
      row.forEach((value, column) => {
        if (/^\s*[=+\-@]/.test(String(value))) sheet.cells(first + at, startColumn + column).setNumberFormat("@");
      }),
    );
    return cells;
  } finally {
    end();
  }
}

/** Rows at the end of a table in which nothing stands but the formulas that its last row has too. */
function emptyAtEnd(body: CellRange, last: readonly string[]): number {
  const { values, formulas } = body;
  const isEmpty = (row: number) =>
    last.every((formula, column) => {
      if (formula !== "") return formulas[row]![column] !== "";
      return formulas[row]![column] === "" && String(values[row]![column] ?? "").trim() === "";
    });
  let free = 0;
  while (free < values.length && isEmpty(values.length - 1 - free)) free += 1;
  return free;
}

function cellsOf(sheet: Sheet, { range }: GridTable, from: number, rows: number): CellRange {
  const columns = range.endColumn - range.startColumn + 1;
  return sheet.cells(range.startRow + from, range.startColumn, rows, columns);
}

/** Explicit nulls: the grid keeps what a new cell does not mention. A text is a text, "=1+1" and "1/2" too. */
function cellOf(value: CellValue): ICellData {
  const type =
    typeof value === "number"
      ? CellValueType.NUMBER
      : typeof value === "boolean"
        ? CellValueType.BOOLEAN
        : CellValueType.STRING;
  return { v: typeof value === "boolean" ? Number(value) : value, t: type, f: null, si: null, p: null, custom: null };
}
