import { ICommandService, type Injector } from "@univerjs/core";
import { IFunctionService, RemoveSuperTableMutation, SetSuperTableMutation } from "@univerjs/engine-formula";

/**
 * The engine keeps each formula as it was first read, with the cells a table had then. When a table changes it reads
 * the formulas that name it anew, but for one calculation only: the next goes back to the old cells. This forgets every
 * formula read so far; the same text in many rows is read once again. Wanted wherever formulas are calculated.
 */
export function readTablesAfresh(injector: Injector): void {
  injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (id !== SetSuperTableMutation.id && id !== RemoveSuperTableMutation.id) return;
    // The name that each formula is kept under holds the empty text.
    (injector.get(IFunctionService) as { deleteFormulaAstCacheKey(part: string): void }).deleteFormulaAstCacheKey("");
  });
}
