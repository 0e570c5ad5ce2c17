import { ICommandService, type ICommandInfo, type IExecutionOptions, type Injector } from "@univerjs/core";
import {
  FormulaDataModel,
  FormulaExecuteStageType,
  FormulaExecutedStateType,
  IActiveDirtyManagerService,
  type ISetFormulaCalculationNotificationMutation,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
} from "@univerjs/engine-formula";
import { DataSyncPrimaryController } from "@univerjs/rpc";
import {
  ClearSelectionFormatCommand,
  type ISetRangeValuesMutationParams,
  SetBorderCommand,
  SetRangeValuesMutation,
  SetStyleCommand,
} from "@univerjs/sheets";
import { allCells, changeOf, type Dirty, type DirtyReader, nothingDirty, takeOverTrigger } from "./dirty";
import { HiddenRows } from "./hiddenRows";
import type { StartParams } from "../worker/resultSender";
import { currentSpills, lostCells, type Spills } from "./spills";

/** Changes this close together are worked out together [ms]. */
const together = 20;

/** Recalculations in a row that only follow vanished spills; a workbook that needs more chases its own tail. */
const mostFollowUps = 20;

/** Changes of looks only: no formula follows them. */
const looks = [SetStyleCommand.id, SetBorderCommand.id, ClearSelectionFormatCommand.id];

/**
 * Starts calculations and knows when all is done. One runs at a time; a newer change stops it, and the next one works
 * out what both made dirty. It also closes a gap in the engine: when a spilled table gets smaller, formulas that read
 * the vanished cells are not recalculated by the engine itself.
 */
export class Calculation {
  /** Changes that no calculation has taken up yet. */
  private changes: ICommandInfo[] = [];
  /** What the running calculation has to work out, or an abandoned one left to the next. */
  private unfinished: Dirty = nothingDirty;
  private timer: ReturnType<typeof setTimeout> | null = null;
  private running = false;
  /** The engine tells of a stopped calculation twice; only what follows its last stage is the end. */
  private lastStage = false;
  /** Spilled cells that a worker sent were not taken: it has to send all of them again. */
  private dropped = false;
  private spills: Spills = new Map();
  private followUps = 0;
  private waiting: (() => void)[] = [];
  private readonly startListeners = new Set<() => void>();
  private readonly listeners = new Set<() => void>();
  private readonly commands: ICommandService;
  private readonly model: FormulaDataModel;
  private readonly dirtyCommands: IActiveDirtyManagerService;
  private readonly reader: DirtyReader;
  private readonly hiddenRows: HiddenRows;
  private readonly inWorker: boolean;

  constructor(private readonly injector: Injector) {
    this.commands = injector.get(ICommandService);
    this.model = injector.get(FormulaDataModel);
    this.dirtyCommands = injector.get(IActiveDirtyManagerService);
    this.reader = takeOverTrigger(injector);
    this.hiddenRows = new HiddenRows(injector);
    this.inWorker = injector.has(DataSyncPrimaryController);
    this.commands.onCommandExecuted((command, options) => this.follow(command, options));
    this.commands.beforeCommandExecuted((command, options) => this.dropSuperseded(command, options));
    injector.onDispose(() => this.timer !== null && clearTimeout(this.timer));
  }

  /** Resolves when every formula shows its result. */
  settled(): Promise<void> {
    if (!this.busy) return Promise.resolve();
    return new Promise((resolve) => this.waiting.push(resolve));
  }

  get busy(): boolean {
    return this.running || this.changes.length > 0;
  }

  /** Calls back after each calculation, when everything is settled. */
  onFinished(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Calls back when results are out of date, until they are settled again. */
  onStarted(listener: () => void): () => void {
    this.startListeners.add(listener);
    return () => this.startListeners.delete(listener);
  }

  /**
   * Recalculates every formula. (The engine's own forced calculation runs each of them a second time as soon as one of
   * them spills; a whole sheet said to have changed runs them once.)
   */
  recalculateAll(): void {
    this.note(changeOf(allCells(this.injector)));
  }

  private follow(command: Readonly<ICommandInfo>, options?: IExecutionOptions): void {
    if (command.id === SetFormulaCalculationNotificationMutation.id) {
      const { stageInfo, functionsExecutedState } = command.params as ISetFormulaCalculationNotificationMutation;
      if (stageInfo) this.lastStage = stageInfo.stage === FormulaExecuteStageType.CALCULATION_COMPLETED;
      else if (this.running && this.lastStage) this.finish(functionsExecutedState);
    } else if (this.dirtyCommands.get(command.id) && !onlyLooks(command, options)) {
      this.note(command);
    }
  }

  private note(change: ICommandInfo): void {
    // On this thread there is little to win, and a stopped engine leaves things behind that keep Node from ending.
    if (this.running && this.changes.length === 0 && this.inWorker) {
      this.commands.syncExecuteCommand(SetFormulaCalculationStopMutation.id, {}, { onlyLocal: true });
    }
    const wasSettled = !this.busy;
    this.changes.push(change);
    if (wasSettled) for (const listener of this.startListeners) listener();
    this.timer ??= setTimeout(() => this.begin(), together);
  }

  /** Takes up the changes; while an older calculation is still on its way out, its end calls here again. */
  private begin(): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    if (this.running) return;
    this.unfinished = this.reader._mergeDirty(this.unfinished, this.reader._generateDirty(this.changes));
    this.changes = [];
    this.running = true;
    this.lastStage = false;
    this.commands.syncExecuteCommand(
      SetFormulaCalculationStartMutation.id,
      { ...this.unfinished, rowData: this.hiddenRows.read(), sendAll: this.dropped } satisfies StartParams,
      { onlyLocal: true },
    );
    this.dropped = false;
  }

  private finish(state: FormulaExecutedStateType | undefined): void {
    // Not at once: the engine has yet to put its things away.
    setTimeout(() => {
      this.running = false;
      if (this.changes.length > 0) return this.timer === null ? this.begin() : undefined;
      if (state !== FormulaExecutedStateType.STOP_EXECUTION) this.unfinished = nothingDirty;
      this.followLostCells();
      if (!this.busy) this.release();
    }, 0);
  }

  private followLostCells(): void {
    const now = currentSpills(this.model);
    const lost = lostCells(this.spills, now);
    this.spills = now;
    if (lost.length > 0 && this.followUps < mostFollowUps) {
      this.followUps += 1;
      this.note(changeOf(lost));
      this.begin();
    } else {
      this.followUps = 0;
    }
  }

  private release(): void {
    const waiting = this.waiting;
    this.waiting = [];
    for (const resolve of waiting) resolve();
    for (const listener of this.listeners) listener();
  }

  /** Results of a calculation that a newer change has overtaken: they would write over what was just typed. */
  private dropSuperseded(command: Readonly<ICommandInfo>, options?: IExecutionOptions): void {
    if (!this.running || this.changes.length === 0) return;
    if (command.id === SetRangeValuesMutation.id && options?.applyFormulaCalculationResult) {
      (command.params as ISetRangeValuesMutationParams).cellValue = {};
    } else if (command.id === SetArrayFormulaDataMutation.id && options?.fromSync) {
      this.dropped = true;
      Object.assign(command.params!, {
        arrayFormulaRange: this.model.getArrayFormulaRange(),
        arrayFormulaCellData: this.model.getArrayFormulaCellData(),
      });
    }
  }
}

function onlyLooks({ id, params }: Readonly<ICommandInfo>, options?: IExecutionOptions): boolean {
  if (id !== SetRangeValuesMutation.id) return false;
  return options?.onlyLocal === true || looks.includes((params as ISetRangeValuesMutationParams).trigger ?? "");
}
