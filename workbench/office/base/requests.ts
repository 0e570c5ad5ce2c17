import type { Sheet } from "../../engine";
import type { Host } from "../host";
import { OfficeError } from "./officeError";

/** What stands for a thing that may not be there. */
export interface Lookup<T> {
  find: () => T | null;
  /** What it is called in an error. */
  what: string;
  /** Null is an answer (`getItemOrNullObject`), not an error. */
  orNull?: boolean;
}

type Action = () => void | Promise<void>;

/** What one `Excel.run` asks for waits here until `sync`. */
export abstract class Requests implements Pick<Excel.RequestContext, "workbook" | "sync"> {
  private waiting: Action[] = [];
  private endStep: (() => void) | null = null;

  constructor(readonly host: Host) {}

  abstract get workbook(): Excel.Workbook;

  /** The worksheet that a range or a table lies on. */
  abstract worksheet(finding: Lookup<Sheet>): Excel.Worksheet;

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
