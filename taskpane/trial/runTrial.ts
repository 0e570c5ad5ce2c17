import { ExcelProblem, readContents, type Contents } from "../excel";
import { takeAway } from "../excel/sheets/takeAway";
import { aboutExcel, calculationMode, makeScratch, roundTrip } from "../excel/trial";
import { freeSheetName } from "../workbook/plan";
import { Canceled, expected, line, type Line, type Part } from "./types";
import { untilAnswered } from "./waiting";

/** What came of one part. */
export interface PartReport {
  readonly id: string;
  readonly title: string;
  readonly lines: readonly Line[];
  /** Why it broke off, in words; empty where it did not. */
  readonly problem: string;
}

export interface Watch {
  /** What is being done, and the share of the parts that are through, 0 to 1. */
  onStep(words: string, share: number): void;
  isCanceled(): boolean;
}

/**
 * Tries this Excel part by part, each on a sheet of its own that is taken away again, come what may.
 * @returns what came of each part; those after a cancel are not in it
 */
export async function runTrial(parts: readonly Part[], { onStep, isCanceled }: Watch): Promise<PartReport[]> {
  const before = await readContents();
  const reports = [await about()];
  for (const [index, part] of parts.entries()) {
    if (isCanceled()) break;
    const step = (words: string) => {
      if (isCanceled()) throw new Canceled();
      onStep(`${part.title}: ${words}`, index / parts.length);
    };
    reports.push(await onOwnSheet(part, before, step));
  }
  return [...reports, await leftOver(before)];
}

async function onOwnSheet(part: Part, before: Contents, step: (words: string) => void): Promise<PartReport> {
  const { id, title } = part;
  const sheet = freeSheetName(SHEET, before);
  const taken = new Set([...before.tables.map(({ name }) => name), ...before.names].map((name) => name.toLowerCase()));
  const tableName = (name: string) => {
    let free = `Trial${name}`;
    while (taken.has(free.toLowerCase())) free += "x";
    return free;
  };
  const told: Line[] = [];
  let problem = "";
  let mayStand = false;
  try {
    step("makes a sheet");
    const scratch = await makeScratch(sheet).catch((error: unknown) => {
      mayStand = !(error instanceof ExcelProblem && error.untouched);
      throw error;
    });
    mayStand = true;
    const goOn = () => step("waits for Excel");
    told.push(...(await part.run({ scratch, tableName, step, until: (ask) => untilAnswered(ask, goOn) })));
  } catch (error) {
    problem = error instanceof Canceled ? "canceled" : (error as Error).message;
  }
  if (mayStand) problem = `${problem} ${await removed(sheet)}`.trim();
  return { id, title, lines: told, problem };
}

/** Tries to take a sheet away, and again: somebody may be in the middle of a cell [ms]. */
const TRIES = [0, 500, 1500, 4000];

/** @returns why it stands there still; empty once it is gone */
async function removed(sheet: string): Promise<string> {
  let problem = "";
  for (const pause of TRIES) {
    await new Promise((resolve) => setTimeout(resolve, pause));
    try {
      await takeAway([sheet]);
      return "";
    } catch (error) {
      problem = (error as Error).message;
    }
  }
  return `${problem} Delete the sheet ${sheet}.`;
}

/** Sheet that the trial works on. */
const SHEET = "Trial";

async function about(): Promise<PartReport> {
  const lines = aboutExcel().map(([what, found]) => line(what, found, "told"));
  let problem = "";
  try {
    const mode = await calculationMode();
    lines.push(line("calculation", mode || "not told", "told"));
    lines.push(line("answer to a small request", `${Math.round(await roundTrip())} ms`, "told"));
  } catch (error) {
    problem = (error as Error).message;
  }
  return { id: "about", title: "This Excel", lines, problem };
}

/** Whether the workbook has the sheets, tables and names that it had. */
async function leftOver(before: Contents): Promise<PartReport> {
  const report = { id: "left", title: "Afterwards" };
  try {
    const after = await readContents();
    const more = (was: readonly string[], is: readonly string[]) => is.filter((name) => !was.includes(name));
    const tables = ({ tables: all }: Contents) => all.map(({ name }) => name);
    const added = [
      ...more(before.sheets, after.sheets),
      ...more(tables(before), tables(after)),
      ...more(before.names, after.names),
    ];
    const what = "sheets, tables and names are those from before";
    return { ...report, lines: [expected(what, added.length === 0, `left over: ${added.join(", ")}`)], problem: "" };
  } catch (error) {
    return { ...report, lines: [], problem: (error as Error).message };
  }
}
