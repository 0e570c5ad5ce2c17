import { type IWorkbookData, LocaleType, LogLevel, Univer } from "@univerjs/core";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import { calculateIn, type FunctionSet, openBook } from "../../../workbench/engine";
import type { HeadlessBook } from "../../../workbench/engine/headless";
import { calculateForPage } from "../../../workbench/engine/worker/workerSide";

/** A workbook whose formulas another engine computes, spoken with by messages as the page speaks with its worker. */
export function openWithWorker(functions: FunctionSet, data: Partial<IWorkbookData>): HeadlessBook {
  const channels = notedChannels();
  const { port1, port2 } = new MessageChannel();
  const worker = calculateForPage(functions, port2);
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  calculateIn(port1, univer.__getInjector());
  univer.registerPlugins([
    [UniverDocsPlugin],
    [UniverFormulaEnginePlugin, { notExecuteFormula: true }],
    [UniverSheetsPlugin, { notExecuteFormula: true }],
    [UniverSheetsFormulaPlugin, { notExecuteFormula: true, initialFormulaComputing: CalculationMode.NO_CALCULATION }],
    [UniverSheetsTablePlugin],
  ]);
  const book = openBook(univer, functions, data);
  book.calculation.recalculateAll();
  const close = () => {
    univer.dispose();
    worker.dispose();
    for (const channel of channels) channel.port1.close();
  };
  return { book, close };
}

/** Every channel made from now on. A stopped engine leaves some open; in a page they are garbage, in Node it cannot end. */
function notedChannels(): MessageChannel[] {
  const noted: MessageChannel[] = [];
  const Original = globalThis.MessageChannel;
  globalThis.MessageChannel = class extends Original {
    constructor() {
      super();
      noted.push(this);
    }
  };
  return noted;
}
