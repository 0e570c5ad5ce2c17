import { readFileSync, writeFileSync } from "node:fs";
import { basename, dirname, extname, join } from "node:path";
import { readBundle } from "../commandLine/readBundle";
import { demoRuns } from "../demo/ferryTerminal";
import { decodeText, tableToCsv } from "./csv/csv";
import { makeWorkbook } from "./makeWorkbook";
import { runsFromCsv } from "./csv/runsFromCsv";
import type { DrawPng } from "./content/ticketSheets";

const usage = `usage: npm run workbook -- [--plain] [--csv] runs.csv job.xlsx

runs.csv has a header row with at least Run, Raceway, Size and Route. job.xlsx gets the tables, result sheets whose
formulas are live where the add-in is installed and show their last results where it is not, and shop tickets to print.
--plain   results as plain values, and a sheet of bends by built-in functions: for programs without the add-in,
          LibreOffice among them
--csv     writes each sheet as job-NAME.csv too`;

export interface Surroundings {
  /** The folder of functions.js and functions.json. */
  bundle?: string;
  /** Draws the tickets' pictures; without it they have none. */
  draw?: DrawPng;
}

/**
 * Runs the command line and gives the exit code: 0, or 2 for wrong usage or a file that cannot be read or written.
 */
export async function main(
  given: readonly string[],
  { bundle = join(__dirname, ".."), draw }: Surroundings = {},
): Promise<number> {
  try {
    const [plain, csv] = [given.includes("--plain"), given.includes("--csv")];
    const [source, target, ...more] = given.filter((word) => word !== "--plain" && word !== "--csv");
    if (!source || !target || more.length > 0 || source.startsWith("--")) throw new Error(usage);
    if (extname(target).toLowerCase() !== ".xlsx") throw new Error(`the second file must end in .xlsx; got ${target}.`);
    const runs = runsFromCsv(decodeText(readFileSync(source)), basename(source));
    const title = basename(target, extname(target));
    const { bytes, rows, tables } = await makeWorkbook(runs, readBundle(bundle), {
      ...{ title, plain, draw },
      onPicture: tellSometimes(),
    });
    writeFileSync(target, bytes);
    const beside = (name: string) => join(dirname(target), `${title}-${name}.csv`);
    if (csv) for (const [name, table] of tables) writeFileSync(beside(name), tableToCsv(table));
    process.stdout.write(`${target}: ${runs.rows.length} runs, ${rows} rows of results.\n`);
    return 0;
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    return 2;
  }
}

/** Tells how far the pictures are, once a second while there are more to draw. */
function tellSometimes(): (drawn: number, of: number) => void {
  let told: number | undefined;
  return (drawn, of) => {
    told ??= Date.now();
    if (Date.now() - told < 1000 || drawn === of) return;
    told = Date.now();
    process.stderr.write(`  ${drawn} of ${of} pictures drawn\n`);
  };
}

export { readCsv } from "./csv/csv";

/** The demo job's runs, for trying the command. */
export const demoCsv = (): string => tableToCsv(demoRuns);
