import { AIR } from "../../../taskpane/workbook/design/look";
import type { CellValue } from "../../engine";
import type { ContentCell, SheetContent } from "../content/sheetContent";
import { arialLines } from "./arial";
import { usualFont } from "./looks";

/** Sheets with rows high enough for their words: what wraps is counted in lines. */
export const withRowHeights = (sheets: readonly SheetContent[]): SheetContent[] =>
  sheets.map((sheet) =>
    sheet.rowHeights ? sheet : { ...sheet, rowLines: sheet.cells.map((row, at) => linesOf(row, sheet.columns, at)) },
  );

/** A column's air beside its words, and what programs differ by [px]. */
const COLUMN_AIR = 10;
/** Height of letters [px]. */
const LETTERS = usualFont.size * (96 / 72);

/** Lines of text that the fullest cell of a row needs; a heading has room for two. */
function linesOf(row: readonly (ContentCell | null)[], columns: SheetContent["columns"], at: number): number {
  const lines = row.map((cell, column) => {
    const { width = 100, look, hidden } = columns[column] ?? {};
    if (hidden || !(cell?.look ?? look)?.wrap) return 1;
    const room = Math.max(1, width - COLUMN_AIR - (look?.align === "right" ? AIR : 0));
    return arialLines(shownText(cell?.value ?? null), LETTERS, room);
  });
  return Math.max(at === 0 ? 2 : 1, ...lines);
}

const shownText = (value: CellValue): string =>
  typeof value === "number" ? value.toFixed(Number.isInteger(value) ? 0 : 3) : String(value ?? "");
