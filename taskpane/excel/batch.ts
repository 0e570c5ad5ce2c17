import { strings } from "../strings";

/** Something Excel would not do, told in words a person can act on. */
export class ExcelProblem extends Error {
  override readonly name = "ExcelProblem";
}

/** Runs one batch against the workbook. Whatever Excel refuses comes back as an {@link ExcelProblem}. */
export async function batch<T>(body: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run(body);
  } catch (error) {
    throw inWords(error);
  }
}

function inWords(error: unknown): Error {
  if (error instanceof ExcelProblem) return error;
  const code = (error as { code?: string } | null)?.code ?? "";
  const known = strings.excel.problems[code];
  const detail = error instanceof Error ? error.message : String(error);
  return new ExcelProblem(known ?? strings.excel.otherProblem(detail));
}
