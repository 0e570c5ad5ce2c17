import type { Book } from "../engine";
import { growTablesWhileTyping } from "./table/tableGrowth";
import { WorkbookSettings } from "./workbookSettings";

/** One open workbook behind the Office objects: its settings, and whose turn it is. */
export class Host {
  readonly settings: WorkbookSettings;
  /** Whether a batch is at work. */
  busy = false;
  private last: Promise<unknown> = Promise.resolve();

  constructor(readonly book: Book) {
    this.settings = new WorkbookSettings(book);
    growTablesWhileTyping(this);
  }

  /** Runs a batch when those before it are through: batches never mix. */
  inTurn<T>(batch: () => Promise<T>): Promise<T> {
    const turn = this.last.then(async () => {
      this.busy = true;
      try {
        return await batch();
      } finally {
        this.busy = false;
      }
    });
    this.last = turn.catch(() => undefined);
    return turn;
  }
}
