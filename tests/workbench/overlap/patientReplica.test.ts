import type { ICommandInfo, ICommandService, ILogService, IUniverInstanceService } from "@univerjs/core";
import {
  FormulaExecuteStageType,
  FormulaExecutedStateType,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
} from "@univerjs/engine-formula";
import { PatientReplica } from "../../../workbench/engine/worker/patientReplica";

const start = SetFormulaCalculationStartMutation.id;
const stop = SetFormulaCalculationStopMutation.id;

/** A replica over commands that only note what is executed. */
function replica() {
  const applied: string[] = [];
  let listener: (command: ICommandInfo) => void = () => undefined;
  const commands = {
    onCommandExecuted: (given: typeof listener) => (listener = given),
    syncExecuteCommand: (id: string, params?: object) => {
      applied.push(id);
      listener({ id, params });
      return true;
    },
  } as unknown as ICommandService;
  const made = new PatientReplica({} as IUniverInstanceService, commands, {} as ILogService, () => undefined);
  const send = (id: string) => void made.syncMutation({ mutationInfo: { id, params: {} } });
  const notify = (params: object) => listener({ id: SetFormulaCalculationNotificationMutation.id, params });
  const end = async () => {
    notify({ stageInfo: { stage: FormulaExecuteStageType.CALCULATION_COMPLETED } });
    notify({ functionsExecutedState: FormulaExecutedStateType.SUCCESS });
    await new Promise((resolve) => setTimeout(resolve, 5));
  };
  return { applied, send, notify, end };
}

test("a change in the middle of a calculation waits for its end; a stop does not", async () => {
  const { applied, send, notify, end } = replica();
  send("edit 1");
  send(start);
  send("edit 2");
  send(stop);
  // A stopped calculation says so before its last stage, and once more at its end.
  notify({ functionsExecutedState: FormulaExecutedStateType.STOP_EXECUTION });
  await new Promise((resolve) => setTimeout(resolve, 5));
  send("edit 3");
  expect(applied).toEqual(["edit 1", start, stop]);
  await end();
  expect(applied).toEqual(["edit 1", start, stop, "edit 2", "edit 3"]);
});

test("changes after a calculation that waited wait for that one too", async () => {
  const { applied, send, end } = replica();
  for (const id of [start, "edit 1", start, "edit 2"]) send(id);
  await end();
  expect(applied).toEqual([start, "edit 1", start]);
  await end();
  expect(applied).toEqual([start, "edit 1", start, "edit 2"]);
});
