import type { Sheet } from "../../engine";
import { ClientObject, type Readers } from "../base/clientObject";
import type { Area } from "../sheet/place";
import { areaOf, rangeOf } from "../sheet/range";
import type { Lookup, Requests } from "../base/requests";
import { invalidArgument, notImplemented } from "../base/officeError";
import { takeInRows } from "./newRows";
import { findTable, renameTable, type GridTable } from "./tableEdits";
import { tableRowsOf } from "./tableRows";
import { whole } from "../base/whole";

type Members =
  | "getDataBodyRange"
  | "getHeaderRowRange"
  | "getRange"
  | "id"
  | "isNullObject"
  | "name"
  | "resize"
  | "rows"
  | "worksheet";

/** How a table is found (its id), and whether this very run made it. */
export interface FindingTable extends Lookup<string> {
  isNew?: boolean;
}

class TablePart extends ClientObject<string> implements Pick<Excel.Table, Members> {
  protected override readonly readers: Readers = {
    id: () => this.target,
    name: () => this.info.name,
  };

  constructor(
    requests: Requests,
    private readonly how: FindingTable,
  ) {
    super(requests, how);
  }

  private get info(): GridTable {
    return findTable(this.requests.host.book, this.target)!;
  }

  private get sheet(): Sheet {
    return this.requests.host.book.sheets().find(({ id }) => id === this.info.subUnitId)!;
  }

  get id(): string {
    return this.loaded("id");
  }

  get name(): string {
    return this.loaded("name");
  }
  set name(name: string) {
    this.change("name", name, (id) => renameTable(this.requests.host.book, id, name, this.how.isNew ?? false));
  }

  get worksheet(): Excel.Worksheet {
    return this.part("worksheet", () =>
      this.requests.worksheet({ find: () => this.sheet, what: "the table's worksheet" }),
    );
  }

  get rows(): Excel.TableRowCollection {
    return this.part("rows", () =>
      tableRowsOf(
        this.requests,
        () => this.info,
        () => this.sheet,
      ),
    );
  }

  /** Grows the table by rows under its last one, as far as any of them holds something. */
  resize(range: Excel.Range | string): void {
    if (typeof range === "string") throw notImplemented("a table resized by an address");
    this.requests.write(() => {
      const { row, column, rows, columns } = areaOf(range).cells.place;
      const { startRow, endRow, startColumn, endColumn } = this.info.range;
      if (row !== startRow) throw invalidArgument("the headers must stay in their row.");
      if (column !== startColumn || columns !== endColumn - startColumn + 1 || row + rows <= endRow) {
        throw notImplemented("a table resized but by rows under its last one");
      }
      takeInRows(this.requests.host.book, this.sheet, this.info, row + rows - 1);
    });
  }

  getRange(): Excel.Range {
    return this.range((rows) => [0, rows]);
  }

  getHeaderRowRange(): Excel.Range {
    return this.range(() => [0, 1]);
  }

  getDataBodyRange(): Excel.Range {
    return this.range((rows) => [1, rows - 1]);
  }

  private range(part: (rows: number) => [first: number, count: number]): Excel.Range {
    const find = (): Area => {
      const { startRow, endRow, startColumn, endColumn } = this.info.range;
      const [first, count] = part(endRow - startRow + 1);
      const sheet = this.sheet;
      return { sheet, cells: sheet.cells(startRow + first, startColumn, count, endColumn - startColumn + 1) };
    };
    return rangeOf(this.requests, { find, what: "a range of a table" });
  }
}

export const tableOf = (requests: Requests, how: FindingTable): Excel.Table =>
  whole<Excel.Table>(new TablePart(requests, how), "Table");
