import type { CellValue } from "../../engine";
import type { ContentCell, SheetContent } from "../content/sheetContent";

/** Sheets with rows high enough for their words: what wraps is counted in lines. */
export const withRowHeights = (sheets: readonly SheetContent[]): SheetContent[] =>
  sheets.map((sheet) =>
    sheet.rowHeights ? sheet : { ...sheet, rowLines: sheet.cells.map((row, at) => linesOf(row, sheet.columns, at)) },
  );

/** A letter takes this much of a line, on the average of words [px]. */
const LETTER = 6.4;
/** A column's air beside its words [px]. */
const AIR = 10;

/** Lines of text that the fullest cell of a row needs; a heading has room for two. */
function linesOf(row: readonly (ContentCell | null)[], columns: SheetContent["columns"], at: number): number {
  const lines = row.map((cell, column) => {
    const { width = 100, look, hidden } = columns[column] ?? {};
    if (hidden || !(cell?.look ?? look)?.wrap) return 1;
    return wrappedLines(shownText(cell?.value ?? null), Math.max(1, Math.floor((width - AIR) / LETTER)));
  });
  return Math.max(at === 0 ? 2 : 1, ...lines);
}

/** Lines that words take where so many letters fit into one; a word is broken only where it is longer than a line. */
function wrappedLines(text: string, letters: number): number {
  return text.split("\n").reduce((sum, line) => {
    let [lines, used] = [1, 0];
    for (const word of line.split(" ")) {
      const needed = used === 0 ? word.length : used + 1 + word.length;
      if (needed <= letters) used = needed;
      else {
        lines += (used === 0 ? 0 : 1) + Math.ceil(word.length / letters) - 1;
        used = word.length % letters || letters;
      }
    }
    return sum + lines;
  }, 0);
}

const shownText = (value: CellValue): string =>
  typeof value === "number" ? value.toFixed(Number.isInteger(value) ? 0 : 3) : String(value ?? "");
