import { ICommandService } from "@univerjs/core";
import { ILayoutService } from "@univerjs/preset-sheets-core";
import { decodeText, type MatchedRuns, matchRuns } from "../../workbook";
import type { Book, CellRange } from "../../engine";
import { ask, element } from "../dialog";
import { pickFile } from "./browserFiles";
import type { Desk } from "./desk";
import { findRunsTable } from "./runsTable";
import { busy, inform, reasonOf } from "./telling";
import { words } from "./words";

const t = words.runs;

/** Adds the rows of a CSV file to the Runs table. */
export async function addRunsFromCsv(desk: Desk): Promise<void> {
  const file = await pickFile(".csv,.tsv,.txt,text/csv");
  if (!file) return;
  try {
    const added = await add(desk, decodeText(new Uint8Array(await file.arrayBuffer())), file.name);
    await summary(desk, added);
  } catch (error) {
    await inform(t.failedTitle(file.name), reasonOf(error), t.failedHelp);
  }
}

/** Adds rows pasted into a box. What cannot be added stays in the box, with the reason under it. */
export async function pasteRuns(desk: Desk): Promise<void> {
  const box = document.createElement("textarea");
  box.rows = 8;
  box.wrap = "off";
  box.spellcheck = false;
  const label = element("label", t.pasteLabel);
  label.append(box);
  const wrong = element("p");
  wrong.className = "wrong";
  wrong.setAttribute("role", "alert");
  const choices = [
    { words: words.cancel, value: false },
    { words: t.add, value: true, main: true },
  ];
  while (await ask(t.pasteTitle, [t.pasteText, label, wrong], choices)) {
    try {
      return await summary(desk, await add(desk, box.value, t.pasteSource));
    } catch (error) {
      wrong.textContent = `${reasonOf(error)} ${t.failedHelp}`;
    }
  }
}

function add({ book }: Desk, text: string, source: string): Promise<MatchedRuns> {
  return busy(t.working, async () => {
    await book.settled();
    const table = findRunsTable(book);
    const matched = matchRuns(text, source, table);
    if (matched.rows.length > 0) await show(book, table.append(matched.rows));
    await book.settled();
    return matched;
  });
}

/** Selects cells and brings them into view. */
async function show(book: Book, cells: CellRange): Promise<void> {
  cells.select();
  const { startColumn, endRow, ...range } = cells.native.getRange();
  // Their first cells, not the far end of the table; one row more, for the last is shown only in part.
  const first = { ...range, startColumn, endColumn: startColumn, endRow: endRow + 1 };
  await book.services.get(ICommandService).executeCommand("sheet.command.scroll-to-cell", { range: first });
}

async function summary({ book }: Desk, found: MatchedRuns): Promise<void> {
  const { rows, matched, leftOut, ragged, repeated, problems } = found;
  const lines = [
    t.matched(matched),
    leftOut.length > 0 ? t.leftOut(leftOut) : "",
    ragged.length > 0 ? t.ragged(ragged) : "",
    repeated.length > 0 ? t.repeated(repeated) : "",
    problems.length > 0 ? t.problems(problems) : "",
  ].filter((line) => line !== "");
  const close = { words: words.close, value: false, main: true };
  const choices = rows.length > 0 ? [{ words: t.undo, value: true }, close] : [close];
  if (await ask(t.addedTitle(rows.length), lines, choices)) await book.undo();
  // To the rows, where Ctrl+Z takes them out too.
  book.services.get(ILayoutService).focus();
}
