import { CellValueType, type ICellData, type IRange, type Nullable, type Worksheet } from "@univerjs/core";
import type { FRange } from "@univerjs/sheets/facade";
import type { FormulaDataModel } from "@univerjs/engine-formula";
import { spilledCells } from "./calculation/spills";
import { cellError, type CellErrorInfo, cellValue, type CellValue } from "./cellValue";

/** A rectangle of cells: exact values, formulas and formats in and out, as rows of columns. */
export class CellRange {
  constructor(
    private readonly target: FRange,
    private readonly worksheet: Worksheet,
    private readonly model: FormulaDataModel,
  ) {}

  /** "Sheet!A1:B9", the sheet's name quoted where it must be. */
  get address(): string {
    return this.target.getA1Notation(true);
  }

  get sheetName(): string {
    return this.worksheet.getName();
  }

  /** First row and column counted from 0, and the size. */
  get place(): { row: number; column: number; rows: number; columns: number } {
    const { row, column } = { row: this.target.getRow(), column: this.target.getColumn() };
    return { row, column, rows: this.target.getHeight(), columns: this.target.getWidth() };
  }

  /** Exact values; an error cell holds its code, a blank cell null. */
  get values(): CellValue[][] {
    return this.map((cell) => cellValue(cell));
  }

  /** The error of each cell, or null. */
  get errors(): (CellErrorInfo | null)[][] {
    return this.map((cell) => cellError(cell));
  }

  /** The formula of each cell with its "=", or "" where there is none. */
  get formulas(): string[][] {
    return this.target.getFormulas();
  }

  /** What each cell shows. */
  get texts(): string[][] {
    return this.target.getDisplayValues();
  }

  get numberFormats(): string[][] {
    const { column } = this.place;
    // A cell that is not written yet has its column's format.
    return this.target
      .getNumberFormats()
      .map((row) => row.map((own, at) => own || (this.worksheet.getColumnStyle(column + at)?.n?.pattern ?? "")));
  }

  /**
   * Writes values. A text that starts with "=" becomes a formula, any other text stays the text it is ("1/2" does not
   * become a date), null and "" empty the cell.
   */
  setValues(values: readonly (readonly CellValue[])[]): void {
    this.checkShape(values);
    this.target.setValues(values.map((row) => row.map(toCell)));
  }

  setFormula(formula: string): void {
    this.setValues([[formula]]);
  }

  setNumberFormat(format: string): void {
    this.target.setNumberFormat(format);
  }

  setNumberFormats(formats: readonly (readonly string[])[]): void {
    this.checkShape(formats);
    this.target.setNumberFormats(formats.map((row) => [...row]));
  }

  clear(): void {
    this.target.clearContent();
  }

  /** Selects the range and shows its sheet. */
  select(): void {
    this.target.activate();
  }

  /** The grid's own range object, for what this one does not offer. */
  get native(): FRange {
    return this.target;
  }

  private map<T>(read: (cell: Nullable<ICellData>) => T): T[][] {
    const { startRow, startColumn, endRow, endColumn }: IRange = this.target.getRange();
    const spilled = spilledCells(this.model, this.worksheet);
    return Array.from({ length: endRow - startRow + 1 }, (_, row) =>
      Array.from({ length: endColumn - startColumn + 1 }, (_, column) => {
        const own = this.worksheet.getCellRaw(startRow + row, startColumn + column);
        const hasOwn = own != null && (own.f != null || own.si != null || (own.v != null && own.v !== ""));
        return read(hasOwn ? own : (spilled[startRow + row]?.[startColumn + column] ?? own));
      }),
    );
  }

  private checkShape(rows: readonly (readonly unknown[])[]): void {
    const { rows: height, columns: width } = this.place;
    if (rows.length === height && rows.every((row) => row.length === width)) return;
    throw new Error(`${this.address} is ${height} × ${width} cells; got ${rows.length} × ${rows[0]?.length ?? 0}.`);
  }
}

function toCell(value: CellValue): ICellData {
  // Explicit nulls: the grid keeps what a new cell does not mention.
  const blank = { v: null, f: null, si: null, p: null, t: null, custom: null };
  if (value === null || value === "") return blank;
  if (typeof value === "boolean") return { ...blank, v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value === "number") return { ...blank, v: value, t: CellValueType.NUMBER };
  if (value.startsWith("=") && value.length > 1) return { ...blank, f: value };
  return { ...blank, v: value, t: CellValueType.STRING };
}
