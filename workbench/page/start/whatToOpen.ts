import type { IWorkbookData } from "@univerjs/core";
import { demoData } from "../../demo/demoData";
import { emptyBook } from "../emptyBook";
import type { SavedBook } from "../keep/store";
import { askFirst } from "./firstScreen";
import { usualWishes } from "./jobWishes";
import { newJobData } from "./newJob";
import { takeWish } from "./wanted";

/** The workbook that the page opens. */
export interface Opening {
  data: IWorkbookData;
  /** It stands in no store yet. */
  isNew: boolean;
  /** Somebody begins a job of their own with it. */
  begins: boolean;
}

/**
 * What the address asks for, else what was saved, else what the first screen brings.
 * @param keep puts saved work aside whose place is taken
 */
export async function whatToOpen(
  saved: SavedBook | null,
  place: HTMLElement,
  keep: (saved: SavedBook) => Promise<void>,
): Promise<Opening> {
  const wish = takeWish();
  if (wish) {
    if (saved) await keep(saved);
    const data = wish === "demo" ? demoData() : newJobData({ ...usualWishes(), example: false });
    return { data, isNew: true, begins: false };
  }
  if (saved) return { data: saved.data, isNew: false, begins: false };
  const choice = await askFirst(place);
  if (choice.kind === "own") return { data: newJobData(choice.wishes), isNew: true, begins: true };
  return { data: choice.kind === "demo" ? demoData() : emptyBook(), isNew: true, begins: false };
}
