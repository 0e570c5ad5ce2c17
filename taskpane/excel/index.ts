/**
 * Everything the pane asks of the workbook. The views call these and never Office.js itself. The part of the API in
 * use: Excel.run; workbook.worksheets (items, add, getItem, onChanged), workbook.tables (items, getItem),
 * workbook.settings (items, add), workbook.names (items), workbook.getSelectedRange, workbook.onSelectionChanged; worksheet.name, activate,
 * getRange, getRangeByIndexes, getUsedRangeOrNullObject, tables.add; table.name, worksheet, getRange,
 * getHeaderRowRange, resize, rows.add; range.values, formulas, numberFormat, rowIndex, columnIndex, rowCount, worksheet,
 * select, getEntireColumn, format.font.bold, format.autofitColumns, dataValidation.rule, errorAlert. For looks, where the
 * host has them: format.columnWidth, rowHeight, wrapText, horizontalAlignment, verticalAlignment, fill.color, font.color
 * and font.size, range.columnHidden, dataValidation.prompt, worksheet.tabColor, freezePanes, delete,
 * horizontalPageBreaks, pageLayout, format.borders and shapes.addImage.
 */
export * from "./rows/addRows";
export * from "./sheets/addSheet";
export * from "./batch";
export * from "./rows/block";
export * from "./rows/changeRows";
export * from "./contents";
export * from "./enterAgain";
export * from "./events";
export * from "./names";
export * from "./platform";
export * from "./sheets/printArea";
export * from "./sheets/printSheet";
export * from "./rows/readTables";
export * from "./rows/replaceCells";
export * from "./rows/linkedRows";
export * from "./rows/rowsBelow";
export * from "./selection";
export * from "./settings";
export * from "./sheets/setUp";
export { readBegun } from "./sheets/begun";
export * from "./sheets/sheetPictures";
export * from "./sheets/showColumns";
export * from "./startup";
export * from "./rows/stillThere";
