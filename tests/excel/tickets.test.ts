/** Tickets put in the workbook, by Microsoft's Office.js over the local workbook. */
import { buildJob } from "../../src/shop/job/job";
import { jobTickets } from "../../src/shop/ticket/jobTickets";
import { addPrintSheets, type Progress } from "../../taskpane/excel";
import { ticketSheets } from "../../taskpane/tickets/sheet/ticketSheet";
import { generatedRuns } from "./support/generatedRuns";
import { openLocalExcel, OURS, type LocalExcel } from "./support/localExcel";

let local: LocalExcel;
beforeEach(async () => (local = await openLocalExcel()));
afterEach(() => local.close());

const EMPTY = { sheets: ["Sheet1"], corners: [""], lost: [], gone: [], tables: [], names: [] };
const ticketsOf = (runs: unknown[][]) => jobTickets(buildJob({ runs })).tickets;
const LOOK = { style: "feet", pictures: false, issue: "", straight: 0 } as const;
const sheetsOf = (runs: unknown[][]) => ticketSheets(ticketsOf(runs), LOOK, EMPTY);
const unwatched: Progress = { onShare: () => undefined, isCanceled: () => false };
const sheetNames = () => local.book.sheets().map(({ name }) => name);

const TWO = [
  ["Run", "Raceway", "Size", "Route"],
  ["P-1", "EMT", "1/2", "stub 10 up, east 5'"],
  ["P-2", "EMT", "1/2", "north 5', offset 6 up at 30, ahead 4'"],
];

test("words and letters are as the ticket has them, and text stays text", async () => {
  const sheets = sheetsOf(TWO);
  await addPrintSheets(sheets, unwatched);
  const sheet = local.book.sheet("Tickets");
  const { cells } = sheets[0]!;
  expect(sheet.cells(0, 0, cells.length, cells[0]!.length).texts).toEqual(cells);
  const rowOf = (start: string) => cells.findIndex(([first]) => first!.startsWith(start));
  const look = (row: number, column: number) => sheet.cells(row, column).native.getCellStyle();
  // The letters of a ticket on a worksheet: name 22 bold, cut 18 bold, step 16 bold.
  expect(
    [rowOf("P-2 piece"), rowOf("Cut "), rowOf("1")].map((row) => [look(row, 0)?.fontSize, look(row, 0)?.bold]),
  ).toEqual([
    [22, true],
    [18, true],
    [16, true],
  ]);
  expect(look(rowOf("1"), 5)?.bold ?? false).toBe(false);
  expect(sheet.cells(rowOf("1"), 5).native.getWrap()).toBe(true);
  expect(sheet.cells(rowOf("Caution"), 0).native.getWrap()).toBe(false);
});

test("100 runs: every ticket, in requests of half a megabyte", async () => {
  const runs = generatedRuns(100);
  const sheets = sheetsOf(runs);
  const shares: number[] = [];
  expect(await addPrintSheets(sheets, { ...unwatched, onShare: (share) => shares.push(share) })).toBe(true);
  const first = local.book.sheet("Tickets").cells(0, 0, sheets[0]!.cells.length, 1).texts.flat().map(String);
  const tickets = ticketsOf(runs).map(
    ({ run, piece, pieces }) => `${run.name} piece ${piece} of ${pieces}, make ${run.quantity}`,
  );
  expect(tickets.length).toBeGreaterThan(300);
  expect(first.filter((text) => / piece \d+ of \d+, make \d+$/.test(text))).toEqual(tickets);
  expect(Math.max(...local.sizes)).toBeLessThan(OURS / 6);
  expect(shares.at(-1)).toBe(1);
  expect(local.book.activeSheet().name).toBe("Tickets");
});

test("500 runs: no request above 4 MB, sheets under 1,000 page breaks", () => {
  local.onlyCounts = true;
  const sheets = sheetsOf(generatedRuns(500));
  expect(sheets.map(({ sheet }) => sheet)).toEqual(["Tickets", "Tickets 2"]);
  for (const { pageStarts } of sheets) expect(pageStarts.length).toBeLessThan(1000);
  return addPrintSheets(sheets, unwatched).then(() => {
    expect(Math.max(...local.sizes)).toBeLessThan(OURS);
    expect(local.sizes.reduce((sum, size) => sum + size)).toBeGreaterThan(2_000_000);
  });
});

test("canceled in the middle, nothing is left", async () => {
  let parts = 0;
  const made = await addPrintSheets(sheetsOf(generatedRuns(100)), {
    onShare: () => (parts += 1),
    isCanceled: () => parts > 0,
  });
  expect([made, parts]).toEqual([false, 1]);
  expect(sheetNames()).toEqual(["Sheet1"]);
});

test.each([
  ["while the words are written", "Formulas"],
  ["while the letters are set", "Bold"],
])("Excel fails %s: the words are true, and nothing is left", async (_, member) => {
  local.fail = ({ Name }) => (Name === member ? "AccessDenied" : undefined);
  await expect(addPrintSheets(sheetsOf(TWO), unwatched)).rejects.toThrow(
    /protected\. Unprotect it .* What was made of it is taken away again\.$/,
  );
  expect(sheetNames()).toEqual(["Sheet1"]);
});

test("what cannot be taken away again is named", async () => {
  local.fail = ({ Name }) => (["Formulas", "Delete"].includes(Name) ? "GeneralException" : undefined);
  await expect(addPrintSheets(sheetsOf(TWO), unwatched)).rejects.toThrow(/Half of it stands on Tickets; delete that/);
  expect(sheetNames()).toEqual(["Sheet1", "Tickets"]);
});
