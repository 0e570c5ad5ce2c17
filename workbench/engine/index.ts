/** The spreadsheet engine behind a small door: everything the page, the command line and the tests need of it. */
export { Book } from "./book";
export { currentSpills } from "./calculation/spills";
export { Calculation } from "./calculation/calculation";
export { cellError, type CellErrorInfo, type CellValue, cellValue } from "./cellValue";
export {
  CellError,
  createRuntime,
  ErrorCode,
  type Implementation,
  type Implementations,
  loadBundle,
} from "./functions/customFunctions";
export type { DescribedFunctions, FunctionMetadata, FunctionsMetadata, ParameterMetadata } from "./functions/metadata";
export { openBook } from "./open";
export { CellRange } from "./range";
export type { FunctionSet } from "./functions/register";
export { type Results, showResults } from "./results";
export { Sheet } from "./sheet";
export { calculateIn } from "./worker/pageSide";
