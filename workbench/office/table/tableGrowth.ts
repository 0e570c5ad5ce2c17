import { type IRange, RedoCommandId, UndoCommandId } from "@univerjs/core";
import { InsertRowMutation, MoveRangeMutation, SetRangeValuesMutation } from "@univerjs/sheets";
import type { Book } from "../../engine";
import { changedCells } from "../base/events";
import { fillNewRows, isTakenBelow, takeInRows } from "./newRows";
import { findTable, listTables, type GridTable } from "./tableEdits";

/** Whose workbook it is, and whether a batch of the pane is at work rather than a person. */
export interface Typing {
  readonly book: Book;
  readonly busy: boolean;
}

/**
 * Lets tables go along with what a person does, as Excel's do: what is typed, pasted, filled or moved directly under one
 * joins it, and a row inserted in one gets its formulas. That is one step of undo with the change itself.
 */
export function growTablesWhileTyping(host: Typing): void {
  const { book } = host;
  const touched = new Map<string, Touched>();
  let rewinding = false;
  book.api.addEvent(book.api.Event.BeforeCommandExecute, ({ id }) => {
    if (isRewind(id)) rewinding = true;
  });
  book.api.onCommandExecuted(({ id, params }, options) => {
    if (isRewind(id)) rewinding = false;
    if (rewinding || host.busy || options?.onlyLocal) return;
    const change = changeOf(id, params);
    if (!change) return;
    for (const table of listTables(book)) {
      if (table.subUnitId !== change.sheet) continue;
      const under = rowsUnder(change.cells, table.range);
      const between = change.inserted && isInside(change.cells, table.range);
      if (under === null && !between) continue;
      if (touched.size === 0) afterwards(book, touched);
      const known = touched.get(table.id) ?? { under: -1, between: false };
      touched.set(table.id, { under: Math.max(known.under, under ?? -1), between: known.between || between });
    }
  });
}

/** What was done to a table: the last row touched under it (-1 for none), and whether rows came in between. */
interface Touched {
  under: number;
  between: boolean;
}

const isRewind = (id: string): boolean => id === UndoCommandId || id === RedoCommandId;

interface Change {
  sheet: string;
  cells: IRange;
  /** Rows were put in there. */
  inserted: boolean;
}

function changeOf(id: string, params: unknown): Change | null {
  if (id === SetRangeValuesMutation.id) {
    const { subUnitId, cellValue } = params as { subUnitId: string; cellValue?: Parameters<typeof changedCells>[0] };
    const cells = changedCells(cellValue);
    return cells && { sheet: subUnitId, cells, inserted: false };
  }
  if (id === MoveRangeMutation.id) {
    const { to } = params as { to: { subUnitId: string; value: Parameters<typeof changedCells>[0] } };
    const cells = changedCells(to.value);
    return cells && { sheet: to.subUnitId, cells, inserted: true };
  }
  if (id === InsertRowMutation.id) {
    const { subUnitId, range } = params as { subUnitId: string; range: IRange };
    return { sheet: subUnitId, cells: range, inserted: true };
  }
  return null;
}

/** Last of the changed rows when they go on from a table's last one; null when they do not. */
function rowsUnder(cells: IRange, table: GridTable["range"]): number | null {
  const beside = cells.endColumn < table.startColumn || cells.startColumn > table.endColumn;
  return !beside && cells.startRow <= table.endRow + 1 && cells.endRow > table.endRow ? cells.endRow : null;
}

const isInside = (cells: IRange, table: GridTable["range"]): boolean =>
  cells.startRow > table.startRow && cells.startRow <= table.endRow;

/** Not in the middle of the change itself, but in its step of undo. */
function afterwards(book: Book, touched: Map<string, Touched>): void {
  const end = book.beginStep();
  setTimeout(() => {
    try {
      for (const [id, { under, between }] of touched) {
        const table = findTable(book, id);
        const sheet = book.sheets().find((each) => each.id === table?.subUnitId);
        if (!table || !sheet) continue;
        if (between) fillNewRows(book, sheet, table);
        if (under > table.range.endRow && isTakenBelow(sheet, table)) takeInRows(book, sheet, table, under);
      }
    } finally {
      touched.clear();
      end();
    }
  }, 0);
}
