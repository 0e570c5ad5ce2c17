import { buildJob, type Job } from "../../../src/shop/job/job";
import type { Book } from "../../engine";
import { findTable } from "../../office/table/tableEdits";
import { findRunsTable } from "./runsTable";

/** The job of a workbook: its Runs table with its own shoes and rules. @throws Error when it has no Runs table */
export function jobOfBook(book: Book): Job {
  const cellsOf = (name: string): unknown[][] | undefined => {
    const table = findTable(book, name);
    const sheet = book.sheets().find(({ id }) => id === table?.subUnitId);
    if (!table || !sheet) return undefined;
    const { startRow, endRow, startColumn, endColumn } = table.range;
    return sheet.cells(startRow, startColumn, endRow - startRow + 1, endColumn - startColumn + 1).values;
  };
  return buildJob({ runs: findRunsTable(book).cells, shoes: cellsOf("Shoes"), rules: cellsOf("Rules") });
}
