import { ObjectMatrix, type ICellData, type IObjectMatrixPrimitiveType, type Nullable } from "@univerjs/core";
import {
  InsertColMutation,
  InsertRowMutation,
  RemoveColMutation,
  RemoveRowMutation,
  SetRangeValuesMutation,
} from "@univerjs/sheets";
import type { Book } from "../../engine";

/** What a handler of `worksheets.onChanged` is told. */
export type ChangedArgs = Pick<
  Excel.WorksheetChangedEventArgs,
  "address" | "changeType" | "source" | "triggerSource" | "type" | "worksheetId"
>;

const changeTypes: Readonly<Record<string, ChangedArgs["changeType"]>> = {
  [SetRangeValuesMutation.id]: "RangeEdited",
  [InsertRowMutation.id]: "RowInserted",
  [RemoveRowMutation.id]: "RowDeleted",
  [InsertColMutation.id]: "ColumnInserted",
  [RemoveColMutation.id]: "ColumnDeleted",
};

interface Changed {
  subUnitId: string;
  cellValue?: IObjectMatrixPrimitiveType<Nullable<ICellData>>;
  range?: { startRow: number; endRow: number; startColumn: number; endColumn: number };
}

/** Tells of every change to cells' contents, whoever makes it; results of formulas and looks are none. */
export function onCellsChanged(book: Book, tell: (args: ChangedArgs) => void): () => void {
  const subscription = book.api.onCommandExecuted(({ id, params }, options) => {
    const changeType = changeTypes[id];
    if (!changeType || options?.onlyLocal) return;
    const changed = params as Changed;
    const place = changed.range ?? changedCells(changed.cellValue);
    if (!place) return;
    const sheet = book.sheets().find((each) => each.id === changed.subUnitId);
    if (!sheet) return;
    const { startRow, startColumn, endRow, endColumn } = place;
    const cells = sheet.cells(startRow, startColumn, endRow - startRow + 1, endColumn - startColumn + 1);
    tell({
      type: "WorksheetChanged",
      worksheetId: sheet.id,
      address: cells.address.replace(/^.*!/, ""),
      changeType,
      source: "Local",
      triggerSource: "Unknown",
    });
  });
  return () => subscription.dispose();
}

/** The area around the cells whose contents a change mentions; null when it only mentions looks. */
export function changedCells(cells: Changed["cellValue"]): Required<Changed>["range"] | null {
  if (!cells) return null;
  const rows: number[] = [];
  const columns: number[] = [];
  new ObjectMatrix(cells).forValue((row, column, cell) => {
    const contents: (keyof ICellData)[] = ["v", "f", "p", "si"];
    if (cell && !contents.some((key) => key in cell)) return;
    rows.push(row);
    columns.push(column);
  });
  if (rows.length === 0) return null;
  const least = (list: number[]) => list.reduce((a, b) => Math.min(a, b));
  const most = (list: number[]) => list.reduce((a, b) => Math.max(a, b));
  return { startRow: least(rows), endRow: most(rows), startColumn: least(columns), endColumn: most(columns) };
}

/** Tells once whenever another range or sheet is selected. */
export function onSelectionChanged(book: Book, tell: () => void): () => void {
  let last = book.selection()?.address;
  return book.onSelection((selection) => {
    if (selection?.address === last) return;
    last = selection?.address;
    tell();
  });
}
