import { mkdirSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import raceway from "../../package.json";
import { tableToCsv } from "../workbook/csv/csv";
import { readOptions, USAGE } from "./options";
import { tellProgress } from "./progress";
import { portfolioTables, type PortfolioTables } from "./tables";
import { readInThreads } from "./threads";

/** Workbooks of the kinds there are; a name that begins with ~$ is the mark of a file that is open in Excel. */
const OTHERS = /\.(xlsm|xlsb|xls|ods|numbers)$/i;
const OPEN_MARK = /(^|[\\/])~\$/;

export interface Surroundings {
  /** The folder of functions.js and functions.json. */
  bundle?: string;
  /** The built code of a thread. */
  script?: string;
}

/** Runs the command line and gives the exit code, as the usage says. */
export async function main(
  given: readonly string[],
  { bundle = join(__dirname, ".."), script = join(__dirname, "portfolioThread.cjs") }: Surroundings = {},
): Promise<number> {
  try {
    const options = readOptions(given);
    if (options.help) {
      process.stdout.write(`${USAGE}\n`);
      return 0;
    }
    const { folder, out, threads } = options;
    const { files, left } = workbooksIn(folder);
    if (files.length + left.length === 0) throw new Error(`There is no .xlsx workbook in ${folder}.`);
    mkdirSync(out, { recursive: true });
    const onDone = tellProgress(files.length, (words) => void process.stderr.write(`  ${words}\n`));
    const paths = files.map((file) => join(folder, file));
    const answers = await readInThreads(paths, { script, bundle, threads, onDone });
    const read = files.map((file, place) => ({ file: file.replaceAll("\\", "/"), answer: answers[place]! }));
    const tables = portfolioTables(read, left, raceway.version);
    for (const [name, table] of Object.entries(tables)) writeFileSync(join(out, `${name}.csv`), tableToCsv(table));
    process.stdout.write(`${out}: ${summary(tables)}\n`);
    return tables.differences.length + tables.problems.length > 2 ? 1 : 0;
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    return 2;
  }
}

/** Workbooks in a folder and its folders, by name. @throws Error when it is none */
function workbooksIn(folder: string): { files: string[]; left: string[] } {
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) throw new Error(`${folder} is no folder.`);
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => !OPEN_MARK.test(name));
  const files = names.filter((name) => /\.xlsx$/i.test(name) && statSync(join(folder, name)).isFile());
  return { files: files.sort(), left: names.filter((name) => OTHERS.test(name)).sort() };
}

/** "3 workbooks with 58 runs, 210 items; 1 has other results than it saved (4 of them); 2 problems." */
function summary({ items, workbooks, problems }: PortfolioTables): string {
  const lines = workbooks.slice(1);
  const [runs, different] = [2, 5].map((column) => lines.map((line) => Number(line[column])));
  const stale = different!.filter((number) => number > 0);
  const read = `${many(lines.length, "workbook")} read with ${many(sum(runs!), "run")}, ${many(items.length - 1, "item")}`;
  const others =
    stale.length === 0
      ? "every saved result is what is worked out now"
      : `${stale.length} with results that differ from those saved (${many(sum(stale), "cell")}), in differences.csv`;
  const wrong = problems.length === 1 ? "no problems" : `${many(problems.length - 1, "problem")}, in problems.csv`;
  return `${read}; ${others}; ${wrong}.`;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, number) => all + number, 0);

const many = (count: number, what: string): string =>
  `${count.toLocaleString("en-US")} ${what}${count === 1 ? "" : "s"}`;
