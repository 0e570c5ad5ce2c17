import type { Sheet } from "../../engine";
import { ClientObject, type Readers } from "../base/clientObject";
import { areaOf } from "./range";
import type { Requests } from "../base/requests";
import { whole } from "../base/whole";

class FreezePanesPart
  extends ClientObject<Sheet>
  implements Pick<Excel.WorksheetFreezePanes, "freezeAt" | "freezeRows">
{
  protected override readonly readers: Readers = {};

  /** Rows and columns from the first to a range's last stay in view. */
  freezeAt(range: Excel.Range | string): void {
    this.requests.write(() => {
      const { cells } = typeof range === "string" ? { cells: this.target.range(range) } : areaOf(range);
      const { row, column, rows, columns } = cells.place;
      this.freeze(row + rows, column + columns);
    });
  }

  freezeRows(count = 1): void {
    this.requests.write(() => this.freeze(count, 0));
  }

  private freeze(rows: number, columns: number): void {
    this.target.native.setFreeze({ ySplit: rows, xSplit: columns, startRow: rows, startColumn: columns });
  }
}

export const freezePanesOf = (requests: Requests, find: () => Sheet): Excel.WorksheetFreezePanes =>
  whole<Excel.WorksheetFreezePanes>(new FreezePanesPart(requests, { find, what: "frozen panes" }), "FreezePanes");
