import { ClientObject, type Readers } from "./base/clientObject";
import { Collection } from "./base/collection";
import { onSelectionChanged } from "./base/events";
import { officeEvent } from "./base/officeEvent";
import type { Area } from "./sheet/place";
import { rangeOf } from "./sheet/range";
import type { Requests } from "./base/requests";
import { settingsOf } from "./settings";
import { tablesOf } from "./table/tables";
import { whole } from "./base/whole";
import { worksheetsOf } from "./sheet/worksheets";

type Members = "getSelectedRange" | "names" | "onSelectionChanged" | "settings" | "tables" | "worksheets";

class WorkbookPart extends ClientObject<true> implements Pick<Excel.Workbook, Members> {
  protected override readonly readers: Readers = {};

  constructor(requests: Requests) {
    super(requests, { find: () => true, what: "the workbook" });
  }

  get worksheets(): Excel.WorksheetCollection {
    return this.part("worksheets", () => worksheetsOf(this.requests));
  }

  get tables(): Excel.TableCollection {
    return this.part("tables", () => tablesOf(this.requests));
  }

  get settings(): Excel.SettingCollection {
    return this.part("settings", () => settingsOf(this.requests));
  }

  /** The local page has no defined names. */
  get names(): Excel.NamedItemCollection {
    return this.part("names", () =>
      whole<Excel.NamedItemCollection>(new NoNames(this.requests, "the names", () => []), "NamedItemCollection"),
    );
  }

  getSelectedRange(): Excel.Range {
    const { book } = this.requests.host;
    const find = (): Area => {
      const sheet = book.activeSheet();
      return { sheet, cells: book.selection() ?? sheet.cells(0, 0) };
    };
    return rangeOf(this.requests, { find, what: "the selected range" });
  }

  get onSelectionChanged(): OfficeExtension.EventHandlers<Excel.SelectionChangedEventArgs> {
    const { requests } = this;
    return officeEvent<Excel.SelectionChangedEventArgs, Excel.SelectionChangedEventArgs>(requests, (tell) =>
      onSelectionChanged(requests.host.book, () => tell({ workbook: requests.workbook })),
    );
  }
}

class NoNames extends Collection<Excel.NamedItem> {}

export const workbookOf = (requests: Requests): Excel.Workbook =>
  whole<Excel.Workbook>(new WorkbookPart(requests), "Workbook");
