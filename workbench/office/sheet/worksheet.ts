import type { CellRange, Sheet } from "../../engine";
import { ClientObject, type Readers } from "../base/clientObject";
import { type Area, cellsAt, cellsByAddress, usedCells } from "./place";
import { rangeOf } from "./range";
import { rangeAreasOf } from "./rangeAreas";
import type { Lookup, Requests } from "../base/requests";
import { freezePanesOf } from "./freezePanes";
import { invalidArgument } from "../base/officeError";
import { checkSheetName } from "./sheets";
import { tablesOf } from "../table/tables";
import { whole } from "../base/whole";

type Members =
  | "activate"
  | "delete"
  | "freezePanes"
  | "getCell"
  | "getRange"
  | "getRangeByIndexes"
  | "getRanges"
  | "getUsedRange"
  | "getUsedRangeOrNullObject"
  | "id"
  | "isNullObject"
  | "name"
  | "tabColor"
  | "tables";

class WorksheetPart extends ClientObject<Sheet> implements Pick<Excel.Worksheet, Members> {
  protected override readonly readers: Readers = {
    name: () => this.target.name,
    id: () => this.target.id,
  };

  get id(): string {
    return this.loaded("id");
  }

  get name(): string {
    return this.loaded("name");
  }
  set name(name: string) {
    this.change("name", name, (sheet) => {
      const { book } = this.requests.host;
      if (sheet.name.toLowerCase() !== name.toLowerCase()) checkSheetName(book, name);
      sheet.rename(name);
    });
  }

  get tabColor(): string {
    return this.loaded("tabColor");
  }
  set tabColor(color: string) {
    this.change("tabColor", color, (sheet) => void sheet.native.setTabColor(color));
  }

  get freezePanes(): Excel.WorksheetFreezePanes {
    return this.part("freezePanes", () => freezePanesOf(this.requests, () => this.target));
  }

  /** Takes the sheet away; the last one stays, as in Excel. */
  delete(): void {
    this.requests.write(() => {
      const { book } = this.requests.host;
      if (book.sheets().length === 1) throw invalidArgument("a workbook keeps one worksheet at least.");
      book.native.deleteSheet(this.target.native);
    });
  }

  get tables(): Excel.TableCollection {
    return this.part("tables", () => tablesOf(this.requests, () => this.target));
  }

  activate(): void {
    this.requests.later(() => this.target.activate());
  }

  getRange(address?: string): Excel.Range {
    return this.range((sheet) =>
      address === undefined
        ? cellsAt(sheet, 0, 0, sheet.native.getMaxRows(), sheet.native.getMaxColumns())
        : cellsByAddress(sheet, address),
    );
  }

  getCell(row: number, column: number): Excel.Range {
    return this.getRangeByIndexes(row, column, 1, 1);
  }

  getRangeByIndexes(row: number, column: number, rows: number, columns: number): Excel.Range {
    return this.range((sheet) => cellsAt(sheet, row, column, rows, columns));
  }

  /** By addresses with commas between. */
  getRanges(addresses = ""): Excel.RangeAreas {
    return rangeAreasOf(this.requests, () =>
      addresses.split(",").map((address) => ({ sheet: this.target, cells: cellsByAddress(this.target, address) })),
    );
  }

  /** Of an empty sheet its first cell, as in Excel. */
  getUsedRange(): Excel.Range {
    return this.range((sheet) => usedCells(sheet) ?? sheet.cells(0, 0));
  }

  getUsedRangeOrNullObject(): Excel.Range {
    return this.range(usedCells, true);
  }

  private range(cells: (sheet: Sheet) => CellRange | null, orNull = false): Excel.Range {
    const find = (): Area | null => {
      const sheet = this.target;
      const found = cells(sheet);
      return found && { sheet, cells: found };
    };
    return rangeOf(this.requests, { find, what: "a range", orNull });
  }
}

export const worksheetOf = (requests: Requests, finding: Lookup<Sheet>): Excel.Worksheet =>
  whole<Excel.Worksheet>(new WorksheetPart(requests, finding), "Worksheet");
