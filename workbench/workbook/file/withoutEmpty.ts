import type { SheetContent } from "../content/sheetContent";

/** What is printed or read without the add-in leaves out tables nobody has written in, and results that only wait. */
export const withoutEmpty = (sheets: readonly SheetContent[]): SheetContent[] =>
  sheets.filter((sheet) => !isEmpty(sheet));

function isEmpty({ cells, tables }: SheetContent): boolean {
  const filled = cells.map((row) => row.some((cell) => cell !== null && cell.value !== null && cell.value !== ""));
  if (tables.length > 0) return !filled.slice(1).some(Boolean);
  // A result that waits is one cell of words.
  return filled.filter(Boolean).length <= 1 && (cells[0]?.filter((cell) => cell?.value).length ?? 0) <= 1;
}
