import { strings } from "../../strings";
import { batch, ExcelProblem } from "../batch";

/** Deletes sheets that an action of ours has just made, those of them that are there. */
export const takeAway = (names: readonly string[]): Promise<void> =>
  batch(async (context, commit) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    for (const sheet of worksheets.items) if (names.includes(sheet.name)) sheet.delete();
    await commit();
  });

/** Takes away what is half made; gives the words for what stopped it, and for what is left of it. */
export async function withoutHalves(made: readonly string[], error: unknown): Promise<Error> {
  if (made.length === 0 || !(error instanceof ExcelProblem) || error.untouched) return error as Error;
  const left = await takeAway(made).then(
    () => strings.excel.takenAway,
    () => strings.excel.halfWritten(made.join(", ")),
  );
  return new ExcelProblem(`${error.why} ${left}`);
}
