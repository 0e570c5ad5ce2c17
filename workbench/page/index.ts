import "./page.css";
import "./files/files.css";
import { demoBook } from "../demo/demoBook";
import { buildDemo } from "../demo/buildDemo";
import type { Book } from "../engine";
import { Autosave, type SaveState } from "./autosave";
import { startFileMenu } from "./files/fileMenu";
import { busy } from "./files/telling";
import { words } from "./files/words";
import { startWorker } from "./calculator";
import { openGrid } from "./grid";
import { claimWorkbook } from "./onlyTab";
import { startPane } from "./pane";
import { startAgainButtons } from "./startAgain";
import { BookStore, type SavedBook } from "./store";
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

async function open(): Promise<void> {
  const store = new BookStore();
  let mayStore = await claimWorkbook();
  if (!mayStore) notice("This workbook is open in another tab. Changes made here are not saved.");
  const tellKept = () => notice("The workbook you saved could not be read. It is kept under Earlier copies.");
  const saved = await store.read(tellKept).catch((error: unknown) => {
    mayStore = false;
    notice(`This browser does not let the page store anything (${String(error)}). Your changes end with this tab.`);
    return null;
  });

  // Made anew each time: an open grid works in the very data it was given.
  const demo = (): SavedBook => ({ savedAt: Date.now(), data: buildDemo(demoBook) });
  let book: Book | null = null;
  let autosave: Autosave | null = null;
  const current = () => (book ? { savedAt: Date.now(), data: book.snapshot() } : (saved ?? demo()));
  const replace = async (next: SavedBook | null) => {
    await autosave?.stop();
    try {
      await store.save(next ? { ...next, savedAt: Date.now() } : demo());
    } catch (error) {
      autosave?.goOn();
      throw error;
    }
    location.reload();
  };
  // Before the grid: should the saved workbook fail to open, these are the way out of it.
  if (mayStore) startAgainButtons(store, current, replace);
  else for (const id of ["restart", "earlier"]) byId<HTMLButtonElement>(id).disabled = true;

  const { functions, worker } = await startWorker();
  const darkScheme = matchMedia("(prefers-color-scheme: dark)");
  const grid = await openGrid(byId("grid"), functions, worker, (saved ?? demo()).data, darkScheme.matches);
  darkScheme.addEventListener("change", () => grid.setDark(darkScheme.matches));
  book = grid.book;
  const name = saved?.data.name ?? demoBook.name;
  byId("book-name").textContent = name;
  startStrip(byId("strip"), book);
  startPane(byId("pane-toggle"), byId("pane"), book);

  await book.settled();
  if (mayStore) {
    autosave = new Autosave(book, store, tellSaveState);
    autosave.start();
  }
  const desk = { book, name, functions, store: mayStore ? store : null, current, replace };
  startFileMenu(byId("file"), byId("file-menu"), desk);
  tellSaveState(mayStore ? { kind: "saved", at: saved?.savedAt ?? null } : { kind: "off" });
  // For tests and for the curious, at the browser's console.
  Object.assign(window, { ledgerBook: book });
}

busy(words.opening, open).catch((error: unknown) => {
  const reason = error instanceof Error ? error.message : String(error);
  notice(`The page could not start: ${reason} What you saved is still stored; starting again keeps a copy of it.`);
  throw error;
});
