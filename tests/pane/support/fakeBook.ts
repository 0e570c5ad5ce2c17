/** A workbook in memory for the pane's tests: cells as they were written, no calculation. */
export type Cell = string | number | boolean;

export interface FakeTable {
  name: string;
  sheet: FakeSheet;
  row: number;
  column: number;
  rows: number;
  columns: number;
}

export class FakeSheet {
  readonly cells = new Map<string, Cell>();
  readonly formats = new Map<string, string>();
  /** Formats, widths [pt] and hidden of whole columns. */
  readonly columnFormats = new Map<number, string>();
  readonly columnWidths = new Map<number, number>();
  readonly hiddenColumns = new Set<number>();
  tabColor = "";
  readonly bold = new Set<number>();
  /** First cells of pages. */
  readonly pageBreaks: string[] = [];
  readonly rules: { row: number; column: number; rows: number; rule: unknown }[] = [];

  /** Pictures and shapes that stand over its cells. */
  pictures = 0;
  /** Pictures that were laid over it: a PNG in base 64, and where it stands [pt]. */
  readonly images: { png: string; left?: number; top?: number; width?: number; altTextTitle?: string }[] = [];

  constructor(public name: string) {}

  at = (row: number, column: number): Cell => this.cells.get(`${row},${column}`) ?? "";

  put(row: number, column: number, value: Cell): void {
    if (value === "") this.cells.delete(`${row},${column}`);
    else this.cells.set(`${row},${column}`, value);
  }
}

export class FakeBook {
  readonly sheets: FakeSheet[] = [new FakeSheet("Sheet1")];
  readonly tables: FakeTable[] = [];
  readonly settings = new Map<string, unknown>();
  /** Defined names. */
  readonly names: string[] = [];
  active = this.sheets[0] as FakeSheet;
  selected = { sheet: this.sheets[0] as FakeSheet, row: 0, column: 0, rows: 1, columns: 1 };
  readonly selectionHandlers = new Set<() => unknown>();
  readonly changeHandlers = new Set<() => unknown>();
  /** Round trips so far. */
  syncs = 0;
  /** Whether this Excel knows how to wait for the end of an edit. */
  canWait = true;
  /** What every round trip is refused with, by code; empty where none is. */
  refuses = "";
  private edit: { ended: Promise<void>; end(): void } | undefined;

  /** The person begins to type in a cell: until the end of it Excel refuses every request, or lets it wait. */
  beginEdit(): void {
    let end = (): void => undefined;
    this.edit = { ended: new Promise((resolve) => (end = resolve)), end };
  }

  /** Enter: the cell has its value, and the edit is over. */
  endEdit(sheet: FakeSheet, row: number, column: number, value: Cell): void {
    this.edit?.end();
    this.edit = undefined;
    this.type(sheet, row, column, value);
  }

  /** What Excel does with a request before it looks at it. */
  async receive(waitsForEdit: boolean): Promise<void> {
    if (this.edit && waitsForEdit && this.canWait) await this.edit.ended;
    const code = this.refuses || (this.edit && "InvalidOperationInCellEditMode");
    if (code) throw Object.assign(new Error("refused"), { code });
  }

  sheet(name: string): FakeSheet {
    const found = this.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
    if (!found) throw Object.assign(new Error(`no sheet ${name}`), { code: "ItemNotFound" });
    return found;
  }

  table(name: string): FakeTable {
    const found = this.tables.find((table) => table.name.toLowerCase() === name.toLowerCase());
    if (!found) throw Object.assign(new Error(`no table ${name}`), { code: "ItemNotFound" });
    return found;
  }

  addSheet(name: string, rows: Cell[][] = []): FakeSheet {
    if (this.sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase())) {
      throw Object.assign(new Error(`sheet ${name} is there`), { code: "ItemAlreadyExists" });
    }
    const sheet = new FakeSheet(name);
    rows.forEach((line, row) => line.forEach((cell, column) => sheet.put(row, column, cell)));
    this.sheets.push(sheet);
    return sheet;
  }

  addTable(name: string, sheet: FakeSheet, row: number, column: number, rows: number, columns: number): FakeTable {
    const table = { name, sheet, row, column, rows, columns };
    this.tables.push(table);
    return table;
  }

  select(sheet: FakeSheet, row: number, column: number, rows = 1, columns = 1): void {
    this.selected = { sheet, row, column, rows, columns };
    this.selectionHandlers.forEach((handler) => void handler());
  }

  /** What the person does in the sheet: writes a cell. */
  type(sheet: FakeSheet, row: number, column: number, value: Cell): void {
    sheet.put(row, column, value);
    this.changeHandlers.forEach((handler) => void handler());
  }

  /** All of a table's cells, header row first. */
  cellsOf(name: string): Cell[][] {
    const { sheet, row, column, rows, columns } = this.table(name);
    return Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (__, c) => sheet.at(row + r, column + c)),
    );
  }
}
