import { ICommandService, type Injector } from "@univerjs/core";
import {
  type ISetFormulaCalculationStartMutation,
  type ISetSuperTableMutationParam,
  RemoveSuperTableMutation,
  SetFormulaCalculationStartMutation,
  SetSuperTableMutation,
} from "@univerjs/engine-formula";

/**
 * The engine keeps each formula as it was first read, with the cells a table had then. When a table changes it reads
 * the formulas that name it anew, but for one calculation only: the next goes back to the old cells. This makes every
 * later calculation read them anew.
 */
export function readTablesAfresh(injector: Injector): void {
  const commands = injector.get(ICommandService);
  const changed: Record<string, Record<string, string>> = {};
  commands.onCommandExecuted(({ id, params }) => {
    if (id !== SetSuperTableMutation.id && id !== RemoveSuperTableMutation.id) return;
    const { unitId, tableName } = params as ISetSuperTableMutationParam;
    changed[unitId] = { ...changed[unitId], [tableName]: "1" };
  });
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== SetFormulaCalculationStartMutation.id) return;
    const start = params as ISetFormulaCalculationStartMutation;
    start.dirtySuperTableMap = { ...start.dirtySuperTableMap, ...changed };
  });
}
