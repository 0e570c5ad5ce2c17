import {
  ICommandService,
  type ICommandInfo,
  type IExecutionOptions,
  type Injector,
  type IUnitRange,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import {
  FormulaDataModel,
  FormulaExecutedStateType,
  IActiveDirtyManagerService,
  type ISetFormulaCalculationNotificationMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { currentSpills, lostCells, type Spills } from "./spills";

/** If a change has not started a calculation after this time, it needed none [ms]. The engine starts within 100. */
const startsWithin = 2000;

/** Recalculations in a row that only follow vanished spills; a workbook that needs more chases its own tail. */
const mostFollowUps = 20;

/**
 * Knows whether the engine still calculates, and closes a gap in it: when a spilled table gets smaller, formulas that
 * read the vanished cells are not recalculated by the engine itself.
 */
export class Calculation {
  private running = false;
  private scheduled: ReturnType<typeof setTimeout> | null = null;
  private spills: Spills = new Map();
  private followUps = 0;
  private waiting: (() => void)[] = [];
  private readonly listeners = new Set<() => void>();
  private readonly commands: ICommandService;
  private readonly model: FormulaDataModel;
  private readonly instances: IUniverInstanceService;
  private readonly dirtyCommands: IActiveDirtyManagerService;

  constructor(injector: Injector) {
    this.commands = injector.get(ICommandService);
    this.model = injector.get(FormulaDataModel);
    this.instances = injector.get(IUniverInstanceService);
    this.dirtyCommands = injector.get(IActiveDirtyManagerService);
    this.commands.onCommandExecuted((command, options) => this.follow(command, options));
  }

  /** Resolves when every formula shows its result. */
  settled(): Promise<void> {
    if (!this.busy) return Promise.resolve();
    return new Promise((resolve) => this.waiting.push(resolve));
  }

  get busy(): boolean {
    return this.running || this.scheduled !== null;
  }

  /** Calls back after each calculation, when everything is settled. */
  onFinished(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /**
   * Recalculates every formula. (The engine's own forced calculation runs each of them a second time as soon as one of
   * them spills; a whole sheet said to have changed runs them once.)
   */
  recalculateAll(): void {
    const books = this.instances.getAllUnitsForType<Workbook>(UniverInstanceType.UNIVER_SHEET);
    const sheets = books.flatMap((book) => book.getSheets());
    this.recalculate(
      sheets.map((sheet) => ({
        unitId: sheet.getUnitId(),
        sheetId: sheet.getSheetId(),
        range: { startRow: 0, startColumn: 0, endRow: sheet.getRowCount() - 1, endColumn: sheet.getColumnCount() - 1 },
      })),
    );
  }

  private recalculate(dirtyRanges: IUnitRange[]): void {
    const rest = {
      forceCalculation: false,
      dirtyNameMap: {},
      dirtyDefinedNameMap: {},
      dirtySuperTableMap: {},
      dirtyUnitFeatureMap: {},
      dirtyUnitOtherFormulaMap: {},
      clearDependencyTreeCache: {},
    };
    this.commands.syncExecuteCommand(
      SetTriggerFormulaCalculationStartMutation.id,
      { ...rest, dirtyRanges },
      { onlyLocal: true },
    );
  }

  private follow(command: Readonly<ICommandInfo>, options?: IExecutionOptions): void {
    if (command.id === SetFormulaCalculationStartMutation.id) {
      this.unschedule();
      this.running = true;
    } else if (command.id === SetFormulaCalculationNotificationMutation.id) {
      const { functionsExecutedState: state } = command.params as ISetFormulaCalculationNotificationMutation;
      // A stopped calculation is started again by the engine with the newer changes.
      if (state === undefined || state === FormulaExecutedStateType.STOP_EXECUTION) return;
      setTimeout(() => this.finish(), 0);
    } else if (this.dirtyCommands.get(command.id)) {
      if (command.id === SetRangeValuesMutation.id && options?.onlyLocal) return;
      this.schedule();
    }
  }

  private schedule(): void {
    this.unschedule();
    this.scheduled = setTimeout(() => {
      this.scheduled = null;
      this.releaseIfIdle();
    }, startsWithin);
  }

  private unschedule(): void {
    if (this.scheduled !== null) clearTimeout(this.scheduled);
    this.scheduled = null;
  }

  private finish(): void {
    this.running = false;
    const now = currentSpills(this.model);
    const lost = lostCells(this.spills, now);
    this.spills = now;
    if (lost.length > 0 && this.followUps < mostFollowUps) {
      this.followUps += 1;
      this.recalculate(lost);
    } else {
      this.followUps = 0;
    }
    this.releaseIfIdle();
  }

  private releaseIfIdle(): void {
    if (this.busy) return;
    const waiting = this.waiting;
    this.waiting = [];
    for (const resolve of waiting) resolve();
    for (const listener of this.listeners) listener();
  }
}
