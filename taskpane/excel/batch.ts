import { strings } from "../strings";
import { knows } from "./ifThere";

/** Something Excel would not do, told in words a person can act on. */
export class ExcelProblem extends Error {
  override readonly name = "ExcelProblem";

  /**
   * @param why what Excel would not do
   * @param untouched whether it is known that nothing was changed
   * @param left what may be changed by now, in words
   */
  constructor(
    readonly why: string,
    readonly untouched = true,
    left = "",
  ) {
    super(`${why} ${left}`.trim());
  }
}

/** Sends what waits and changes the workbook; other round trips only read. */
export type Commit = () => Promise<void>;

/** Refused before any of a request was done. */
const REFUSED_WHOLE = new Set(["InvalidOperationInCellEditMode", "RequestPayloadSizeLimitExceeded"]);

/**
 * Runs one batch that may change the workbook, where this Excel can as one step of undo (ExcelApi 1.20). Whatever Excel
 * refuses comes back as an {@link ExcelProblem}, which says whether anything can have been changed: no document promises
 * that a batch that failed did nothing.
 */
export async function batch<T>(body: (context: Excel.RequestContext, commit: Commit) => Promise<T>): Promise<T> {
  let [begun, done] = [0, 0];
  const whole = (context: Excel.RequestContext) =>
    body(context, async () => {
      begun += 1;
      await context.sync();
      done += 1;
    });
  try {
    return knows("1.20") ? await Excel.run({ mergeUndoGroup: true }, whole) : await Excel.run(whole);
  } catch (error) {
    const untouched = begun === 0 || (begun === 1 && done === 0 && REFUSED_WHOLE.has(codeOf(error)));
    throw inWords(error, untouched, untouched ? strings.excel.untouched : strings.excel.partly);
  }
}

/** Runs one batch that only reads. It waits while a cell is being edited, where Excel can. */
export async function reading<T>(body: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: true }, body);
  } catch (error) {
    throw inWords(error, true, "");
  }
}

const codeOf = (error: unknown): string => (error as { code?: string } | null)?.code ?? "";

function inWords(error: unknown, untouched: boolean, left: string): Error {
  if (error instanceof ExcelProblem) return error;
  const known = strings.excel.problems[codeOf(error)];
  const detail = error instanceof Error ? error.message : String(error);
  return new ExcelProblem(known ?? strings.excel.otherProblem(detail), untouched, left);
}
