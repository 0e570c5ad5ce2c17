import { buildJob, unbuiltRows } from "../../src/shop/job/job";
import type { FunctionSet } from "../engine";
import { openHeadless } from "../engine/headless";
import { dataOfFile, openFile } from "../workbook/readXlsx";
import { itemsOf } from "./items";
import { cellsOf, runTables, tablesIn, type JobTable } from "./jobTables";
import type { ItemLine, Problem, Reading } from "./reading";
import { compareResults } from "./savedResults";

/** What the state of the job that a workbook holds is called, beside its issues. */
const NOW = "now";

/**
 * Reads the bytes of one workbook, works its formulas and its job out anew and holds its saved results against them.
 * @throws Error in words for a file that is no workbook, or has no job in it
 */
export async function readJob(bytes: Uint8Array, functions: FunctionSet): Promise<Reading> {
  const names = functions.metadata.functions.map(({ name }) => `${functions.namespace}.${name}`);
  const file = await openFile(bytes);
  const { book, close } = openHeadless(functions, dataOfFile(file, names));
  try {
    await book.settled();
    const tables = tablesIn(file, book);
    const { now, issued } = runTables(tables);
    const items: ItemLine[] = [];
    const problems: Problem[] = [];
    for (const runs of [now, ...issued]) {
      try {
        items.push(...itemsOf(runs, runs === now ? NOW : runs.sheet, tables, functions.implementations));
        problems.push(...notCounted(runs, tables));
      } catch (error) {
        problems.push({ where: runs.sheet, what: error instanceof Error ? error.message : String(error) });
      }
    }
    const jobs = [...new Set(items.map(({ job }) => job).filter((job) => job !== ""))];
    return { jobs, runs: now.cells.length - 1, items, problems, ...compareResults(file, book, names) };
  } finally {
    close();
  }
}

/** Runs that stand in a table and could not be worked out. */
const notCounted = ({ sheet, cells }: JobTable, tables: readonly JobTable[]): Problem[] =>
  unbuiltRows(buildJob({ runs: cells, shoes: cellsOf(tables, "Shoes"), rules: cellsOf(tables, "Rules") })).map(
    ({ name, problem }) => ({ where: `${sheet}, run ${name}`, what: problem }),
  );
