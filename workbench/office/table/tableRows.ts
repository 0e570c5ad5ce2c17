import type { Sheet } from "../../engine";
import { ClientObject, type Readers } from "../base/clientObject";
import { addEmptyRows } from "./newRows";
import { invalidArgument, notImplemented } from "../base/officeError";
import type { Requests } from "../base/requests";
import type { GridTable } from "./tableEdits";
import { writeTyped } from "../sheet/typed";
import { whole } from "../base/whole";

class TableRowsPart extends ClientObject<GridTable> implements Pick<Excel.TableRowCollection, "add" | "count"> {
  protected override readonly readers: Readers = {
    count: () => {
      const { startRow, endRow } = this.info().range;
      return endRow - startRow;
    },
  };

  constructor(
    requests: Requests,
    private readonly info: () => GridTable,
    private readonly sheet: () => Sheet,
  ) {
    super(requests, { find: info, what: "a table's rows" });
  }

  get count(): number {
    return this.loaded("count");
  }

  /** Adds rows under the last one; they take after it in format and allowed values, as in Excel. */
  add(index?: number | null, values?: unknown): Excel.TableRow {
    if (index != null && index !== -1) throw notImplemented("rows added anywhere but under the last one");
    if (values === undefined) {
      this.requests.write(() => void addEmptyRows(this.requests.host.book, this.sheet(), this.info(), 1));
      return whole<Excel.TableRow>({}, "TableRow");
    }
    if (!Array.isArray(values)) throw invalidArgument("rows of values were expected.");
    const rows = Array.from(values as unknown[], (row) => (Array.isArray(row) ? Array.from<unknown>(row) : [row]));
    this.requests.write(() => this.append(rows));
    return whole<Excel.TableRow>({}, "TableRow");
  }

  private append(rows: unknown[][]): void {
    const { book } = this.requests.host;
    const table = this.info();
    const { startColumn, endColumn } = table.range;
    const columns = endColumn - startColumn + 1;
    const wrong = rows.find((row) => row.length !== columns);
    if (wrong) throw invalidArgument(`${table.name} has ${columns} columns; got a row of ${wrong.length}.`);
    writeTyped(addEmptyRows(book, this.sheet(), table, rows.length), rows);
  }
}

export const tableRowsOf = (requests: Requests, info: () => GridTable, sheet: () => Sheet): Excel.TableRowCollection =>
  whole<Excel.TableRowCollection>(new TableRowsPart(requests, info, sheet), "TableRowCollection");
