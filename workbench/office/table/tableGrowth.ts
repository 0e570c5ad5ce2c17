import type { IRange } from "@univerjs/core";
import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import type { Book, Sheet } from "../../engine";
import { takeAfterLastRow } from "./newRows";
import { findTable, growTable, listTables, type GridTable } from "./tableEdits";

/** Whose workbook it is, and whether a batch of the pane is at work rather than a person. */
export interface Typing {
  readonly book: Book;
  readonly busy: boolean;
}

/** Lets a table grow by the row that a person types under its last one, as Excel does. */
export function growTablesWhileTyping(host: Typing): void {
  const { book } = host;
  book.api.onCommandExecuted(({ id, params }) => {
    if (id !== SetRangeValuesCommand.id || host.busy) return;
    const { subUnitId, range } = params as { subUnitId?: string; range?: IRange };
    const table = listTables(book).find((each) => each.subUnitId === subUnitId && isUnder(range, each.range));
    // Not in the middle of the edit itself.
    if (table) setTimeout(() => grow(book, table.id), 0);
  });
}

const isUnder = (range: IRange | undefined, table: GridTable["range"]): boolean =>
  range !== undefined &&
  range.startRow === table.endRow + 1 &&
  range.endRow === range.startRow &&
  range.startColumn >= table.startColumn &&
  range.endColumn <= table.endColumn;

function grow(book: Book, id: string): void {
  const table = findTable(book, id);
  const sheet = book.sheets().find((each) => each.id === table?.subUnitId);
  if (!table || !sheet) return;
  const { startColumn, endColumn, endRow } = table.range;
  const typed = sheet.cells(endRow + 1, startColumn, 1, endColumn - startColumn + 1);
  if (typed.values.flat().every((value) => value === null || value === "")) return;
  const end = book.beginStep();
  growTable(book, table, 1, true);
  takeAfterLastRow(sheet, table, 1);
  copyFormulas(book, sheet, table);
  end();
}

/** A column of formulas goes on in the new row. */
function copyFormulas(book: Book, sheet: Sheet, { range }: GridTable): void {
  const shift = book.services.get(LexerTreeBuilder);
  for (let column = range.startColumn; column <= range.endColumn; column++) {
    const formula = sheet.cells(range.endRow, column).formulas[0]![0]!;
    const added = sheet.cells(range.endRow + 1, column);
    const [[value]] = added.values as [[unknown]];
    if (formula !== "" && value === null) added.setFormula(shift.moveFormulaRefOffset(formula, 0, 1));
  }
}
