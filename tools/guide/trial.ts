// What a trial of somebody's Excel holds it against: every formula of the guide with what the engine gave for it.
import type { GuidePage } from "./assemble";
import { isError, type ResultCell } from "./evaluate";
import { GUIDE_TABLES } from "./tables";

/** Path of the file, seen from the folder of the repository. */
export const TRIAL_FILE = "taskpane/trial/guideExamples.json";

/** The file's text: a table or a formula to a line. An error is its code alone, for Excel hands over no more. */
export function trialExamples(pages: readonly GuidePage[]): string {
  const examples = pages.flatMap(({ example, more, refused, notes }) =>
    [example, ...more, ...refused].map(({ formula, rows }, at) => ({
      formula,
      ...(at === 0 && notes.cells && { cells: notes.cells }),
      rows: rows.map((row) => row.map((cell: ResultCell) => (isError(cell) ? { e: cell.code } : cell))),
    })),
  );
  const lines = (items: readonly object[]) => items.map((item) => JSON.stringify(item)).join(",\n");
  return `{"tables":[\n${lines(GUIDE_TABLES)}\n],"examples":[\n${lines(examples)}\n]}\n`;
}
