import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";

export const USAGE = `usage: npm run portfolio -- [options] folder out

Reads the .xlsx workbooks in the folder and its folders, works each job out anew and writes into the folder out:
items.csv         what each job takes: File, Job, Issue, Item, Unit, Quantity, Hours, Hash, Version
workbooks.csv     a line for each file that was read: its runs, and how many results differ from those saved in it
differences.csv   where they differ: sheet, cell, what was saved, what is worked out now
problems.csv      files that could not be read, and runs that could not be counted
A file that cannot be read hides no other. Workbooks are only read.

--threads N   how many workbooks are worked out at once, 1 to 64; else as many as this machine has cores
--help        these words

Exit code: 0 when every file was read and its saved results are what is worked out now, 1 when differences.csv or
problems.csv has a line, 2 for wrong usage or an output that cannot be written.`;

const MOST_THREADS = 64;

export type Options = { help: true } | { help: false; folder: string; out: string; threads: number };

/** What stands on the command line. @throws Error in words, with the usage */
export function readOptions(given: readonly string[]): Options {
  try {
    const { positionals, values } = parseArgs({
      args: [...given],
      allowPositionals: true,
      options: { threads: { type: "string" }, help: { type: "boolean" } },
    });
    if (values.help) return { help: true };
    const [folder, out, ...more] = positionals;
    if (!folder || !out || more.length > 0) {
      throw new Error(`A folder of workbooks and a folder to write into are needed; got ${positionals.length} names.`);
    }
    return { help: false, folder, out, threads: readThreads(values.threads) };
  } catch (error) {
    throw new Error(`${error instanceof Error ? error.message : String(error)}\n\n${USAGE}`);
  }
}

function readThreads(text: string | undefined): number {
  if (text === undefined) return Math.min(MOST_THREADS, availableParallelism());
  const threads = Number(text);
  if (Number.isInteger(threads) && threads >= 1 && threads <= MOST_THREADS) return threads;
  throw new Error(`--threads must be a whole number from 1 to ${MOST_THREADS}; got ${text}.`);
}
