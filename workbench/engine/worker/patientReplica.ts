import type {
  ICommandService,
  IExecutionOptions,
  ILogService,
  IMutationInfo,
  IUniverInstanceService,
} from "@univerjs/core";
import {
  FormulaExecuteStageType,
  type ISetFormulaCalculationNotificationMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
} from "@univerjs/engine-formula";
import { WebWorkerRemoteInstanceService } from "@univerjs/rpc";

type Change = [mutation: IMutationInfo, options: IExecutionOptions | undefined];

/**
 * The worker's copy of the workbook. Changes that arrive in the middle of a calculation wait for its end: it would read
 * some cells before and some after them, and write its results where the cells no longer are.
 */
export class PatientReplica extends WebWorkerRemoteInstanceService {
  private calculating = false;
  private lastStage = false;
  private waiting: Change[] = [];

  constructor(
    books: IUniverInstanceService,
    commands: ICommandService,
    log: ILogService,
    private readonly hear: (mutation: IMutationInfo) => void,
  ) {
    super(books, commands, log);
    commands.onCommandExecuted(({ id, params }) => {
      if (id === SetFormulaCalculationStartMutation.id) this.calculating = true;
      if (id !== SetFormulaCalculationNotificationMutation.id) return;
      const { stageInfo } = params as ISetFormulaCalculationNotificationMutation;
      if (stageInfo) this.lastStage = stageInfo.stage === FormulaExecuteStageType.CALCULATION_COMPLETED;
      // Not at once: the engine has yet to put its things away.
      else if (this.lastStage) setTimeout(() => this.catchUp(), 0);
    });
  }

  override async syncMutation({ mutationInfo }: { mutationInfo: IMutationInfo }, options?: IExecutionOptions) {
    if (!this.calculating || mutationInfo.id === SetFormulaCalculationStopMutation.id) {
      return this._applyMutation(mutationInfo, options);
    }
    this.waiting.push([mutationInfo, options]);
    return true;
  }

  protected override _applyMutation(mutation: IMutationInfo, options?: IExecutionOptions): boolean {
    this.hear(mutation);
    return super._applyMutation(mutation, options);
  }

  private catchUp(): void {
    this.calculating = false;
    // A calculation may be among them, and those after it wait again.
    while (!this.calculating && this.waiting.length > 0) this._applyMutation(...this.waiting.shift()!);
  }
}
