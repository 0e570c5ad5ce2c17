import type { IWorkbookData } from "@univerjs/core";
import { bookDatabase } from "./database";
import { mend } from "./mend";
import { createStore, del, get, keys, set, type UseStore } from "idb-keyval";

/** A workbook as it is kept between visits. */
export interface SavedBook {
  savedAt: number;
  data: IWorkbookData;
}

/** A copy put aside: before starting again from the demo, or because it could not be read. */
export interface KeptCopy {
  key: string;
  /** Of the workbook; empty where it cannot be read. */
  name: string;
  keptAt: number;
  readable: boolean;
}

const currentKey = "current";
const keptPrefix = "kept ";

/** Where a change is written that the page has no time left to store: read back at the next start. */
const lastMinuteKey = "raceway-ledger last minute";

/** Whether stored data has the shape of a workbook that can be opened. */
export function isSavedBook(value: unknown): value is SavedBook {
  const saved = value as Partial<SavedBook> | null | undefined;
  const data = saved?.data as Partial<IWorkbookData> | null | undefined;
  if (typeof saved?.savedAt !== "number" || !data || typeof data !== "object") return false;
  const { sheetOrder, sheets } = data;
  if (!Array.isArray(sheetOrder) || sheetOrder.length === 0 || !sheets || typeof sheets !== "object") return false;
  return sheetOrder.every((id) => typeof sheets[id] === "object" && sheets[id] !== null);
}

/** The browser's store of workbooks. */
export class BookStore {
  private readonly store: UseStore = createStore(...bookDatabase);

  /**
   * The newest work saved, or null for none. What cannot be read, whole or in part, is put aside as it is, never thrown
   * away, and `tellKept` called with the parts left out (none when it is the whole).
   */
  async read(tellKept: (faults: readonly string[]) => void): Promise<SavedBook | null> {
    const stored: unknown = await get(currentKey, this.store);
    const saved = isSavedBook(stored) ? stored : null;
    if (stored !== undefined && !saved) {
      await this.keep(stored, Date.now());
      await del(currentKey, this.store);
      tellKept([]);
    }
    const lastMinute = readLastMinute();
    const newest = lastMinute && lastMinute.savedAt > (saved?.savedAt ?? 0) ? lastMinute : saved;
    if (!newest) return null;
    const { data, faults } = mend(newest.data);
    if (faults.length > 0) {
      await this.keep(newest, Date.now());
      tellKept(faults);
    }
    return { ...newest, data };
  }

  async save(book: SavedBook): Promise<void> {
    await set(currentKey, book, this.store);
    localStorage.removeItem(lastMinuteKey);
  }

  /** Writes at once, for the moment the page goes away; false when there was no room. */
  saveLastMinute(book: SavedBook): boolean {
    try {
      localStorage.setItem(lastMinuteKey, JSON.stringify(book));
      return true;
    } catch {
      return false;
    }
  }

  /** Puts data aside under the time, and gives the key. */
  async keep(value: unknown, at: number): Promise<string> {
    const key = `${keptPrefix}${new Date(at).toISOString()}`;
    await set(key, value, this.store);
    return key;
  }

  /** The copies put aside, newest first. */
  async copies(): Promise<KeptCopy[]> {
    const kept = (await keys<IDBValidKey>(this.store)).filter(
      (key): key is string => typeof key === "string" && key.startsWith(keptPrefix),
    );
    const copies = kept.map(async (key): Promise<KeptCopy> => {
      const copy = await this.copy(key);
      const readable = isSavedBook(copy);
      return { key, name: readable ? copy.data.name : "", keptAt: Date.parse(key.slice(keptPrefix.length)), readable };
    });
    return (await Promise.all(copies)).sort((first, second) => second.keptAt - first.keptAt);
  }

  copy(key: string): Promise<unknown> {
    return get(key, this.store);
  }

  deleteCopy(key: string): Promise<void> {
    return del(key, this.store);
  }
}

function readLastMinute(): SavedBook | null {
  try {
    const saved: unknown = JSON.parse(localStorage.getItem(lastMinuteKey) ?? "null");
    return isSavedBook(saved) ? saved : null;
  } catch {
    return null;
  }
}
