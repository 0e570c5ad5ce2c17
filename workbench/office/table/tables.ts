import type { Sheet } from "../../engine";
import { Collection } from "../base/collection";
import { invalidArgument, notImplemented } from "../base/officeError";
import { areaOf } from "../sheet/range";
import type { Requests } from "../base/requests";
import { tableOf } from "./table";
import { addTable, findTable, listTables } from "./tableEdits";
import { whole } from "../base/whole";

type Members = "add" | "getItem" | "getItemOrNullObject" | "items";

/** The tables of the workbook, or those of one sheet. */
class TablesPart extends Collection<Excel.Table> implements Pick<Excel.TableCollection, Members> {
  constructor(
    requests: Requests,
    private readonly sheet: (() => Sheet) | undefined,
  ) {
    super(requests, "the tables", () =>
      listTables(requests.host.book)
        .filter(({ subUnitId }) => !sheet || subUnitId === sheet().id)
        .map(({ id, name }) => tableOf(requests, { find: () => id, what: name })),
    );
  }

  add(range: Excel.Range | string, hasHeaders: boolean): Excel.Table {
    if (!hasHeaders) throw notImplemented("tables without a header row");
    const { book } = this.requests.host;
    let made: string | null = null;
    this.requests.write(() => {
      const cells =
        typeof range === "string" ? (this.sheet?.().range(range) ?? book.range(range)) : areaOf(range).cells;
      if (this.sheet && cells.sheetName !== this.sheet().name)
        throw invalidArgument("the range lies on another worksheet.");
      made = addTable(book, cells);
    });
    return tableOf(this.requests, { find: () => made, what: "the new table", isNew: true });
  }

  /** By name or by id. */
  getItem(key: string): Excel.Table {
    return tableOf(this.requests, { find: () => this.find(key), what: `a table named ${key}` });
  }

  getItemOrNullObject(key: string): Excel.Table {
    return tableOf(this.requests, { find: () => this.find(key), what: `a table named ${key}`, orNull: true });
  }

  private find(key: string): string | null {
    const found = findTable(this.requests.host.book, key);
    return found && (!this.sheet || found.subUnitId === this.sheet().id) ? found.id : null;
  }
}

export const tablesOf = (requests: Requests, sheet?: () => Sheet): Excel.TableCollection =>
  whole<Excel.TableCollection>(new TablesPart(requests, sheet), "TableCollection");
