import type { IWorkbookData, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import "@univerjs/sheets/facade";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets-formula/facade";
import "@univerjs/sheets-numfmt/facade";
import "@univerjs/sheets-data-validation/facade";
import "@univerjs/sheets-table/facade";
import { readArrayConstantsAsText } from "./functions/arrayConstant";
import { Book } from "./book";
import { noteResultsQuickly } from "./quickIndex";
import { type FunctionSet, registerFunctions } from "./functions/register";
import { readTablesAfresh } from "./tableReferences";

/**
 * Opens a workbook in an engine whose plugins are registered, with the worksheet functions at hand. Nothing is computed
 * before `book.calculation.recalculateAll()`.
 */
export function openBook(univer: Univer, functions: FunctionSet, data: Partial<IWorkbookData>): Book {
  readArrayConstantsAsText();
  noteResultsQuickly();
  const api = FUniver.newAPI(univer);
  const workbook = api.createWorkbook(data);
  const injector = univer.__getInjector();
  // The engine's services exist only once a workbook does, so the functions come after it.
  registerFunctions(injector, functions);
  readTablesAfresh(injector);
  return new Book(api, injector, workbook);
}
