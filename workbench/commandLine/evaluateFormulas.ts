import type { IWorkbookData } from "@univerjs/core";
import type { CellErrorInfo, CellValue, FunctionSet } from "../engine";
import { openHeadless } from "../engine/headless";

/** One cell of a result. */
export type ResultCell = CellValue | CellErrorInfo;

/** A sheet's size. */
interface Size {
  rowCount: number;
  columnCount: number;
}

/** Room for most results, so that a file of many formulas stays light; a larger table is computed again with more. */
const usual: Size = { rowCount: 200, columnCount: 40 };
const full: Size = { rowCount: 1048576, columnCount: 16384 };

/** Computes formulas, each on a sheet of its own, and gives the rows that each one fills. */
export async function evaluateFormulas(functions: FunctionSet, formulas: readonly string[]): Promise<ResultCell[][][]> {
  const results = await evaluateIn(usual, functions, formulas);
  for (const [index, formula] of formulas.entries()) {
    const first = results[index]![0]![0]!;
    const crowded = isError(first) && (first.code === "#SPILL!" || first.code === "#REF!");
    if (crowded) results[index] = (await evaluateIn(full, functions, [formula]))[0]!;
  }
  return results;
}

async function evaluateIn(size: Size, functions: FunctionSet, formulas: readonly string[]): Promise<ResultCell[][][]> {
  const { book, close } = openHeadless(functions, workbookOf(formulas, size));
  try {
    await book.settled();
    return book.sheets().map((sheet) => {
      const cells = sheet.used() ?? sheet.cells(0, 0);
      const errors = cells.errors;
      return cells.values.map((row, at) => row.map((value, column) => errors[at]![column] ?? value));
    });
  } finally {
    close();
  }
}

export function isError(cell: ResultCell): cell is CellErrorInfo {
  return typeof cell === "object" && cell !== null;
}

function workbookOf(formulas: readonly string[], size: Size): Partial<IWorkbookData> {
  const ids = formulas.map((_, index) => `f${index}`);
  const sheets = formulas.map((formula, index) => [
    ids[index]!,
    { id: ids[index]!, name: `Formula ${index + 1}`, ...size, cellData: { 0: { 0: { f: formula } } } },
  ]);
  return { id: "evaluate", sheetOrder: ids, sheets: Object.fromEntries(sheets) as IWorkbookData["sheets"] };
}
