/**
 * Numbers that no job has, in every place of every function and in every column of the ranges it reads: what comes back is a finite
 * answer or a refusal in words, alone and in each cell of a table; never NaN, Infinity, a blank or an error of the program.
 */
import { cellError } from "../support/cellError";
import { call, exampleArguments, functions } from "../support/functionExamples";

const EXTREMES = [1e308, -1e308, 1.7976931348623157e308, 5e-324, 1e-300, 1e154, 1e15, -1e15, 0, -1];

/** Words that are of the program, not of the trade. */
const PROGRAM = /undefined|not a function|Cannot read|is not iterable|Maximum call|Invalid array|\bNaN\b|Infinity/;

/** What a result that is no number is refused with, wherever it stands. */
const OVERFLOW =
  /^#VALUE! (The result|Row \d+, column \d+ of the result) is not a finite number \((NaN|-?Infinity)\)\. Check the arguments\.$/;

const short = (argument: unknown): unknown => (Array.isArray(argument) ? argument.slice(0, 4) : argument);

/** The example with a number in the place of each of its arguments, and of each column of its first row in a range. */
function* poked(args: readonly unknown[], value: number): Generator<unknown[]> {
  for (let place = 0; place < args.length; place++) {
    const argument = args[place];
    if (!Array.isArray(argument)) {
      yield args.map((each, at) => (at === place ? value : each));
      continue;
    }
    const rows = argument as unknown[][];
    for (let column = 0; column < (rows[0]?.length ?? 0); column++) {
      const changed = rows.map((row, at) =>
        at === Math.min(1, rows.length - 1) ? row.map((cell, c) => (c === column ? value : cell)) : row,
      );
      yield args.map((each, at) => (at === place ? changed : each));
    }
  }
}

/** What is wrong with a cell; undefined where nothing is. */
function wrong(cell: unknown): string | undefined {
  if (typeof cell === "number") return Number.isFinite(cell) ? undefined : String(cell);
  if (typeof cell === "boolean") return undefined;
  if (typeof cell === "string") return PROGRAM.test(cell) ? cell : undefined;
  return cell !== null && typeof cell === "object" && "type" in cell
    ? wrong((cell as { basicValue?: unknown }).basicValue)
    : String(cell);
}

async function faultOf(id: string, args: readonly unknown[]): Promise<string | undefined> {
  try {
    const result = await call(id, ...args);
    const cells: unknown[] = Array.isArray(result) ? (result as unknown[][]).flat() : [result];
    return cells.map(wrong).find((fault) => fault !== undefined);
  } catch (error) {
    const words = cellError(() => {
      throw error;
    });
    if (OVERFLOW.test(words)) return undefined;
    const isRefusal = /^#(VALUE!|N\/A) \S/.test(words) && !PROGRAM.test(words);
    return isRefusal ? undefined : words;
  }
}

test.each(functions)("$id", async ({ id, description }) => {
  const args = exampleArguments(description).map(short);
  const faults: string[] = [];
  for (const value of EXTREMES) {
    for (const given of poked(args, value)) {
      const fault = await faultOf(id, given);
      if (fault !== undefined) faults.push(`${fault.slice(0, 200)} <- ${JSON.stringify(given).slice(0, 300)}`);
    }
  }
  // All numbers at once as well.
  for (const value of EXTREMES) {
    const given = args.map((argument) => (typeof argument === "number" ? value : argument));
    const fault = await faultOf(id, given);
    if (fault !== undefined) faults.push(`${fault.slice(0, 200)} <- ${JSON.stringify(given).slice(0, 300)}`);
  }
  expect(faults).toEqual([]);
});

test("the net catches what it should", () => {
  expect([NaN, Infinity, null, undefined, "got NaN in.", "x is not a function", {}].map(wrong)).not.toContain(
    undefined,
  );
  expect([1, "a mark", "", true, { type: "Double", basicValue: 3 }].map(wrong)).toEqual(Array(5).fill(undefined));
});
