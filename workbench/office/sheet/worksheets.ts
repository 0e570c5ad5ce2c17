import type { Sheet } from "../../engine";
import { Collection } from "../base/collection";
import { type ChangedArgs, onCellsChanged } from "../base/events";
import { officeEvent } from "../base/officeEvent";
import type { Requests } from "../base/requests";
import { addSheet } from "./sheets";
import { whole } from "../base/whole";
import { worksheetOf } from "./worksheet";

type Members = "add" | "getActiveWorksheet" | "getItem" | "getItemOrNullObject" | "items" | "onChanged";

class WorksheetsPart extends Collection<Excel.Worksheet> implements Pick<Excel.WorksheetCollection, Members> {
  constructor(requests: Requests) {
    const { book } = requests.host;
    super(requests, "the worksheets", () =>
      book.sheets().map((sheet) => worksheetOf(requests, { find: () => sheet, what: sheet.name })),
    );
  }

  /** Adds a sheet behind the others. The sheet that was at the front stays there, as in Excel. */
  add(name?: string): Excel.Worksheet {
    const { book } = this.requests.host;
    let made: Sheet | null = null;
    this.requests.write(() => {
      made = addSheet(book, name);
    });
    return worksheetOf(this.requests, { find: () => made, what: "the new worksheet" });
  }

  /** By name or by id. */
  getItem(key: string): Excel.Worksheet {
    return worksheetOf(this.requests, { find: () => this.find(key), what: `a worksheet named ${key}` });
  }

  getItemOrNullObject(key: string): Excel.Worksheet {
    return worksheetOf(this.requests, { find: () => this.find(key), what: `a worksheet named ${key}`, orNull: true });
  }

  getActiveWorksheet(): Excel.Worksheet {
    const { book } = this.requests.host;
    return worksheetOf(this.requests, { find: () => book.activeSheet(), what: "the active worksheet" });
  }

  get onChanged(): OfficeExtension.EventHandlers<Excel.WorksheetChangedEventArgs> {
    const { book } = this.requests.host;
    return officeEvent<ChangedArgs, Excel.WorksheetChangedEventArgs>(this.requests, (tell) =>
      onCellsChanged(book, tell),
    );
  }

  private find(key: string): Sheet | null {
    const { book } = this.requests.host;
    return book.findSheet(key) ?? book.sheets().find(({ id }) => id === key) ?? null;
  }
}

export const worksheetsOf = (requests: Requests): Excel.WorksheetCollection =>
  whole<Excel.WorksheetCollection>(new WorksheetsPart(requests), "WorksheetCollection");
