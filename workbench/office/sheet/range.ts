import type { CellRange } from "../../engine";
import { ClientObject, type Readers } from "../base/clientObject";
import { dataValidationOf } from "./dataValidation";
import { invalidArgument, notImplemented } from "../base/officeError";
import { type Area, cellsAt } from "./place";
import { restyleColumns } from "./columnStyle";
import { rangeFormatOf } from "./rangeFormat";
import type { Lookup, Requests } from "../base/requests";
import { fill, writeTyped } from "./typed";
import { whole } from "../base/whole";

type Members =
  | "address"
  | "columnCount"
  | "columnHidden"
  | "columnIndex"
  | "dataValidation"
  | "format"
  | "formulas"
  | "getBoundingRect"
  | "getCell"
  | "getEntireColumn"
  | "getOffsetRange"
  | "getResizedRange"
  | "getRow"
  | "isNullObject"
  | "left"
  | "numberFormat"
  | "rowCount"
  | "rowIndex"
  | "select"
  | "text"
  | "top"
  | "values"
  | "worksheet";

class RangePart extends ClientObject<Area> implements Pick<Excel.Range, Members> {
  protected override readonly readers: Readers = {
    address: () => this.cells.address,
    rowIndex: () => this.cells.place.row,
    columnIndex: () => this.cells.place.column,
    rowCount: () => this.cells.place.rows,
    columnCount: () => this.cells.place.columns,
    values: () => this.cells.values.map((row) => row.map((value) => value ?? "")),
    formulas: () => {
      const { values, formulas } = this.cells;
      return formulas.map((row, at) => row.map((formula, column) => formula || (values[at]?.[column] ?? "")));
    },
    numberFormat: () => this.cells.numberFormats.map((row) => row.map((format) => format || "General")),
    text: () => this.cells.texts.map((row) => row.map(String)),
    left: () => this.before("column", (column) => this.target.sheet.native.getColumnWidth(column)),
    top: () => this.before("row", (row) => this.target.sheet.native.getRowHeight(row)),
  };

  /** What the columns or rows before this range take [pt]. */
  private before(line: "column" | "row", sizeOf: (at: number) => number): number {
    const count = this.cells.place[line];
    return (Array.from({ length: count }, (_, at) => sizeOf(at)).reduce((sum, size) => sum + size, 0) * 72) / 96;
  }

  private get cells(): CellRange {
    return this.target.cells;
  }

  get address(): string {
    return this.loaded("address");
  }
  get rowIndex(): number {
    return this.loaded("rowIndex");
  }
  get columnIndex(): number {
    return this.loaded("columnIndex");
  }
  get rowCount(): number {
    return this.loaded("rowCount");
  }
  get columnCount(): number {
    return this.loaded("columnCount");
  }
  get left(): number {
    return this.loaded("left");
  }
  get top(): number {
    return this.loaded("top");
  }
  get text(): string[][] {
    return this.loaded("text");
  }

  get values(): unknown[][] {
    return this.loaded("values");
  }
  set values(values: unknown[][]) {
    this.change("values", values, ({ cells }) => writeTyped(cells, values));
  }

  get formulas(): unknown[][] {
    return this.loaded("formulas");
  }
  set formulas(formulas: unknown[][]) {
    this.change("formulas", formulas, ({ cells }) => writeTyped(cells, formulas));
  }

  get numberFormat(): unknown[][] {
    return this.loaded("numberFormat");
  }
  set numberFormat(formats: unknown[][]) {
    this.change("numberFormat", formats, ({ cells, sheet, wholeColumns }) => {
      if (wholeColumns) return restyleColumns({ cells, sheet }, { n: { pattern: String(formats) } });
      const { rows, columns } = cells.place;
      cells.setNumberFormats(fill(formats, rows, columns, cells.address).map((line) => line.map(String)));
    });
  }

  get columnHidden(): boolean {
    return this.loaded("columnHidden");
  }
  set columnHidden(hidden: boolean) {
    this.change("columnHidden", hidden, ({ sheet, cells }) => {
      const { column, columns } = cells.place;
      if (hidden) sheet.native.hideColumns(column, columns);
      else sheet.native.showColumns(column, columns);
    });
  }

  get worksheet(): Excel.Worksheet {
    return this.part("worksheet", () =>
      this.requests.worksheet({ find: () => this.target.sheet, what: "the range's worksheet" }),
    );
  }

  get format(): Excel.RangeFormat {
    return this.part("format", () => rangeFormatOf(this.requests, () => this.target));
  }

  get dataValidation(): Excel.DataValidation {
    return this.part("dataValidation", () => dataValidationOf(this.requests, () => this.target));
  }

  select(): void {
    this.requests.later(() => this.cells.select());
  }

  getEntireColumn(): Excel.Range {
    const find = (): Area => {
      const { sheet, cells } = this.target;
      const { column, columns } = cells.place;
      return { sheet, cells: cellsAt(sheet, 0, column, sheet.native.getMaxRows(), columns), wholeColumns: true };
    };
    return rangeOf(this.requests, { find, what: "a column" });
  }

  getCell(row: number, column: number): Excel.Range {
    return this.near(({ row: top, column: left }) => [top + row, left + column, 1, 1]);
  }

  getOffsetRange(down: number, right: number): Excel.Range {
    return this.near(({ row, column, rows, columns }) => [row + down, column + right, rows, columns]);
  }

  getResizedRange(moreRows: number, moreColumns: number): Excel.Range {
    return this.near(({ row, column, rows, columns }) => [row, column, rows + moreRows, columns + moreColumns]);
  }

  getRow(row: number): Excel.Range {
    return this.near(({ row: top, column, columns }) => [top + row, column, 1, columns]);
  }

  /** The least range that holds this one and another of its sheet. */
  getBoundingRect(other: Excel.Range | string): Excel.Range {
    if (typeof other === "string") throw notImplemented("a bounding range of an address");
    return this.near(({ row, column, rows, columns }) => {
      const { place } = areaOf(other).cells;
      const [top, left] = [Math.min(row, place.row), Math.min(column, place.column)];
      const bottom = Math.max(row + rows, place.row + place.rows);
      return [top, left, bottom - top, Math.max(column + columns, place.column + place.columns) - left];
    });
  }

  private near(where: (place: CellRange["place"]) => [number, number, number, number]): Excel.Range {
    const find = (): Area => {
      const { sheet, cells } = this.target;
      return { sheet, cells: cellsAt(sheet, ...where(cells.place)) };
    };
    return rangeOf(this.requests, { find, what: "a range" });
  }
}

export const rangeOf = (requests: Requests, finding: Lookup<Area>): Excel.Range =>
  whole<Excel.Range>(new RangePart(requests, finding), "Range");

/** The area a range stands for that the pane hands back to us; for actions that run in a sync. */
export function areaOf(range: Excel.Range): Area {
  if (!("target" in range)) throw invalidArgument("a range of this workbook was expected.");
  return (range as unknown as RangePart).target;
}
