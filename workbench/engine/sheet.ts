import { type ICellData, type Nullable, ObjectMatrix } from "@univerjs/core";
import type { FormulaDataModel } from "@univerjs/engine-formula";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { CellRange } from "./range";
import { spilledCells } from "./calculation/spills";

/** One sheet of the workbook. */
export class Sheet {
  constructor(
    private readonly target: FWorksheet,
    private readonly model: FormulaDataModel,
  ) {}

  get id(): string {
    return this.target.getSheetId();
  }

  get name(): string {
    return this.target.getSheetName();
  }

  rename(name: string): void {
    this.target.setName(name);
  }

  /** Shows the sheet. */
  activate(): void {
    this.target.activate();
  }

  /** Cells by address: "A1", "A1:C9", "A:C". */
  range(address: string): CellRange {
    return new CellRange(this.target.getRange(address), this.target.getSheet(), this.model);
  }

  /** Cells by place, rows and columns counted from 0. */
  cells(row: number, column: number, rows = 1, columns = 1): CellRange {
    return new CellRange(this.target.getRange(row, column, rows, columns), this.target.getSheet(), this.model);
  }

  /** From A1 to the last cell that holds anything, spilled values too; null for an empty sheet. */
  used(): CellRange | null {
    let rows = 0;
    let columns = 0;
    const grow = (row: number, column: number, cell: Nullable<ICellData>) => {
      if (!cell || (cell.v == null && cell.f == null) || cell.v === "") return;
      rows = Math.max(rows, row + 1);
      columns = Math.max(columns, column + 1);
    };
    this.target.getSheet().getCellMatrix().forValue(grow);
    new ObjectMatrix(spilledCells(this.model, this.target.getSheet())).forValue(grow);
    return rows === 0 ? null : this.cells(0, 0, rows, columns);
  }

  /** The grid's own sheet object, for what this one does not offer. */
  get native(): FWorksheet {
    return this.target;
  }
}
