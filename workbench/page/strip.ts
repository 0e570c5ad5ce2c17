import type { Book, CellRange } from "../engine";

/**
 * The line under the grid. It tells the whole message of an error cell, under the pointer or selected; of a number it
 * tells every digit, of a long text the whole text.
 */
export function startStrip(strip: HTMLElement, book: Book): void {
  let hovered: CellRange | null = null;

  const show = () => {
    const told = (hovered && errorOf(hovered)) ?? describe(book.selection());
    strip.textContent = told.text;
    strip.title = told.text;
    strip.dataset.kind = told.kind;
  };

  book.onSelection(show);
  book.calculation.onFinished(show);
  book.api.addEvent(book.api.Event.CellHover, ({ row, column }) => {
    hovered = book.activeSheet().cells(row, column);
    show();
  });
  show();
}

interface Told {
  kind: "error" | "value";
  text: string;
}

function errorOf(cell: CellRange): Told | null {
  const error = cell.errors[0]![0];
  return error ? { kind: "error", text: `${place(cell)}  ${error.code}  ${error.message}` } : null;
}

function describe(selection: CellRange | null): Told {
  if (!selection) return { kind: "value", text: "" };
  const { rows, columns } = selection.place;
  if (rows > 1 || columns > 1) return { kind: "value", text: `${place(selection)}  ${rows} × ${columns} cells` };
  const value = selection.values[0]![0];
  return errorOf(selection) ?? { kind: "value", text: `${place(selection)}  ${value === null ? "" : String(value)}` };
}

function place(range: CellRange): string {
  return range.address.replace(/^.*!/, "");
}
