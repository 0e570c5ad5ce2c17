import type { CellValue, FunctionSet } from "../engine";
import { openHeadless } from "../engine/headless";
import { contentOfBook } from "./content/bookContent";
import { columnsAsShown } from "./file/columnsAsShown";
import { withRowHeights } from "./file/dress";
import { hideEmptyColumns } from "./file/emptyColumns";
import { withoutEmpty } from "./file/withoutEmpty";
import { offerPane, type AddInFacts } from "./file/besides/offerPane";
import { jobContent } from "./content/jobContent";
import { openData } from "./openData";
import { plainNames, plainSheet, toFileLambda } from "./file/plainSheet";
import type { RunList } from "./csv/runsFromCsv";
import type { ContentCell, SheetContent } from "./content/sheetContent";
import { ticketSheets, type TicketWishes } from "./content/ticketSheets";
import { writeXlsx } from "./file/writeXlsx";

export interface WorkbookWishes extends TicketWishes {
  title: string;
  /** The add-in's results as values, and a sheet of bends by built-in functions. */
  plain?: boolean;
  /** The sheet Overview too, with the tables it reads. */
  overview?: boolean;
  /** Sheets of shop tickets behind the rest; they are written unless this is false. */
  withTickets?: boolean;
  /** The add-in whose pane Excel offers when it opens the workbook. */
  offersPaneOf?: AddInFacts | undefined;
}

/** Makes a job's workbook from its runs. */
export const makeWorkbook = (runs: RunList, functions: FunctionSet, { overview = false, ...wishes }: WorkbookWishes) =>
  writeWorkbook(jobContent(runs, overview ? OVERVIEW : []), functions, wishes);

/** The sheet Overview, and the tables it reads that few jobs begin with. */
const OVERVIEW = ["Overview", "Bid", "Costs", "Factors"] as const;

/** Works every formula of some sheets out in the engine and writes the results beside the formulas. */
export async function writeWorkbook(
  sheetsToWrite: readonly SheetContent[],
  functions: FunctionSet,
  { title, plain = false, withTickets = true, offersPaneOf, ...tickets }: WorkbookWishes,
) {
  const content = plain ? [...sheetsToWrite, plainSheet()] : sheetsToWrite;
  const { book, close } = openHeadless(functions, openData(content));
  try {
    await book.settled();
    const live = withNotes(contentOfBook(book), content);
    const sheets = withRowHeights(
      plain ? columnsAsShown(hideEmptyColumns(withoutEmpty(live)).map(withoutAddIn)) : live,
    );
    const names = plain ? plainNames().map(({ name, formula }) => ({ name, formula: toFileLambda(formula) })) : [];
    const rows = sheets.reduce(
      (sum, sheet) => sum + (sheet.tables.length > 0 ? 0 : Math.max(0, sheet.cells.length - 1)),
      0,
    );
    const tables = sheets.map(({ name, cells }) => [name, cells.map((row) => row.map(shownValue))] as const);
    const all = withTickets ? [...sheets, ...(await ticketSheets(sheets, tickets))] : sheets;
    const bytes = await writeXlsx(all, { title, namespace: functions.namespace, names });
    return { tables, bytes: offersPaneOf ? offerPane(bytes, offersPaneOf) : bytes, rows };
  } finally {
    close();
  }
}

const shownValue = (cell: ContentCell | null): CellValue => cell?.error?.code ?? cell?.value ?? null;

/** Words on headings, which the engine does not keep. */
const withNotes = (sheets: readonly SheetContent[], content: readonly SheetContent[]): SheetContent[] =>
  sheets.map((sheet, index) => ({ ...sheet, ...(content[index]?.notes && { notes: content[index].notes }) }));

/** Results of the add-in as values; formulas of built-in functions stay. */
function withoutAddIn(sheet: SheetContent): SheetContent {
  const plain = (cell: ContentCell | null) =>
    cell?.formula?.includes("CONDUIT.") ? { ...cell, formula: undefined, spill: undefined } : cell;
  return { ...sheet, cells: sheet.cells.map((row) => row.map(plain)) };
}
