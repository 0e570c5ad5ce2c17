/** Looks and page settings that the pane gives to sheets, each to be tried by itself. */
export const LOOKS: readonly [what: string, apply: (sheet: Excel.Worksheet) => void][] = [
  ["width of a column", (sheet) => void (sheet.getRange("A1").format.columnWidth = 90)],
  ["height of a row", (sheet) => void (sheet.getRange("A1").format.rowHeight = 30)],
  ["a hidden column", (sheet) => void (sheet.getRangeByIndexes(0, 2, 1, 1).getEntireColumn().columnHidden = true)],
  ["color of a tab", (sheet) => void (sheet.tabColor = "#336699")],
  ["frozen headings", (sheet) => sheet.freezePanes.freezeRows(1)],
  [
    "a list to choose from",
    (sheet) =>
      void (sheet.getRange("A2").dataValidation.rule = { list: { inCellDropDown: true, source: "EMT,IMC,RMC" } }),
  ],
  [
    "a hint at a cell",
    (sheet) =>
      void (sheet.getRange("A1").dataValidation.prompt = { showPrompt: true, title: "Run", message: "its name" }),
  ],
  ["headings on every page", (sheet) => sheet.pageLayout.setPrintTitleRows("$1:$1")],
  ["scale of a page", (sheet) => void (sheet.pageLayout.zoom = { scale: 90 })],
  ["a page break", (sheet) => void sheet.horizontalPageBreaks.add("A10")],
  ["looks of several areas at once", (sheet) => void (sheet.getRanges("A1:A3,C1:C3").format.font.bold = true)],
  ["a picture", (sheet) => void sheet.shapes.addImage(PIXEL)],
];

/** A PNG file of one black pixel. */
const PIXEL = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==";
