import { ILayoutService } from "@univerjs/preset-sheets-core";
import type { Book } from "../../engine";

const key = "raceway-ledger begins";

/** Remembers over a reload that a job of one's own begins. */
export const rememberBeginning = (): void => sessionStorage.setItem(key, "yes");

/** Whether a job of one's own begins with this load of the page; told once. */
export function takeBeginning(): boolean {
  const begins = sessionStorage.getItem(key) !== null;
  sessionStorage.removeItem(key);
  return begins;
}

/** The cursor in the first cell of Runs, the keyboard with it. */
export function begin(book: Book): void {
  book.findSheet("Runs")?.range("A2").select();
  book.services.get(ILayoutService).focus();
}
