import type { Book } from "../../engine";
import type { BookStore, SavedBook } from "./store";

/** A pause in the changes this long saves the workbook [ms]. */
const pause = 400;

/** Why the browser did not store something, in words: its own are often empty. */
export function reasonOf(error: unknown): string {
  const { name = "", message = "" } = error instanceof Error || error instanceof DOMException ? error : {};
  if (name === "QuotaExceededError") return "there is no room left for this page.";
  return message || name || String(error);
}

export type SaveState =
  | { kind: "saved"; at: number | null }
  | { kind: "changed" }
  | { kind: "saving" }
  | { kind: "failed"; reason: string }
  | { kind: "off" };

/** Keeps what formulas spill beside the workbook saved at that time. */
interface ResultKeeper {
  keep(savedAt: number): Promise<void>;
}

/** Saves the workbook after every change and when the page goes away, and tells its state. */
export class Autosave {
  private timer: ReturnType<typeof setTimeout> | null = null;
  /** Changes made so far, and how many of them the store holds. */
  private changes = 0;
  private stored = 0;
  private stopped = false;
  private savedAt: number | null = null;
  private writing: Promise<void> = Promise.resolve();

  constructor(
    private readonly book: Book,
    private readonly store: BookStore,
    private readonly tell: (state: SaveState) => void,
    private readonly results: ResultKeeper,
  ) {}

  /** @param savedAt when the open workbook was saved, should it come from the store */
  start(savedAt: number | null): void {
    this.savedAt = savedAt;
    this.book.calculation.onFinished(() => this.keepResults());
    this.book.onChange(() => {
      this.changes += 1;
      this.tell({ kind: "changed" });
      if (this.timer !== null) clearTimeout(this.timer);
      this.timer = setTimeout(() => void this.save(), pause);
    });
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "hidden" && this.unsaved) void this.save();
    });
    window.addEventListener("pagehide", () => this.saveLastMinute());
    window.addEventListener("beforeunload", (event) => {
      if (!this.saveLastMinute()) event.preventDefault();
    });
  }

  /** Saves now; resolves when it is done. */
  save(): Promise<void> {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    this.writing = this.writing.then(() => this.write());
    return this.writing;
  }

  /** Saves no more: something else takes the workbook's place. */
  async stop(): Promise<void> {
    if (this.timer !== null) clearTimeout(this.timer);
    this.stopped = true;
    await this.writing;
  }

  /** Saves again after {@link stop}: nothing took the workbook's place. */
  goOn(): void {
    this.stopped = false;
    if (this.unsaved) void this.save();
  }

  /** Results belong to one saving: they are kept once both it and the calculation are done. */
  private keepResults(): void {
    if (this.savedAt === null || this.stopped || this.unsaved || this.book.calculation.busy) return;
    void this.results.keep(this.savedAt).catch(() => undefined);
  }

  private get unsaved(): boolean {
    return !this.stopped && this.stored < this.changes;
  }

  private async write(): Promise<void> {
    if (this.stopped) return;
    this.tell({ kind: "saving" });
    const upTo = this.changes;
    const saved = this.saved();
    try {
      await this.store.save(saved);
      this.stored = upTo;
      this.savedAt = saved.savedAt;
      this.tell(this.unsaved ? { kind: "changed" } : { kind: "saved", at: saved.savedAt });
      this.keepResults();
    } catch (error) {
      this.tell({ kind: "failed", reason: reasonOf(error) });
    }
  }

  /** False when a change could not be written anywhere. */
  private saveLastMinute(): boolean {
    return !this.unsaved || this.store.saveLastMinute(this.saved());
  }

  private saved(): SavedBook {
    return { savedAt: Date.now(), data: this.book.snapshot() };
  }
}
