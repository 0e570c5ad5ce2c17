import "./page.css";
import { demoBook } from "../demo/demoBook";
import { buildDemo } from "../demo/buildDemo";
import { Autosave, type SaveState } from "./autosave";
import { loadFunctions } from "./functions";
import { type Grid, openGrid } from "./grid";
import { claimWorkbook } from "./onlyTab";
import { startPane } from "./pane";
import { startAgainButtons } from "./startAgain";
import { BookStore, isSavedBook, type SavedBook } from "./store";
import { startStrip } from "./strip";

const byId = <T extends HTMLElement>(id: string) => document.getElementById(id) as T;

function notice(text: string): void {
  byId("notice").textContent = text;
  byId("notice").hidden = false;
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
  if (state.kind === "failed") notice(`The browser could not store your changes: ${state.reason}`);
}

/** What was saved last, or null for the demo. What cannot be read is put aside, never thrown away. */
async function lastWork(store: BookStore): Promise<SavedBook | null> {
  const stored = await store.read();
  if (stored === undefined || isSavedBook(stored)) return stored ?? null;
  await store.keep(stored, Date.now());
  notice("The workbook you saved could not be read. It is kept under Earlier copies; this is the demo.");
  return null;
}

async function open(): Promise<void> {
  const store = new BookStore();
  const mayStore = await claimWorkbook();
  let readable = true;
  const saved = await lastWork(store).catch((error: unknown) => {
    readable = false;
    notice(`This browser does not let the page store anything (${String(error)}). Your changes end with this tab.`);
    return null;
  });
  const functions = await loadFunctions();
  const darkScheme = matchMedia("(prefers-color-scheme: dark)");
  // Made anew each time: an open grid works in the very data it was given.
  const demo = () => buildDemo(demoBook);
  let grid: Grid;
  try {
    grid = await openGrid(byId("grid"), functions, saved?.data ?? demo(), darkScheme.matches);
  } catch (error) {
    if (!saved) throw error;
    await store.keep(saved, Date.now());
    await store.save({ savedAt: Date.now(), data: demo() });
    location.reload();
    return;
  }
  const { book } = grid;
  darkScheme.addEventListener("change", () => grid.setDark(darkScheme.matches));
  byId("book-name").textContent = saved?.data.name ?? demoBook.name;

  startStrip(byId("strip"), book);
  startPane(byId("pane-toggle"), byId("pane"), book);

  const autosave = new Autosave(book, store, tellSaveState);
  await book.settled();
  if (!mayStore) notice("This workbook is open in another tab. Changes made here are not saved.");
  if (mayStore && readable) {
    autosave.start();
    tellSaveState({ kind: "saved", at: saved?.savedAt ?? null });
  } else {
    tellSaveState({ kind: "off" });
  }
  startAgainButtons(
    store,
    () => ({ savedAt: Date.now(), data: book.snapshot() }),
    async (next) => {
      await autosave.stop();
      await store.save({ savedAt: Date.now(), data: next?.data ?? demo() });
      location.reload();
    },
  );
  // For tests and for the curious, at the browser's console.
  Object.assign(window, { ledgerBook: book });
}

open().catch((error: unknown) => {
  notice(`The page could not start: ${error instanceof Error ? error.message : String(error)}`);
  throw error;
});
