import type { ContentCell, SheetContent } from "../content/sheetContent";

/** The sheets with every result as a plain value: what a program without the add-in can show and never works out anew. */
export function valuesOnly(sheets: readonly SheetContent[]): SheetContent[] {
  return sheets.map((sheet) => ({ ...sheet, cells: sheet.cells.map((row) => row.map((cell) => cell && plain(cell))) }));
}

const plain = ({ value, error, look }: ContentCell): ContentCell => ({
  value,
  ...(error && { error }),
  ...(look && { look }),
});
