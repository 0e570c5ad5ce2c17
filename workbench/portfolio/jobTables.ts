import type { Workbook } from "hucre/xlsx";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { attempt } from "../../taskpane/components/attempt";
import { missingColumns } from "../../taskpane/workbook/columns";
import type { Book, CellValue } from "../engine";
import { readBlock } from "../workbook/address";

/** A table of a workbook with its cells as they are worked out now, its header row first. */
export interface JobTable {
  name: string;
  sheet: string;
  cells: CellValue[][];
}

/** The tables of an open workbook, where its file says they are. */
export function tablesIn(file: Workbook, book: Book): JobTable[] {
  return file.sheets.flatMap((sheet) =>
    (sheet.tables ?? []).flatMap(({ name, range }): JobTable[] => {
      if (!range) return [];
      const { startRow, startColumn, endRow, endColumn } = readBlock(range);
      const size = [endRow - startRow + 1, endColumn - startColumn + 1] as const;
      return [{ name, sheet: sheet.name, cells: book.sheet(sheet.name).cells(startRow, startColumn, ...size).values }];
    }),
  );
}

/** The cells of a table by its name, in any case. */
export const cellsOf = (tables: readonly JobTable[], name: string): CellValue[][] | undefined =>
  tables.find((table) => table.name.toLowerCase() === name.toLowerCase())?.cells;

/** The runs of a job: as they are now, and as they were issued, each on a sheet of its own. */
export interface RunTables {
  now: JobTable;
  issued: JobTable[];
}

/**
 * The tables that have the columns of runs: the one called Runs is the job as it is now, or the only one.
 * @throws Error in words where none or more than one could be the job
 */
export function runTables(tables: readonly JobTable[]): RunTables {
  const ofRuns = tables.filter(({ cells }) => hasRunColumns(cells[0] ?? []));
  const called = ofRuns.filter(({ name }) => name.toLowerCase() === "runs");
  const [now, ...more] = called.length > 0 ? called : ofRuns;
  if (!now) throw new Error("There is no table with the columns Run, Raceway, Size and Route: no job is in it.");
  if (more.length > 0) {
    throw new Error(
      `Tables ${ofRuns.map(({ name }) => name).join(", ")} all have the columns of runs; one must be named Runs.`,
    );
  }
  return { now, issued: ofRuns.filter((table) => table !== now && table.cells.slice(1).some(isFilled)) };
}

const isFilled = (row: readonly CellValue[]): boolean => row.some((cell) => cell !== null && cell !== "");

const hasRunColumns = (header: readonly CellValue[]): boolean =>
  attempt(() =>
    missingColumns(
      header.map((cell) => String(cell ?? "")),
      RUN_COLUMNS,
    ),
  ).value?.length === 0;
