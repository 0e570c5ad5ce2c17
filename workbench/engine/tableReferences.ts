import { ICommandService, type Injector } from "@univerjs/core";
import {
  IFunctionService,
  type ISetSuperTableMutationParam,
  RemoveSuperTableMutation,
  SetSuperTableMutation,
} from "@univerjs/engine-formula";

/**
 * The engine keeps each formula as it was first read, with the cells a table had then: a later calculation would go
 * back to them. This lets it read formulas that name a table again whenever the table has changed.
 */
export function readTablesAfresh(injector: Injector): void {
  const functions = injector.get(IFunctionService);
  injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
    if (id !== SetSuperTableMutation.id && id !== RemoveSuperTableMutation.id) return;
    const { tableName: name } = params as ISetSuperTableMutationParam;
    functions.deleteFormulaAstCacheKey(name);
  });
}
