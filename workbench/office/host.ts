import type { Book } from "../engine";
import { WorkbookSettings } from "./workbookSettings";

/** One open workbook behind the Office objects: its settings, and whose turn it is. */
export class Host {
  readonly settings: WorkbookSettings;
  private last: Promise<unknown> = Promise.resolve();

  constructor(readonly book: Book) {
    this.settings = new WorkbookSettings(book);
  }

  /** Runs a batch when those before it are through: batches never mix. */
  inTurn<T>(batch: () => Promise<T>): Promise<T> {
    const turn = this.last.then(batch);
    this.last = turn.catch(() => undefined);
    return turn;
  }
}
