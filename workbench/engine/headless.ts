import { type IWorkbookData, LogLevel } from "@univerjs/core";
import { UniverDataValidationPlugin } from "@univerjs/data-validation";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import type { Book } from "./book";
import { type FunctionSet, registerFunctions } from "./functions/register";
import { openBook } from "./open";
import { startEngine } from "./startEngine";

/** A workbook without a page around it, for the command line and for tests. */
export interface HeadlessBook {
  book: Book;
  close(): void;
}

/** Opens a workbook in Node. Wait for `book.settled()` before reading results. */
export function openHeadless(functions: FunctionSet, data: Partial<IWorkbookData> = {}): HeadlessBook {
  const univer = startEngine(LogLevel.SILENT);
  univer.registerPlugins([
    [UniverDocsPlugin],
    [UniverFormulaEnginePlugin],
    [UniverSheetsPlugin],
    [UniverSheetsNumfmtPlugin],
    [UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.NO_CALCULATION }],
    [UniverDataValidationPlugin],
    [UniverSheetsDataValidationPlugin],
    [UniverSheetsTablePlugin],
  ]);
  const book = openBook(univer, functions, data);
  registerFunctions(univer.__getInjector(), functions);
  book.calculation.recalculateAll();
  return { book, close: () => univer.dispose() };
}
