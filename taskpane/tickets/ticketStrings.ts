import { TICKET_LABELS, TICKET_SHEET_LABELS } from "../../src/shop/ticket/ticketLabels";

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
  labels: "Stickers",
  labelCount: (number: number, of: number, bends: number) =>
    `${number} of ${of} · ${bends === 0 ? "straight" : many(bends, "bend", "bends")}`,
  tooManyLabels: (count: number, most: number) =>
    `These are ${count} stickers; at most ${most} are printed at once. Choose fewer pieces.`,
  paper: "On paper",
  pages: "Pages",
  onePage: "One piece to a page",
  together: "Small pieces together",
  cutSheet: "Add the cutting sheet",
  print: "Print",
  save: "Save as a page",
  toSheet: "Put in the workbook",
  printHint:
    "Where Excel does not let the pane print, save the page, open it in a browser and print it there. A PDF is made by the same print window.",
  planning: (title: string) => (title ? `Planning the cuts of ${title}…` : "Planning the cuts…"),
  saved: (name: string) => `Saved as ${name} with your downloads.`,
  written: (sheet: string) => `The tickets stand on the new sheet ${sheet}, a page to each piece. Print it from Excel.`,
  notMade: (run: string) => `No tickets for ${run}`,
  list: "Pieces",
  piece: (run: string, piece: number, pieces: number) => `${run}, piece ${piece} of ${pieces}`,
  summary: (cut: string, bends: number) => `cut ${cut}, ${bends === 0 ? "straight" : many(bends, "bend", "bends")}`,
  more: (count: number) => `Show ${many(count, "more piece", "more pieces")}`,
  count: (count: number) => many(count, "ticket", "tickets"),
  fileName: (title: string) => `${title.replace(/[^\p{L}\p{N} _-]/gu, "")}.html`,
  ticket: TICKET_LABELS,
  cuts: {
    title: "Cutting sheet",
    about: (kerf: string) =>
      `All sticks of a line together, one length after the other: this order saves settings of the stop. The saw takes ${kerf} with each cut; it is allowed for.`,
    total: "All together:",
    notCut: "Not in the plan",
  },
  sheet: TICKET_SHEET_LABELS,
};
