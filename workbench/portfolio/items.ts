import type { CellValue, Implementation, Implementations } from "../engine";
import { cellsOf, type JobTable } from "./jobTables";
import type { ItemLine } from "./reading";

/** Quantities are told to a millionth: shares of a whole stick end in 0.999999999. */
const MILLION = 1e6;

/**
 * What each job takes of one table of runs: the take-off of one order, told apart by Job.
 * @param issue what this state of the job is called
 * @throws Error in the function's words where a table cannot be read
 */
export function itemsOf(runs: JobTable, issue: string, tables: readonly JobTable[], from: Implementations): ItemLine[] {
  const takeoff = from.get("JOB.TAKEOFF");
  if (!takeoff) throw new Error("The functions at hand have no JOB.TAKEOFF; run npm run build.");
  return linesOf(takenOff(takeoff, runs.cells, tables, countsWith(runs, tables)), issue);
}

/** Counts as they were kept beside those runs (Runs 2026-12-01, Counts 2026-12-01), else as they are. */
function countsWith({ sheet }: JobTable, tables: readonly JobTable[]): CellValue[][] | undefined {
  const kept = /^Runs /.test(sheet) && tables.find((table) => table.sheet === sheet.replace("Runs", "Counts"));
  return kept ? kept.cells : cellsOf(tables, "Counts");
}

function takenOff(
  takeoff: Implementation,
  runs: CellValue[][],
  tables: readonly JobTable[],
  counts: CellValue[][] | undefined,
): CellValue[][] {
  const table = (name: string) => cellsOf(tables, name) ?? null;
  const lists = [table("Labor"), table("Rules"), table("Stock")];
  return takeoff(
    ...[runs, table("Prices"), table("Shoes"), "Job", ...lists],
    ...[null, counts ?? null, true, table("Allowances"), null],
  ) as CellValue[][];
}

/** The lines that count something; money of lump sums and words below the total count nothing. */
function linesOf([header = [], ...rows]: CellValue[][], issue: string): ItemLine[] {
  const place = (name: string): number => header.indexOf(name);
  const [job, item, unit, quantity, hours] = ["Job", "Item", "Unit", "Quantity", "Hours"].map(place);
  const at = (row: readonly CellValue[], column: number | undefined): CellValue => row[column ?? -1] ?? null;
  return rows.flatMap((row): ItemLine[] => {
    const count = at(row, quantity);
    if (typeof count !== "number") return [];
    const time = at(row, hours);
    return [
      {
        ...{ job: String(at(row, job) ?? ""), issue, item: String(at(row, item)), unit: String(at(row, unit) ?? "") },
        quantity: rounded(count),
        hours: typeof time === "number" ? rounded(time) : null,
      },
    ];
  });
}

const rounded = (value: number): number => Math.round(value * MILLION) / MILLION;
