import { readFileSync, writeFileSync } from "node:fs";
import { basename, dirname, extname, join } from "node:path";
import { parseArgs } from "node:util";
import type { Cell } from "../../taskpane/workbook/items";
import { readBundle } from "../commandLine/readBundle";
import { demoRuns } from "../demo/ferryTerminal";
import { decodeText, readCsv, tableToCsv } from "./csv/csv";
import { makeWorkbook } from "./makeWorkbook";
import type { AddInFacts } from "./file/besides/offerPane";
import { runsFromCsv } from "./csv/runsFromCsv";
import { runsFromDrawing } from "./drawing/runsFromDrawing";
import type { DrawPng } from "./content/ticketSheets";

const usage = `usage: npm run workbook -- [options] runs.csv job.xlsx
       npm run workbook -- [options] drawing.dxf job.xlsx

runs.csv has a header row with at least Run, Raceway, Size and Route. job.xlsx gets the tables, result sheets whose
formulas are live where the add-in is installed and show their last results where it is not, and shop tickets to print.
--plain   results as plain values, and a sheet of bends by built-in functions: for programs without the add-in,
          LibreOffice among them
--offer-pane  Excel offers the add-in's pane when it opens the workbook (ADDIN_ID: its id, where you chose another)
--csv     writes each sheet as job-NAME.csv too
--overview a sheet of the whole job with charts too, and the tables Bid, Costs and Factors that it reads
Of an ASCII DXF every line is a run, by the name of its layer: TH-01_EMT_1-2. A list of points (Run, East, North, Up) does too.
--unit inches        or feet, millimeters, centimeters, meters, where the drawing does not say
--drawn-as "EMT 3/4" raceway and size of layers whose names say none
Which tickets (straight pieces stand on the cutting sheet behind them):
--area NAME, --date DAY, --crew NAME, --conduit "EMT 1/2"   only those
--straight          straight pieces have tickets too
--made made.csv     only what is not yet made
--changed runs.csv  only what changed since these runs were issued
--stickers          a sheet of stickers too, one for each piece to make`;

const FLAG = { type: "boolean" } as const;
const WORD = { type: "string" } as const;

export interface Surroundings {
  /** The folder of functions.js and functions.json. */
  bundle?: string;
  /** Draws the tickets' pictures; without it they have none. */
  draw?: DrawPng;
  /** The add-in as the admin center has it. */
  addIn?: AddInFacts;
}

/**
 * Runs the command line and gives the exit code: 0, 1 when a run of a drawing was left out, or 2 for wrong usage or a file that cannot be read or written.
 */
export async function main(
  given: readonly string[],
  { bundle = join(__dirname, ".."), draw, addIn }: Surroundings = {},
): Promise<number> {
  try {
    const { files, plain, csv, overview, offersPane, tickets, drawing } = readWords(given);
    const [source, target, ...more] = files;
    if (!source || !target || more.length > 0) throw new Error(usage);
    if (extname(target).toLowerCase() !== ".xlsx") throw new Error(`the second file must end in .xlsx; got ${target}.`);
    const text = readText(source);
    const drawn = isDrawing(text, source) ? runsFromDrawing(text, basename(source), drawing) : undefined;
    for (const line of drawn?.report ?? []) process.stderr.write(`${line}\n`);
    const runs = drawn?.runs ?? runsFromCsv(text, basename(source));
    const title = basename(target, extname(target));
    const { bytes, rows, tables } = await makeWorkbook(runs, readBundle(bundle), {
      ...{ title, plain, overview, draw, ...tickets, ...(offersPane && { offersPaneOf: addIn }) },
      onPicture: tellSometimes(),
    });
    writeFileSync(target, bytes);
    const beside = (name: string) => join(dirname(target), `${title}-${name}.csv`);
    if (csv) for (const [name, table] of tables) writeFileSync(beside(name), tableToCsv(table));
    process.stdout.write(`${target}: ${runs.rows.length} runs, ${rows} rows of results.\n`);
    return drawn && drawn.left > 0 ? 1 : 0;
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    return 2;
  }
}

/** What stands on the command line. @throws Error in words for an option there is not */
function readWords(given: readonly string[]) {
  const { positionals: files, values } = parsed(given);
  const { plain = false, csv = false, overview = false, straight = false, stickers = false, made, changed } = values;
  const offersPane = values["offer-pane"] ?? false;
  if (plain && offersPane)
    throw new Error(`--offer-pane is for live formulas: a --plain workbook does without the add-in.\n\n${usage}`);
  const { area = "", date = "", crew = "", conduit = "" } = values;
  const choice = { area, date, crew, conduit, bentOnly: !straight };
  return {
    ...{ files, plain, csv, overview, offersPane, drawing: { unit: values.unit, drawnAs: values["drawn-as"] } },
    tickets: {
      choice,
      stickers,
      made: made === undefined ? undefined : readCsv(readText(made)),
      issued: issued(changed),
    },
  };
}

function parsed(given: readonly string[]) {
  try {
    const flags = { plain: FLAG, csv: FLAG, overview: FLAG, straight: FLAG, stickers: FLAG, "offer-pane": FLAG };
    const words = { area: WORD, date: WORD, crew: WORD, conduit: WORD, made: WORD, changed: WORD };
    const drawing = { unit: WORD, "drawn-as": WORD };
    return parseArgs({ args: [...given], allowPositionals: true, options: { ...flags, ...words, ...drawing } });
  } catch (error) {
    throw new Error(`${error instanceof Error ? error.message : String(error)}\n\n${usage}`);
  }
}

/** A DXF, or a list of points: its header row has coordinates and no routes. */
function isDrawing(text: string, name: string): boolean {
  const header = /^.*/.exec(text)![0];
  return /\.(dxf|dwg)$/i.test(name) || (/\beast\b/i.test(header) && !/\broute\b/i.test(header));
}

const readText = (name: string): string => decodeText(readFileSync(name));

/** Runs as they were issued, read as the runs of the job are. */
function issued(name: string | undefined): Cell[][] | undefined {
  if (name === undefined) return undefined;
  const { headers, rows } = runsFromCsv(readText(name), basename(name));
  return [headers, ...rows.map((row) => row.map((cell) => cell ?? ""))];
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
