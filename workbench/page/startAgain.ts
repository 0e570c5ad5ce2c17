import { ask, button, element } from "./dialog";
import { emptyBook } from "./emptyBook";
import { download } from "./files/browserFiles";
import { type BookStore, isSavedBook, type SavedBook } from "./store";

/** What a choice in the header puts in place of the open workbook. */
export type Replace = (book: SavedBook | null) => Promise<void>;

/** The two buttons that replace the open workbook. Each keeps a copy of it first. */
export function startAgainButtons(store: BookStore, current: () => SavedBook, replace: Replace): void {
  document.getElementById("restart")!.addEventListener("click", async () => {
    const choice = await ask(
      "Start again?",
      ["The workbook as it is now is kept. You find it under Earlier copies."],
      [
        { words: "Leave it", value: "leave" },
        { words: "Keep a copy and start empty", value: "empty" },
        { words: "Keep a copy and start again", value: "start", main: true },
      ],
    );
    if (choice !== "start" && choice !== "empty") return;
    await store.keep(current(), Date.now());
    await replace(choice === "empty" ? { savedAt: Date.now(), data: emptyBook() } : null);
  });

  document.getElementById("earlier")!.addEventListener("click", async () => {
    const copies = await store.copies();
    const lines = copies.map((copy) => {
      const line = element("div");
      line.className = "row";
      const words = `${new Date(copy.keptAt).toLocaleString()}${copy.readable ? "" : " (cannot be opened)"}`;
      line.append(
        element("span", words),
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
    await store.keep(current(), Date.now());
    await replace(copy);
  };
}

async function downloadCopy(store: BookStore, key: string): Promise<void> {
  const name = `raceway-ledger ${key.replace(/[^0-9A-Za-z.-]+/g, " ")}.json`;
  download(name, JSON.stringify(await store.copy(key), null, 1), "application/json");
}
