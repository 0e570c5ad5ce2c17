import type { LeftOutWhy } from "../../workbook";

const count = (number: number, one: string, many = `${one}s`): string => `${number} ${number === 1 ? one : many}`;

/** Everything that opening, saving and adding rows say. */
export const words = {
  menu: {
    open: "Open a workbook (.xlsx) …",
    save: "Save as .xlsx",
    saveValues: "Save as .xlsx, values only",
    saveCsv: "Save a sheet as CSV …",
    saveDrawing: "Save the runs as a drawing or model …",
    addCsv: "Add runs from a CSV file …",
    addDrawing: "Add runs from a drawing …",
    paste: "Add runs from the clipboard …",
  },
  opening: "Opening the workbook …",
  calculating: "Working out the formulas …",
  noCalculator:
    "The part of the page that calculates did not load or broke down: results are no longer up to date. Your cells are saved; load the page again.",
  notLoadedTitle: "That part of the page did not load",
  notLoaded: "Your workbook is as it was. See whether the server still runs (npm start), and try again.",
  close: "Close",
  cancel: "Cancel",

  save: {
    working: (file: string) => `Writing ${file} …`,
    done: (file: string) => `${file} is written.`,
    live: (file: string) =>
      `${file} is written. Without the add-in it shows these results, and #NAME? once they are worked out anew; to send it out, save values only.`,
    failedTitle: (file: string) => `${file} was not written`,
    failed: "Your workbook is as it was.",
    valuesSuffix: "values",
    csvTitle: "Save a sheet as CSV",
    csvText:
      "Values as the sheet has them, every digit of a number. Texts that a program could run as a formula get an apostrophe in front.",
    sheet: "Sheet",
    save: "Save",
  },

  drawing: {
    title: "Save the runs as a drawing or model",
    text: "Every run that can be built, where its Start says, or at the job's zero without one. With the workbook's own shoes and rules.",
    kind: "Kind of file",
    kinds: {
      dxf: "DXF: centerlines, a layer for each run, inches",
      ifc: "IFC4: conduits for a building model, inches",
      glb: "glTF: solid conduits to look at, meters",
      obj: "OBJ: solid conduits, inches",
    },
    none: "No run of the Runs table can be built; see Checks.",
    leftOut: (names: readonly string[]) =>
      `${count(names.length, "run")} not in it, because ${names.length === 1 ? "it" : "they"} cannot be built: ${listed(names, 8)}. Checks says why.`,
  },

  open: {
    working: (file: string) => `Reading ${file} …`,
    title: (file: string) => `Open ${file}?`,
    replaced: (name: string) =>
      `It takes the place of “${name}”. A copy of that is kept first; you find it under Earlier copies.`,
    holds: (file: string, sheets: readonly string[]) =>
      `${file} has ${count(sheets.length, "sheet")}: ${listed(sheets, 12)}.`,
    comesIn:
      "Cells, formulas, formats, tables and lists to choose from come in, and every formula is worked out anew. Pictures, charts, notes, merged cells and defined names stay in the file.",
    leave: "Leave it",
    saveFirst: "Save mine as .xlsx first",
    go: "Keep a copy and open",
    failedTitle: (file: string) => `${file} was not opened`,
    failedHelp:
      "Your workbook is as it was. If another program opens the file, save it there as an .xlsx workbook without a password, and open that.",
    noSheets: "The file has no sheets.",
    noStore:
      "This tab cannot keep a workbook: it is open in another tab, or this browser lets the page store nothing. Open the file in the other tab, or allow storage and load the page again.",
    noRoom: (reason: string) =>
      `The browser could not store it: ${reason} Your workbook is as it was. Free some room, or open a smaller file.`,
  },

  runs: {
    working: "Adding the rows …",
    pasteTitle: "Add runs from the clipboard",
    pasteText:
      "Copy rows with their header row in any spreadsheet, and paste them here. The headers may stand in any order; Run, Raceway, Size and Route must be there.",
    pasteLabel: "Rows with their header row",
    pasteSource: "The pasted block",
    add: "Add to the Runs table",
    failedTitle: (source: string) => `No rows were added from ${source}`,
    failedHelp: "The Runs table is as it was.",
    noTable:
      "This workbook has no Runs table with the columns Run, Raceway, Size and Route. Make one in the Ledger pane under Start, then try again.",
    linked: (table: string) => `The rows of ${table} follow another table by formulas. Add the runs to that table.`,
    addedTitle: (rows: number) => `${count(rows, "row")} added to the Runs table`,
    undo: "Take them out again",
    matched: (columns: readonly { header: string; column: string }[]) =>
      `${count(columns.length, "column")} matched: ${columns.map(fromTo).join(", ")}.`,
    leftOut: (columns: readonly { header: string; why: LeftOutWhy }[]) =>
      `${count(columns.length, "column")} left out: ${columns.map(withWhy).join(", ")}.`,
    ragged: (rows: readonly number[]) =>
      `${count(rows.length, "row")} not added, with more cells than there are headers: ` +
      `${listed(rows.map(String), 8)}, the header row being 1. A comma inside a cell needs quotes around it.`,
    repeated: (names: readonly string[]) =>
      `${count(names.length, "name")} stood in the table already: ${listed(names, 8)}. Those rows were left as they are.`,
    problems: (problems: readonly string[]) =>
      `${count(problems.length, "row")} to look at. ${problems.slice(0, 3).join(" ")}${problems.length > 3 ? " …" : ""}`,
  },
};

const whys: Record<LeftOutWhy, string> = {
  "worked out": "the workbook works it out",
  "no such column": "the Runs table has no such column",
  "no header": "a column without a header",
};

const fromTo = ({ header, column }: { header: string; column: string }): string =>
  header === column ? column : `${column} (from “${header}”)`;

const withWhy = ({ header, why }: { header: string; why: LeftOutWhy }): string =>
  header === "" ? whys[why] : `${header} (${whys[why]})`;

function listed(parts: readonly string[], most: number): string {
  const more = parts.length - most;
  return parts.slice(0, most).join(", ") + (more > 0 ? ` and ${more} more` : "");
}
