/** The spreadsheet engine behind a small door: everything the page, the command line and the tests need of it. */
export { Book } from "./book";
export { Calculation } from "./calculation";
export { cellError, type CellErrorInfo, type CellValue, cellValue } from "./cellValue";
export {
  CellError,
  createRuntime,
  ErrorCode,
  type Implementation,
  type Implementations,
  loadBundle,
} from "./functions/customFunctions";
export type { FunctionMetadata, FunctionsMetadata, ParameterMetadata } from "./functions/metadata";
export { openBook } from "./open";
export { CellRange } from "./range";
export { type FunctionSet, registerFunctions } from "./functions/register";
export { Sheet } from "./sheet";
export { currentSpills } from "./spills";
