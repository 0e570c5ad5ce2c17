import type { IWorkbookData, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import "@univerjs/sheets/facade";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets-formula/facade";
import "@univerjs/sheets-numfmt/facade";
import "@univerjs/sheets-data-validation/facade";
import "@univerjs/sheets-table/facade";
import { formatByColumn } from "./columnFormats";
import { Book } from "./book";
import { registerHints } from "./functions/hints";
import type { DescribedFunctions } from "./functions/metadata";
import { patchCalculation } from "./patches";

/**
 * Opens a workbook in an engine whose plugins are registered, with the hints for the worksheet functions. Nothing is
 * computed before `book.calculation.recalculateAll()`.
 */
export function openBook(univer: Univer, functions: DescribedFunctions, data: Partial<IWorkbookData>): Book {
  const api = FUniver.newAPI(univer);
  const workbook = api.createWorkbook(data);
  const injector = univer.__getInjector();
  // The engine's services exist only once a workbook does, so the hints come after it.
  registerHints(injector, functions);
  patchCalculation(injector);
  formatByColumn(injector);
  return new Book(api, injector, workbook);
}
