import { readFileSync } from "node:fs";
import { join } from "node:path";
import { evaluateFormulas, isError } from "./evaluateFormulas";
import { jsonResult, printRows } from "./printResult";
import { readBundle } from "./readBundle";

const usage = `usage: npm run --silent evaluate -- [--json] '=FORMULA' ...
       npm run --silent evaluate -- [--json] --file formulas.txt

A formula with quotes or signs the shell knows goes in single quotes. A file holds one formula a line; empty lines and
lines that start with # are skipped. A single value prints on one line, a table as tab-separated rows. With several
formulas, an empty line follows each table. Exit code: 0, or 1 when a result holds an error, or 2 for wrong usage.`;

interface Request {
  json: boolean;
  formulas: string[];
  several: boolean;
}

/** Runs the command line and gives the exit code. */
export async function main(given: readonly string[]): Promise<number> {
  let request: Request;
  try {
    request = readArguments(given);
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n\n${usage}\n`);
    return 2;
  }
  const results = await evaluateFormulas(readBundle(join(__dirname, "..")), request.formulas);
  if (request.json) {
    process.stdout.write(`${JSON.stringify(request.several ? results.map(jsonResult) : jsonResult(results[0]!))}\n`);
  } else {
    for (const rows of results)
      process.stdout.write(`${printRows(rows)}\n${request.several && rows.length > 1 ? "\n" : ""}`);
  }
  return results.some((rows) => rows.some((row) => row.some(isError))) ? 1 : 0;
}

function readArguments(given: readonly string[]): Request {
  const formulas: string[] = [];
  let json = false;
  let fromFile = false;
  for (let index = 0; index < given.length; index += 1) {
    const word = given[index]!;
    if (word === "--json") json = true;
    else if (word === "--file") {
      const file = given[(index += 1)];
      if (file === undefined) throw new Error("--file needs the name of a file.");
      fromFile = true;
      formulas.push(...readFormulas(file));
    } else if (word.startsWith("--")) throw new Error(`There is no option ${word}.`);
    else if (word.trim() !== "") formulas.push(word.trim());
  }
  if (formulas.length === 0) throw new Error("There is no formula to evaluate.");
  const complete = formulas.map((formula) => (formula.startsWith("=") ? formula : `=${formula}`));
  return { json, formulas: complete, several: fromFile || formulas.length > 1 };
}

function readFormulas(file: string): string[] {
  return readFileSync(file, "utf8")
    .replace(/^\uFEFF/, "")
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== "" && !line.startsWith("#"));
}
