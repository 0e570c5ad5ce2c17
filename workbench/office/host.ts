import { IUndoRedoService } from "@univerjs/core";
import type { Book } from "../engine";
import { WorkbookSettings } from "./workbookSettings";

/** One open workbook behind the Office objects: whose turn it is, and where a step of undo begins and ends. */
export class Host {
  readonly settings: WorkbookSettings;
  private last: Promise<unknown> = Promise.resolve();
  private writers = 0;
  private endStep: (() => void) | null = null;

  constructor(readonly book: Book) {
    this.settings = new WorkbookSettings(book);
  }

  /** Runs a batch when those before it are through: batches never mix. */
  inTurn<T>(batch: () => Promise<T>): Promise<T> {
    const turn = this.last.then(batch);
    this.last = turn.catch(() => undefined);
    return turn;
  }

  /** Begins a step of undo; runs that overlap share one. Gives the way to end it. */
  beginStep(): () => void {
    if (this.writers++ === 0) {
      const step = this.book.services.get(IUndoRedoService).__tempBatchingUndoRedo(this.book.id);
      this.endStep = () => step.dispose();
    }
    return () => {
      if (--this.writers > 0) return;
      this.endStep?.();
      this.endStep = null;
    };
  }
}
