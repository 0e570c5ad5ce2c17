import type { Host } from "./host";
import { OfficeError } from "./officeError";
import { workbookOf } from "./workbook";

type Action = () => void | Promise<void>;

/** What one `Excel.run` asks for waits here until `sync`. */
export class RequestContext implements Pick<Excel.RequestContext, "workbook" | "sync"> {
  readonly workbook: Excel.Workbook;
  private waiting: Action[] = [];
  private endStep: (() => void) | null = null;

  constructor(readonly host: Host) {
    this.workbook = workbookOf(this);
  }

  /** Does something at the next sync that neither reads cells nor changes them. */
  later(action: Action): void {
    this.waiting.push(action);
  }

  /** Reads at the next sync, when every formula shows its result. */
  read(action: Action): void {
    this.later(async () => {
      await this.host.book.settled();
      await action();
    });
  }

  /** Changes the workbook at the next sync, as part of this run's one step of undo. */
  write(action: Action): void {
    this.later(async () => {
      this.endStep ??= this.host.book.beginStep();
      await action();
    });
  }

  readonly sync = async <T>(passThroughValue?: T): Promise<T> => {
    await this.host.inTurn(async () => {
      try {
        for (let action = this.waiting.shift(); action; action = this.waiting.shift()) await action();
      } catch (error) {
        this.waiting = [];
        throw error instanceof OfficeError ? error : new OfficeError("GeneralException", String(error));
      }
    });
    return passThroughValue as T;
  };

  /** Ends this run's step of undo. */
  end(): void {
    this.endStep?.();
    this.endStep = null;
  }
}
