import { strings } from "../../strings";
import { batch, ExcelProblem } from "../batch";
import { NOTHING_BEGUN } from "./begun";

/** Deletes sheets that an action of ours has just made, those of them that are there, and what says that they are begun. */
export const takeAway = (names: readonly string[], isBegun = false): Promise<void> =>
  batch(async (context, commit) => {
    const { worksheets, settings } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    for (const sheet of worksheets.items) if (names.includes(sheet.name)) sheet.delete();
    if (isBegun) settings.add(...NOTHING_BEGUN);
    await commit();
  });

/** What is said of an action that broke half way. */
export interface LeftOver {
  /** What it made is taken away again. */
  gone: string;
  /** That could not be done. */
  left: string;
  /** A set-up that keeps in the workbook that it is begun, and has nothing to go on with any more. */
  isBegun?: boolean;
}

/** Takes away what is half made; gives the words for what stopped it, and for what is left of it. */
export async function withoutHalves(made: readonly string[], error: unknown, given?: LeftOver): Promise<Error> {
  if (!(error instanceof ExcelProblem) || error.untouched || (made.length === 0 && !given)) return error as Error;
  const words = given ?? { gone: strings.excel.takenAway, left: strings.excel.halfWritten(made.join(", ")) };
  const left = await takeAway(made, words.isBegun).then(
    () => words.gone,
    () => words.left,
  );
  return new ExcelProblem(`${error.why} ${left}`, false);
}
