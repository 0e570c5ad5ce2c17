import { demoData } from "../demo/demoData";
import { ask, button, element } from "./dialog";
import { emptyBook } from "./emptyBook";
import { download } from "./files/browserFiles";
import { rememberBeginning } from "./start/begin";
import { type JobForm, jobForm } from "./start/jobForm";
import { newJobData } from "./start/newJob";
import { words } from "./start/words";
import { type BookStore, isSavedBook, type SavedBook } from "./keep/store";

/** What a choice in the header puts in place of the open workbook. */
export type Replace = (book: SavedBook) => Promise<void>;

const begin = {
  leave: () => null,
  empty: emptyBook,
  demo: demoData,
  own: ({ wishes }: JobForm) => newJobData(wishes()),
};

/** The two buttons that replace the open workbook. Each keeps a copy of it first. */
export function startAgainButtons(store: BookStore, current: () => SavedBook | null, replace: Replace): void {
  const keepCurrent = async () => {
    const open = current();
    if (open) await store.keep(open, Date.now());
  };

  document.getElementById("restart")!.addEventListener("click", async () => {
    const form = jobForm();
    const choice = await ask<keyof typeof begin>(
      words.title,
      [...kept(current()), form.fields],
      [
        { words: words.leave, value: "leave" },
        { words: words.empty, value: "empty" },
        { words: words.demo, value: "demo" },
        { words: words.start, value: "own", main: true },
      ],
    );
    const data = choice && begin[choice](form);
    if (!data) return;
    await keepCurrent();
    if (choice === "own") rememberBeginning();
    await replace({ savedAt: Date.now(), data });
  });

  document.getElementById("earlier")!.addEventListener("click", async () => {
    const copies = await store.copies();
    const lines = copies.map((copy) => {
      const line = element("div");
      line.className = "row";
      const told = `${copy.name} ${new Date(copy.keptAt).toLocaleString()}${copy.readable ? "" : " (cannot be opened)"}`;
      line.append(
        element("span", told.trim()),
        button("Download", () => void downloadCopy(store, copy.key)),
      );
      if (copy.readable) line.append(button("Open", () => void open(copy.key)));
      return line;
    });
    const empty = "There are none yet. A copy is kept whenever you start again or open a file.";
    await ask("Earlier copies", lines.length > 0 ? lines : [empty], [{ words: "Close", value: "close" }]);
  });

  const open = async (key: string) => {
    const copy = await store.copy(key);
    if (!isSavedBook(copy)) return;
    await keepCurrent();
    await replace(copy);
  };
}

const kept = (open: SavedBook | null): string[] => (open ? [words.kept(open.data.name)] : []);

async function downloadCopy(store: BookStore, key: string): Promise<void> {
  const name = `raceway-ledger ${key.replace(/[^0-9A-Za-z.-]+/g, " ")}.json`;
  download(name, JSON.stringify(await store.copy(key), null, 1), "application/json");
}
