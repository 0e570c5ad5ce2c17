import type { Desk } from "./desk";
import { startMenu } from "./menu";
import { inform } from "./telling";
import { words } from "./words";

type Actions = typeof import("./actions");

/** The File menu: the workbook and its tables as files, out and in. */
export function startFileMenu(opener: HTMLButtonElement, list: HTMLElement, desk: Desk): void {
  const entry = (text: string, name: keyof Actions) => ({ words: text, run: () => void act(name, desk) });
  const t = words.menu;
  startMenu(opener, list, [
    entry(t.open, "openWorkbook"),
    entry(t.save, "saveWorkbook"),
    entry(t.saveValues, "saveValues"),
    entry(t.saveCsv, "saveSheetAsCsv"),
    entry(t.saveDrawing, "saveDrawing"),
    null,
    entry(t.addCsv, "addRunsFromCsv"),
    { words: t.addDrawing, run: () => void desk.showDrawings() },
    entry(t.paste, "pasteRuns"),
  ]);
}

async function act(name: keyof Actions, desk: Desk): Promise<void> {
  const actions = await import(/* webpackChunkName: "files" */ "./actions").catch(() => null);
  if (actions) await actions[name](desk);
  else await inform(words.notLoadedTitle, words.notLoaded);
}
