import type { ContentCell, SheetContent } from "../content/sheetContent";

/**
 * On paper a Runs table leaves out the columns nobody has written in, so that the others are wide enough to read: they
 * stay in the file, out of sight.
 */
export const hideEmptyColumns = (sheets: readonly SheetContent[]): SheetContent[] =>
  sheets.map((sheet) => (sheet.tables.some(({ headers }) => headers.includes("Route")) ? hidden(sheet) : sheet));

function hidden(sheet: SheetContent): SheetContent {
  const isEmpty = (column: number) => sheet.cells.slice(1).every((row) => holdsNothing(row[column]));
  return { ...sheet, columns: sheet.columns.map((column, at) => (isEmpty(at) ? { ...column, hidden: true } : column)) };
}

const holdsNothing = (cell: ContentCell | null | undefined): boolean =>
  !cell || (!cell.formula && !cell.error && (cell.value === null || cell.value === ""));
