import {
  customNameCharacterCheck,
  generateRandomId,
  type IMutationInfo,
  ICommandService,
  IUndoRedoService,
} from "@univerjs/core";
import {
  AddSheetTableMutation,
  DeleteSheetTableMutation,
  type ITableInfoWithUnitId,
  type ITableRange,
  SetSheetTableCommand,
  SetSheetTableMutation,
  SheetTableInsertRowAtCommand,
} from "@univerjs/sheets-table";
import type { Book, CellRange } from "../../engine";
import { invalidArgument, OfficeError } from "../base/officeError";

export type GridTable = ITableInfoWithUnitId;

export const listTables = (book: Book): GridTable[] => book.native.getTableList() as GridTable[];

/** By name, in any case, or by id. */
export function findTable(book: Book, key: string): GridTable | null {
  const tables = listTables(book);
  return (
    tables.find(({ name }) => name.toLowerCase() === key.toLowerCase()) ?? tables.find(({ id }) => id === key) ?? null
  );
}

/** Makes cells a table, its first row the headers, under the next free name. Gives the table's id. */
export function addTable(book: Book, cells: CellRange): string {
  const { row, column, rows, columns } = cells.place;
  const range: ITableRange = {
    startRow: row,
    endRow: row + rows - 1,
    startColumn: column,
    endColumn: column + columns - 1,
  };
  const subUnitId = cells.native.getSheetId();
  if (rows < 2) throw invalidArgument("a table needs a row under its headers.");
  const other = listTables(book).find((table) => table.subUnitId === subUnitId && overlap(table.range, range));
  if (other) throw new OfficeError("InvalidArgument", `A table can't overlap another table: ${other.name}.`);
  const tableId = generateRandomId();
  const where = { unitId: book.id, subUnitId, tableId };
  const header = cells.values[0]!.map((value, at) => String(value ?? `Column${at + 1}`));
  carryOut(
    book,
    { id: AddSheetTableMutation.id, params: { ...where, name: freeName(book), range, header, options: {} } },
    { id: DeleteSheetTableMutation.id, params: where },
  );
  return tableId;
}

/** Renames a table. Formulas that speak of it follow, except of one that was made just now: there are none yet. */
export function renameTable(book: Book, tableId: string, name: string, isNew: boolean): void {
  const table = findTable(book, tableId)!;
  const taken = listTables(book).some(
    (other) => other.id !== tableId && other.name.toLowerCase() === name.toLowerCase(),
  );
  if (taken) throw new OfficeError("InvalidArgument", `There is a table named ${name} already.`);
  if (!customNameCharacterCheck(name, new Set())) throw invalidArgument(`"${name}" names no table.`);
  const where = { unitId: book.id, subUnitId: table.subUnitId, tableId };
  // The grid's own command lets no table be called like a sheet; Excel does.
  const sameAsSheet = book.findSheet(name) !== null;
  if (isNew || sameAsSheet) {
    carryOut(
      book,
      { id: SetSheetTableMutation.id, params: { ...where, config: { name } } },
      { id: SetSheetTableMutation.id, params: { ...where, config: { name: table.name } } },
    );
  } else {
    book.services.get(ICommandService).syncExecuteCommand(SetSheetTableCommand.id, { ...where, name });
  }
}

/** Makes room for rows under a table's last one: what lies below moves down. */
export function growTable(book: Book, table: GridTable, count: number, isFreeBelow: boolean): void {
  const commands = book.services.get(ICommandService);
  const where = { unitId: book.id, subUnitId: table.subUnitId, tableId: table.id };
  const { range } = table;
  if (isFreeBelow) {
    const newRange = { ...range, endRow: range.endRow + count };
    commands.syncExecuteCommand(SetSheetTableCommand.id, { ...where, updateRange: { newRange } });
  } else {
    commands.syncExecuteCommand(SheetTableInsertRowAtCommand.id, { ...where, index: range.endRow + 1, count });
  }
}

function carryOut(book: Book, redo: IMutationInfo<object>, undo: IMutationInfo<object>): void {
  book.services.get(ICommandService).syncExecuteCommand(redo.id, redo.params);
  book.services.get(IUndoRedoService).pushUndoRedo({ unitID: book.id, undoMutations: [undo], redoMutations: [redo] });
}

function freeName(book: Book): string {
  for (let number = listTables(book).length + 1; ; number++) {
    if (!findTable(book, `Table${number}`)) return `Table${number}`;
  }
}

const overlap = (a: ITableRange, b: ITableRange): boolean =>
  a.startRow <= b.endRow && b.startRow <= a.endRow && a.startColumn <= b.endColumn && b.startColumn <= a.endColumn;
