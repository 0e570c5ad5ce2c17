import { CommandType, type Injector, type IRange, type IWorkbookData } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { SetSelectionsOperation, SetWorksheetActiveOperation } from "@univerjs/sheets";
import type { FWorkbook } from "@univerjs/sheets/facade";
import { Calculation } from "./calculation/calculation";
import { CellRange } from "./range";
import { Sheet } from "./sheet";
import { UndoSteps } from "./undoSteps";

/** An open workbook: sheets, cells, selection, undo and calculation. */
export class Book {
  readonly calculation: Calculation;
  private readonly model: FormulaDataModel;
  private readonly undoSteps: UndoSteps;

  constructor(
    readonly api: FUniver,
    /** The grid's own services, for what this one does not offer. */
    readonly services: Injector,
    private readonly target: FWorkbook,
  ) {
    this.calculation = new Calculation(services);
    this.model = services.get(FormulaDataModel);
    this.undoSteps = new UndoSteps(services, target.getId());
  }

  get id(): string {
    return this.target.getId();
  }

  sheets(): Sheet[] {
    return this.target.getSheets().map((sheet) => new Sheet(sheet, this.model));
  }

  /** The sheet of that name, in any case; null when there is none. */
  findSheet(name: string): Sheet | null {
    return this.sheets().find((sheet) => sheet.name.toLowerCase() === name.toLowerCase()) ?? null;
  }

  sheet(name: string): Sheet {
    const found = this.findSheet(name);
    if (!found) throw new Error(`There is no sheet named ${name}.`);
    return found;
  }

  activeSheet(): Sheet {
    return new Sheet(this.target.getActiveSheet(), this.model);
  }

  addSheet(name: string): Sheet {
    if (this.findSheet(name)) throw new Error(`There is a sheet named ${name} already.`);
    return new Sheet(this.target.insertSheet(name), this.model);
  }

  deleteSheet(sheet: Sheet): void {
    this.target.deleteSheet(sheet.native);
  }

  /** Cells by address with its sheet: "Runs!A1:B9", "'Bend counts'!A1"; without a sheet, on the active one. */
  range(address: string): CellRange {
    const split = /^(?:'((?:[^']|'')+)'|([^!]+))!(.+)$/.exec(address);
    if (!split) return this.activeSheet().range(address);
    return this.sheet(split[1]?.replace(/''/g, "'") ?? split[2]!).range(split[3]!);
  }

  /** What is selected, or null before anything is. */
  selection(): CellRange | null {
    const range = this.target.getActiveRange();
    return range ? this.wrap(range.getRange()) : null;
  }

  /** Calls back when another range or sheet is selected, by hand or by code. */
  onSelection(listener: (selection: CellRange | null) => void): () => void {
    const byHand = this.target.onSelectionChange(() => listener(this.selection()));
    const byCode = this.api.onCommandExecuted(({ id }) => {
      if (id === SetSelectionsOperation.id || id === SetWorksheetActiveOperation.id) listener(this.selection());
    });
    return () => {
      byHand.dispose();
      byCode.dispose();
    };
  }

  /** Calls back after every change to the workbook, whoever made it; results of formulas are no change. */
  onChange(listener: () => void): () => void {
    const subscription = this.api.onCommandExecuted(({ type, id }, options) => {
      if (type === CommandType.MUTATION && !id.startsWith("formula.") && !options?.onlyLocal) listener();
    });
    return () => subscription.dispose();
  }

  /** Resolves when every formula shows its result. */
  settled(): Promise<void> {
    return this.calculation.settled();
  }

  /** Runs changes as one step of undo. */
  async batch<T>(work: () => T | Promise<T>): Promise<T> {
    const end = this.beginStep();
    try {
      return await work();
    } finally {
      end();
    }
  }

  /** Begins a step of undo; steps that overlap are one. Gives the way to end it. */
  beginStep(): () => void {
    return this.undoSteps.begin();
  }

  async undo(): Promise<void> {
    await this.target.undo();
  }

  async redo(): Promise<void> {
    await this.target.redo();
  }

  /** Everything in the workbook, to be stored and opened again. */
  snapshot(): IWorkbookData {
    return this.target.save();
  }

  /** The grid's own workbook object, for what this one does not offer. */
  get native(): FWorkbook {
    return this.target;
  }

  private wrap(range: IRange): CellRange {
    const sheet = this.target.getActiveSheet();
    return new CellRange(sheet.getRange(range), sheet.getSheet(), this.model);
  }
}
