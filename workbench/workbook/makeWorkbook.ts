import type { CellValue, FunctionSet } from "../engine";
import { openHeadless } from "../engine/headless";
import { contentOfBook } from "./bookContent";
import { dressResults } from "./dress";
import { jobContent } from "./jobContent";
import { openData } from "./openData";
import type { RunList } from "./runsFromCsv";
import type { ContentCell, SheetContent } from "./sheetContent";
import { writeXlsx } from "./writeXlsx";

export interface WorkbookWishes {
  title: string;
  /** Results as values without formulas. */
  plain?: boolean;
}

/** Makes a job's workbook: works every formula out in the engine and writes the results beside the formulas. */
export async function makeWorkbook(runs: RunList, functions: FunctionSet, { title, plain = false }: WorkbookWishes) {
  const { book, close } = openHeadless(functions, openData(jobContent(runs)));
  try {
    await book.settled();
    const live = dressResults(contentOfBook(book));
    const sheets = plain ? live.map(withoutFormulas) : live;
    const rows = sheets.reduce(
      (sum, sheet) => sum + (sheet.tables.length > 0 ? 0 : Math.max(0, sheet.cells.length - 1)),
      0,
    );
    const tables = sheets.map(({ name, cells }) => [name, cells.map((row) => row.map(shownValue))] as const);
    return { tables, bytes: await writeXlsx(sheets, { title, namespace: functions.namespace }), rows };
  } finally {
    close();
  }
}

const shownValue = (cell: ContentCell | null): CellValue => cell?.error?.code ?? cell?.value ?? null;

function withoutFormulas(sheet: SheetContent): SheetContent {
  return {
    ...sheet,
    cells: sheet.cells.map((row) => row.map((cell) => cell && { ...cell, formula: undefined, spill: undefined })),
  };
}
