import type { Injector } from "@univerjs/core";
import { keepFormulasByText } from "./formulaKeys";
import { noteResultsQuickly } from "./quickIndex";
import { keepSpillsQuickly } from "./spillStore";
import { readTablesAfresh } from "./tableReferences";

/** Mends what the engine does slowly or wrongly when it calculates, for every workbook of this thread. */
export function patchEngine(): void {
  noteResultsQuickly();
  keepFormulasByText();
}

/** The same for what belongs to one engine, wherever formulas are calculated. */
export function patchCalculation(injector: Injector): void {
  readTablesAfresh(injector);
  keepSpillsQuickly(injector);
}
