/** What the File menu does, in a part of its own that comes when it is wanted first: the page starts without it. */
export { addRunsFromCsv, pasteRuns } from "./addRuns";
export { saveDrawing } from "./saveDrawing";
export { openWorkbook } from "./openFile";
export { saveSheetAsCsv, saveValues, saveWorkbook } from "./saveFiles";
