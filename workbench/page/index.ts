import "./page.css";
import "./files/files.css";
import type { Book } from "../engine";
import { Autosave, type SaveState } from "./keep/autosave";
import { startFileMenu } from "./files/fileMenu";
import { busy } from "./files/telling";
import { words } from "./files/words";
import { describeFunctions } from "./calculator";
import { openGrid } from "./grid";
import { claimWorkbook } from "./keep/onlyTab";
import { startPane } from "./pane/pane";
import { tellProgress } from "./progress";
import { readResults, resultKeeper } from "./results";
import { begin, takeBeginning } from "./start/begin";
import { startJobName } from "./start/jobName";
import { whatToOpen } from "./start/whatToOpen";
import { startAgainButtons } from "./startAgain";
import { BookStore, type SavedBook } from "./keep/store";
import { startStrip } from "./strip";

const byId = <T extends HTMLElement>(id: string) => document.getElementById(id) as T;

/** What the notice is about, so that only it is taken away again. */
let noticeOf: "saving" | "other" = "other";

function notice(text: string, about: typeof noticeOf = "other"): void {
  byId("notice").textContent = text;
  byId("notice").hidden = text === "";
  noticeOf = about;
}

function tellSaveState(state: SaveState): void {
  const words = {
    saved: () => (state.kind === "saved" && state.at ? `Saved ${new Date(state.at).toLocaleTimeString()}` : "Saved"),
    changed: () => "Saving …",
    saving: () => "Saving …",
    failed: () => "Not saved",
    off: () => "Not saved",
  };
  byId("save-state").textContent = words[state.kind]();
  byId("save-state").dataset.kind = state.kind;
  if (state.kind === "failed") notice(unsaved(state.reason), "saving");
  if (state.kind === "saved" && noticeOf === "saving") notice("");
}

const unsaved = (reason: string): string =>
  `The browser could not store your changes: ${reason} They are still here, and the next change tries again. ` +
  "Save the workbook as a file (File, Save as .xlsx), or free some room.";

/** Changes in a tab that may store nothing are asked about before it goes. */
function askBeforeLeaving(book: Book): void {
  let changed = false;
  book.onChange(() => (changed = true));
  window.addEventListener("beforeunload", (event) => {
    if (changed) event.preventDefault();
  });
}

async function open(): Promise<void> {
  const loading = describeFunctions();
  // It fails below, where it is awaited; not while somebody still reads the first screen.
  loading.catch(() => undefined);
  const store = new BookStore();
  let mayStore = await claimWorkbook();
  if (!mayStore) notice("This workbook is open in another tab. Changes made here are not saved.");
  const tellKept = (faults: readonly string[]) =>
    notice(
      faults.length === 0
        ? "The workbook you saved could not be read. It is kept under Earlier copies."
        : `Parts of the workbook you saved could not be read and are left out: ${faults.join("; ")}. The whole of it is kept under Earlier copies.`,
    );
  const saved = await store.read(tellKept).catch((error: unknown) => {
    mayStore = false;
    notice(`This browser does not let the page store anything (${String(error)}). Your changes end with this tab.`);
    return null;
  });

  let book: Book | null = null;
  let autosave: Autosave | null = null;
  const current = () => (book ? { savedAt: Date.now(), data: book.snapshot() } : saved);
  const replace = async (next: SavedBook) => {
    await autosave?.stop();
    try {
      await store.save({ ...next, savedAt: Date.now() });
    } catch (error) {
      autosave?.goOn();
      throw error;
    }
    location.reload();
  };
  // Before the grid: should the saved workbook fail to open, these are the way out of it.
  if (mayStore) startAgainButtons(store, current, replace);
  else for (const id of ["restart", "earlier"]) byId<HTMLButtonElement>(id).disabled = true;

  const { data, isNew, begins } = await whatToOpen(saved, byId("grid"), async (put) => {
    if (mayStore) await store.keep(put, Date.now());
  });

  await busy(words.opening, async () => {
    const [functions, results] = await Promise.all([loading, saved && !isNew ? readResults(saved.savedAt) : null]);
    const darkScheme = matchMedia("(prefers-color-scheme: dark)");
    const grid = await openGrid(byId("grid"), functions, window.calculator, data, results, darkScheme.matches);
    darkScheme.addEventListener("change", () => grid.setDark(darkScheme.matches));
    const open = (book = grid.book);
    startJobName(byId<HTMLInputElement>("book-name"), open);
    startStrip(byId("strip"), open);
    tellProgress(open.calculation);
    const pane = startPane(byId("pane-toggle"), byId("pane"), open);

    if (mayStore) {
      autosave = new Autosave(open, store, tellSaveState, resultKeeper(open.services));
      autosave.start(isNew ? null : (saved?.savedAt ?? null));
      if (isNew) await autosave.save();
    } else askBeforeLeaving(open);
    const desk = {
      showDrawings: pane.showDrawings,
      book: open,
      get name() {
        return open.native.getName();
      },
      functions,
      store: mayStore ? store : null,
      current: () => ({ savedAt: Date.now(), data: open.snapshot() }),
      replace,
    };
    startFileMenu(byId("file"), byId("file-menu"), desk);
    if (!mayStore) tellSaveState({ kind: "off" });
    else if (!isNew) tellSaveState({ kind: "saved", at: saved?.savedAt ?? null });
    if (begins || takeBeginning()) {
      await pane.show();
      begin(open);
    } else if (isNew) begin(open);
    // For tests and for the curious, at the browser's console.
    Object.assign(window, { ledgerBook: open });
  });
}

window.calculatorFailed.then(() => notice(words.noCalculator));

open().catch((error: unknown) => {
  const reason = error instanceof Error ? error.message : String(error);
  notice(`The page could not start: ${reason} What you saved is still stored; starting again keeps a copy of it.`);
  throw error;
});
