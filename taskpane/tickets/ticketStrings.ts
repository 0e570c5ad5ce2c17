import { CUT_SHEET_LABELS, TICKET_LABELS, TICKET_SHEET_LABELS } from "../../src/shop/ticket/ticketLabels";

/** The words of the tickets' view and of what it prints, ready for translation. */
const many = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;

export const ticketStrings = {
  empty: "No runs yet. Build one under A run; its tickets show here.",
  noTickets: "None of these runs can be made yet. What is wrong is said above.",
  which: "Tickets for",
  wholeJob: "The whole job",
  all: "All",
  by: { area: "Area", date: "Date", crew: "Crew", conduit: "Conduit" },
  bentOnly: "Bent pieces only",
  notMadeYet: "Not yet made",
  changedSince: (issue: string) => `Changed since ${issue}`,
  straight: (count: number) =>
    `${many(count, "straight piece has", "straight pieces have")} no ticket: the cutting sheet has ${count === 1 ? "it" : "them"}.`,
  noneWanted: "No piece is wanted by these choices.",
  labels: "Stickers, one for each piece to make",
  tooManyLabels: (count: number, most: number, where: "print" | "sheet") =>
    `These are ${count} stickers; at most ${most} are ${where === "print" ? "printed" : "put in the workbook"} at once. Choose fewer pieces.`,
  paper: "On paper",
  pages: "What",
  onePage: "Tickets, one piece to a page",
  together: "Tickets, small pieces together",
  cutSheet: "Add the cutting sheet",
  print: "Print",
  save: "Save as a page",
  toSheet: "Put in the workbook",
  printHint:
    "Where Excel does not let the pane print, save the page, open it in a browser and print it there. A PDF is made by the same print window.",
  workbookHint:
    "Put the tickets in the workbook and print them from Excel: that works in every Excel. Print and Save work where the browser lets the pane; where it does not, nothing comes of them.",
  onlyWorkbookHint:
    "This Excel lets a pane neither print nor save files, as on a Mac. Put the tickets in the workbook and print them from Excel; a PDF is made by the same print window.",
  planning: (title: string) => (title ? `Planning the cuts of ${title}…` : "Planning the cuts…"),
  saved: (name: string) => `Saved as ${name} with your downloads.`,
  writing: (percent: number) => `Writing into the workbook, ${percent} %…`,
  canceled: "Stopped. What was made of it is taken away again.",
  written: (sheets: readonly string[], what: "tickets" | "stickers", pictures: boolean) =>
    [
      what === "tickets"
        ? `The tickets stand on the new ${sheets.length === 1 ? "sheet" : "sheets"} ${sheets.join(", ")}, a page to each piece.`
        : `The stickers stand on the new sheet ${sheets.join(", ")}, three beside each other.`,
      pictures
        ? ""
        : "This program takes no pictures into a sheet: the code and the drawings are on the printed page only.",
      sheets.length === 1 ? "Print it from Excel." : "Print them from Excel.",
    ]
      .filter(Boolean)
      .join(" "),
  notMade: (run: string) => `No tickets for ${run}`,
  list: "Pieces",
  piece: (run: string, piece: number, pieces: number) => `${run}, piece ${piece} of ${pieces}`,
  summary: (cut: string, bends: number) => `cut ${cut}, ${bends === 0 ? "straight" : many(bends, "bend", "bends")}`,
  more: (count: number) => `Show ${many(count, "more piece", "more pieces")}`,
  count: (count: number) => many(count, "ticket", "tickets"),
  fileName: (title: string) => `${title.replace(/[^\p{L}\p{N} _-]/gu, "")}.html`,
  ticket: TICKET_LABELS,
  cuts: CUT_SHEET_LABELS,
  sheet: TICKET_SHEET_LABELS,
};
