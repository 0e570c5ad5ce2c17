import {
  type IWorkbookData,
  LifecycleService,
  LifecycleStages,
  LocaleType,
  LogLevel,
  mergeLocales,
  Univer,
} from "@univerjs/core";
import { CalculationMode } from "@univerjs/sheets-formula";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import formattingWords from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsDrawingPreset } from "@univerjs/preset-sheets-drawing";
import drawingWords from "@univerjs/preset-sheets-drawing/locales/en-US";
import tableWords from "@univerjs/preset-sheets-table/locales/en-US";
import { defaultTheme } from "@univerjs/themes";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-drawing/lib/index.css";
import "@univerjs/preset-sheets-table/lib/index.css";
import { type Book, calculateIn, type DescribedFunctions, openBook, type Results, showResults } from "../engine";
import { teachManners } from "./manners";
import { tables } from "./tables";

/** Nothing here talks to a server, and the worker is spoken to already. */
const leftOut = ["UNIVER_NETWORK_PLUGIN", "UNIVER_RPC_MAIN_THREAD_PLUGIN"];

/** An open grid on the page. */
export interface Grid {
  book: Book;
  setDark(dark: boolean): void;
  close(): void;
}

/** Opens a workbook in a grid inside `container`; the worker calculates. */
export async function openGrid(
  container: HTMLElement,
  functions: DescribedFunctions,
  worker: Worker,
  data: IWorkbookData,
  results: Results | null,
  dark: boolean,
): Promise<Grid> {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: {
      [LocaleType.EN_US]: mergeLocales(coreWords, formattingWords, validationWords, drawingWords, tableWords),
    },
    theme: defaultTheme,
    darkMode: dark,
    logLevel: LogLevel.WARN,
  });
  calculateIn(worker, univer.__getInjector());
  const presets = [
    UniverSheetsCorePreset({
      container,
      workerURL: "here already",
      ribbonType: "simple",
      disableTextFormatMark: true,
      disableTextFormatAlert: true,
      // The mark of a number stored as text: to draw it, every text in view is read as a number in every frame.
      sheets: { disableForceStringMark: true, disableForceStringAlert: true },
      formula: { initialFormulaComputing: CalculationMode.NO_CALCULATION },
    }),
    UniverSheetsDrawingPreset(),
    UniverSheetsDataValidationPreset({ showSearchOnDropdown: false, showEditOnDropdown: false }),
    UniverSheetsConditionalFormattingPreset(),
    tables,
  ];
  for (const { plugins } of presets) {
    for (const plugin of plugins as unknown[]) {
      const [type, config] = (Array.isArray(plugin) ? plugin : [plugin]) as Parameters<Univer["registerPlugin"]>;
      if (!leftOut.includes(type.pluginName)) univer.registerPlugin(type, config);
    }
  }
  const book = openBook(univer, functions, data);
  if (results) showResults(book.services, results);
  // The parts that compute are ready only once the grid is drawn.
  const lifecycle = univer.__getInjector().get(LifecycleService);
  if (lifecycle.stage < LifecycleStages.Rendered) await inTime(lifecycle.onStage(LifecycleStages.Rendered));
  teachManners(book, container);
  book.calculation.recalculateAll();
  return { book, setDark: (on) => book.api.toggleDarkMode(on), close: () => univer.dispose() };
}

/** A grid that has not appeared by now never will [ms]. */
const appearsWithin = 60000;

function inTime<T>(promise: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    setTimeout(() => reject(new Error("The grid did not appear.")), appearsWithin);
    promise.then(resolve, reject);
  });
}
