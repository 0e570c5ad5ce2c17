import { InputError } from "../../units/errors";
import type { LengthStyle } from "../../units/formatLength";

type Cell = string | number | boolean;

/** What a device at the bender needs of a workbook: the tables its tickets are made from. */
export interface BenderJob {
  readonly style: LengthStyle;
  readonly runs: readonly (readonly Cell[])[];
  readonly shoes?: readonly (readonly Cell[])[];
  readonly rules?: readonly (readonly Cell[])[];
  readonly bench?: readonly (readonly Cell[])[];
}

const FORMAT = "raceway-ledger bender 1";
const STYLES: readonly LengthStyle[] = ["feet", "inches", "mm"];

/** The text of a job's file. */
export const benderJobText = (job: BenderJob): string => JSON.stringify({ format: FORMAT, ...job });

/** Reads a job's file. @throws InputError for any other text */
export function readBenderJob(text: string): BenderJob {
  const read = parsed(text);
  if (!isObject(read) || read["format"] !== FORMAT) {
    throw new InputError(`This is not a job for the bender: it must be a file that "Save the job" wrote.`);
  }
  const { style, runs, shoes, rules, bench } = read;
  const known = STYLES.find((each) => each === style);
  if (!known) throw new InputError(`style must be one of ${STYLES.join(", ")}; got ${String(style)}.`);
  if (!isTable(runs)) throw new InputError("runs must be rows of cells with a header row.");
  return {
    ...{ style: known, runs },
    ...(isTable(shoes) ? { shoes } : {}),
    ...(isTable(rules) ? { rules } : {}),
    ...(isTable(bench) ? { bench } : {}),
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

const isTable = (value: unknown): value is Cell[][] =>
  Array.isArray(value) &&
  value.length > 0 &&
  value.every(
    (row) => Array.isArray(row) && row.every((cell) => ["string", "number", "boolean"].includes(typeof cell)),
  );
