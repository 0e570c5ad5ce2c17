/** Workbooks as files: .xlsx and CSV, in and out. */
import type { Book, DescribedFunctions } from "../engine";
import { contentOfBook } from "./content/bookContent";
import { columnsAsShown } from "./file/columnsAsShown";
import { withRowHeights } from "./file/dress";
import { hideEmptyColumns } from "./file/emptyColumns";
import { withoutEmpty } from "./file/withoutEmpty";
import { readXlsx } from "./readXlsx";
import { valuesOnly } from "./file/valuesOnly";
import { writeXlsx } from "./file/writeXlsx";

export { decodeText, readCsv, tableToCsv } from "./csv/csv";
export { makeWorkbook } from "./makeWorkbook";
export { type LeftOutWhy, type MatchedRuns, matchRuns, type RunsTarget } from "./csv/matchRuns";
export { runsFromCsv } from "./csv/runsFromCsv";

/** The bytes of an .xlsx file with everything in an open workbook. Wait for `book.settled()` first. */
export function saveXlsx(book: Book, title: string, namespace = "CONDUIT"): Promise<Uint8Array> {
  return writeXlsx(withRowHeights(contentOfBook(book)), { title, namespace });
}

/** The same with every result as a plain value, for programs without the add-in. */
export function saveValuesXlsx(book: Book, title: string, namespace = "CONDUIT"): Promise<Uint8Array> {
  const written = hideEmptyColumns(withoutEmpty(contentOfBook(book)));
  return writeXlsx(withRowHeights(columnsAsShown(valuesOnly(written))), { title, namespace });
}

/** Workbook data from the bytes of an .xlsx file, ready for `openBook` or `openHeadless`. */
export function openXlsx(bytes: Uint8Array, { namespace, metadata }: DescribedFunctions) {
  return readXlsx(
    bytes,
    metadata.functions.map(({ name }) => `${namespace}.${name}`),
  );
}
