import { act, screen, waitFor, within } from "@testing-library/react";
import type { CutJob } from "../../taskpane/totals/cuts/cutJob";
import { paintForGood, readCode } from "./support/canvas";
import type { FakeBook } from "./support/fakeBook";
import { showPane, showRuns } from "./support/showPane";

jest.mock("../../taskpane/totals/cuts/planInWorker", () => ({
  planInWorker: (job: CutJob) => {
    const { planJobInSteps } = jest.requireActual<typeof import("../../taskpane/totals/cuts/cutWork")>(
      "../../taskpane/totals/cuts/cutWork",
    );
    const steps = planJobInSteps(job);
    let step = steps.next();
    while (!step.done) step = steps.next();
    return { result: Promise.resolve(step.value), cancel: () => undefined };
  },
}));

const STICKERS = "Stickers, one for each piece to make";
const RUNS = [
  ["P-1", "Quay", "Hall", "EMT", "1/2", "stub 10 up, east 5'", 2],
  ["P-2", "Quay", "Hall", "EMT", "1/2", "north 5', offset 6 up at 30, ahead 4'", 1],
  ["P-3", "Quay", "Hall", "EMT", "1/2", "up 20, sideways 30", 1],
];

/** The window of the frame that prints; jsdom has none that could. */
const printWindow = { addEventListener: jest.fn(), focus: jest.fn(), print: jest.fn() };
beforeEach(() => {
  printWindow.print.mockClear();
  jest
    .spyOn(HTMLIFrameElement.prototype, "contentWindow", "get")
    .mockReturnValue(printWindow as unknown as Window & typeof globalThis);
});

/** The pane at Tickets; the Shoes table that setting up writes has the 1/2 EMT shoe with a deduct of 5. */
async function openTickets(runs = RUNS) {
  paintForGood();
  return showRuns(runs, "Tickets");
}

const chooseJob = async (user: Awaited<ReturnType<typeof openTickets>>["user"]) =>
  user.selectOptions(await screen.findByRole("combobox", { name: "Tickets for" }), "The whole job");

test("the ticket of a run with one piece is shown at once, and closes", async () => {
  const { user } = await openTickets();
  const name = await screen.findByText("P-1, piece 1 of 1");
  const card = name.closest("details") as HTMLDetailsElement;
  const ticket = within(await waitFor(() => card.querySelector<HTMLElement>("article")!));
  // Published: Modern Residential Wiring (2021), p. 144: a 10 in. stub with a deduct of 5 is marked at 5.
  expect(ticket.getByText('5"', { selector: "b *, b" })).toBeTruthy();
  expect(ticket.getByText(/Disconnect the power/)).toBeTruthy();
  await user.click(name);
  await waitFor(() => expect(card.querySelector("article")).toBeNull());
});

test("where the Bench table leaves too little room, the ticket has the bends in an order that fits", async () => {
  // Bent last, the second 90 would hang the 45 in. stub under a bench 36 in. high, as a new Bench table has it.
  const { user } = await openTickets([["P-1", "Quay", "Hall", "EMT", "1/2", "up 45, east 40, up 12", 1]]);
  await chooseJob(user);
  const name = await screen.findByText("P-1, piece 1 of 1");
  const ticket = within(await waitFor(() => name.closest("details")!.querySelector<HTMLElement>("article")!));
  expect(ticket.getByText(/keep this order and these ends/)).toBeTruthy();
  const bends = ticket.getAllByRole("rowheader").map(({ textContent }) => textContent?.trim());
  expect(bends.filter((text) => /^\d/.test(text ?? ""))).toEqual(["1bend 2", "2bend 1"]);
});

test("the whole job lists every piece, and says why a run has none", async () => {
  const { user } = await openTickets();
  await chooseJob(user);
  const card = (await screen.findByText("P-2, piece 1 of 1")).closest("details")!;
  expect(card.open).toBe(false);
  expect(screen.getByText("No tickets for P-3")).toBeTruthy();
  expect(screen.getByRole("alert").textContent).toContain("step 2");
});

test("Print opens a frame with a ticket for each piece and, when asked for, the cutting sheet", async () => {
  const { user } = await openTickets();
  await chooseJob(user);
  await user.click(await screen.findByRole("checkbox", { name: "Add the cutting sheet" }));
  await user.click(screen.getByRole("button", { name: "Print" }));
  const frame = await waitFor(() => document.querySelector<HTMLIFrameElement>("#rlt-print")!);
  await waitFor(() => expect(frame.srcdoc).toContain("ticket 2 of 2"));
  const page = new DOMParser().parseFromString(frame.srcdoc, "text/html");
  expect([...page.querySelectorAll("article h3")].map((each) => each.textContent)).toEqual([
    "P-1 piece 1 of 1",
    "P-2 piece 1 of 1",
    "Cutting sheet",
  ]);
  // By hand: corners 9.647 and 60, less the gain 8 − 2π: 67.93.
  expect(page.querySelector(".rlt-cuts")?.textContent).toContain(
    "Take 2 sticks of 10' 0\"; from each:cut 1 at 5' 7-15/16\": P-1/1 ×2left over",
  );
  expect(page.querySelectorAll("svg").length).toBeGreaterThan(3);
  await waitFor(() => expect(printWindow.print).toHaveBeenCalledTimes(1));
});

test("what people wrote cannot become markup on the page", async () => {
  const evil = '<img src=x onerror="alert(1)">';
  const { user } = await openTickets([[evil, evil, evil, "EMT", "1/2", "up 20, east 30", 1]]);
  await user.click(await screen.findByRole("button", { name: "Print" }));
  const frame = await waitFor(() => document.querySelector<HTMLIFrameElement>("#rlt-print")!);
  const page = new DOMParser().parseFromString(frame.srcdoc, "text/html");
  expect(page.querySelectorAll("img, script")).toHaveLength(0);
  expect(page.querySelector("h3")?.textContent).toContain(evil);
});

test("tickets go to a new sheet, a page to each piece, and never over a sheet that is there", async () => {
  const { book, user } = await openTickets();
  book.addSheet("Tickets", [["mine"]]);
  await chooseJob(user);
  await user.click(await screen.findByRole("button", { name: "Put in the workbook" }));
  await screen.findByText(/new sheet Tickets 2/);
  const text = sheetText(book, "Tickets 2");
  expect(text).toContain("P-1 piece 1 of 1, make 2");
  expect(text).toContain('1|5"|arrow|D end|90°|first bend; stub-up');
  expect(text).toContain("Disconnect the power");
  const second = text.split("\n").findIndex((line) => line.startsWith("P-2 piece 1"));
  expect(book.sheet("Tickets 2").pageBreaks).toEqual([`A${second + 1}`]);
  expect(book.sheet("Tickets").at(0, 0)).toBe("mine");
  const { images } = book.sheet("Tickets 2");
  expect(images.map(({ altTextTitle }) => altTextTitle)).toEqual([
    ...["Code of P-1/1", "P-1 piece 1: where to mark the stick", "How the conduit lies at the shoe in step 1"],
    "P-1 piece 1: Center lines, from the side",
    ...["Code of P-2/1", "P-2 piece 1: where to mark the stick", "How the conduit lies at the shoe in step 1"],
    ...["How the conduit lies at the shoe in step 2", "P-2 piece 1: Center lines, from the side"],
  ]);
  // The code hangs beside its ticket's first row, in the last column; the sheet's own picture reads back.
  const first = text.split("\n").findIndex((line) => line.startsWith("P-1 piece 1"));
  expect(images[0]).toMatchObject({ left: 64 * 6, top: 15 * first + 2 });
  expect(await readCode(images[0]!.png)).toMatch(/^Piece: P-1\/1\nShape: \S{4}-\S{4}\nMake: 2\nJob: Quay$/);
});

test("the cutting sheet goes along where it is asked for, for the runs that have tickets", async () => {
  const { book, user } = await openTickets([...RUNS.slice(0, 2), ["P-4", "Quay", "Shed", "EMT", "1/2", "east 8'", 1]]);
  await chooseJob(user);
  await user.selectOptions(await screen.findByRole("combobox", { name: "Area" }), "Shed");
  await user.click(screen.getByRole("checkbox", { name: "Bent pieces only" }));
  await user.click(await screen.findByRole("checkbox", { name: "Add the cutting sheet" }));
  await user.click(screen.getByRole("button", { name: "Put in the workbook" }));
  await screen.findByText(/new sheet Tickets P-4/);
  const text = sheetText(book, "Tickets P-4");
  expect(text).toContain("\u2610 cut 1 at 8' 0\": P-4/1");
  expect(text).not.toContain("P-1/1");
});

test("where the host takes no pictures the words go, and the pane says what is missing", async () => {
  const { book, user } = await openTickets();
  const office = globalThis as unknown as { Office?: unknown };
  const before = office.Office;
  office.Office = { context: { requirements: { isSetSupported: () => false } } };
  await user.click(await screen.findByRole("button", { name: "Put in the workbook" }));
  await screen.findByText(/This program takes no pictures into a sheet/);
  office.Office = before;
  expect(book.sheet("Tickets P-1").images).toEqual([]);
  expect(sheetText(book, "Tickets P-1")).toContain('1|5"|arrow');
});

function sheetText(book: FakeBook, name: string): string {
  const sheet = book.sheet(name);
  const rows = Math.max(...[...sheet.cells.keys()].map((key) => Number(key.split(",")[0]))) + 1;
  return Array.from({ length: rows }, (_, row) =>
    [0, 1, 2, 3, 4, 5].map((column) => sheet.at(row, column)).join("|"),
  ).join("\n");
}

test("without runs the view says what to do", async () => {
  const { user } = await showPane();
  await user.click(screen.getByRole("tab", { name: "Tickets" }));
  expect(await screen.findByRole("button", { name: "Go to Start" })).toBeTruthy();
});

describe("which tickets", () => {
  const JOB = [...RUNS.slice(0, 2), ["P-4", "Quay", "Shed", "EMT", "1/2", "east 8'", 1]];
  const pieces = () => screen.queryAllByText(/^P-\d, piece/).map(({ textContent }) => textContent);

  test("straight pieces go to the cutting sheet, unless they are asked for", async () => {
    const { user } = await openTickets(JOB);
    await chooseJob(user);
    await screen.findByText("1 straight piece has no ticket: the cutting sheet has it.");
    expect(pieces()).toEqual(["P-1, piece 1 of 1", "P-2, piece 1 of 1"]);
    expect(screen.getByRole<HTMLInputElement>("checkbox", { name: "Add the cutting sheet" }).checked).toBe(true);
    await user.click(screen.getByRole("checkbox", { name: "Bent pieces only" }));
    await waitFor(() => expect(pieces()).toEqual(["P-1, piece 1 of 1", "P-2, piece 1 of 1", "P-4, piece 1 of 1"]));
  });

  test("by area, and what is not yet made where the workbook has a Made table", async () => {
    const { book, user, sheet } = await openTickets(JOB);
    await chooseJob(user);
    addMade(book, "P-2");
    await act(async () => book.type(sheet, 1, 6, 2));
    await user.click(await screen.findByRole("checkbox", { name: "Not yet made" }));
    await waitFor(() => expect(pieces()).toEqual(["P-1, piece 1 of 1"]));
    // The cutting sheet leaves P-2 out as well: two of P-1 and P-4 are left to cut.
    await user.click(screen.getByRole("button", { name: "Print" }));
    const frame = await waitFor(() => document.querySelector<HTMLIFrameElement>("#rlt-print")!);
    await waitFor(() => expect(frame.srcdoc).toContain("made: 1 piece"));
    const cuts = new DOMParser().parseFromString(frame.srcdoc, "text/html").querySelector(".rlt-ways")?.textContent;
    expect(cuts).toContain("P-1/1");
    expect(cuts).toContain("P-4/1");
    expect(cuts).not.toContain("P-2/1");
    await user.selectOptions(screen.getByRole("combobox", { name: "Area" }), "Shed");
    await screen.findByText("No piece is wanted by these choices.");
    await user.click(screen.getByRole("checkbox", { name: "Bent pieces only" }));
    await waitFor(() => expect(pieces()).toEqual(["P-4, piece 1 of 1"]));
  });

  test("stickers: one for each piece to make, with its code", async () => {
    const { book, user } = await openTickets();
    await user.selectOptions(await screen.findByRole("combobox", { name: "What" }), STICKERS);
    await user.click(screen.getByRole("button", { name: "Print" }));
    const frame = await waitFor(() => document.querySelector<HTMLIFrameElement>("#rlt-print")!);
    const page = new DOMParser().parseFromString(frame.srcdoc, "text/html");
    expect([...page.querySelectorAll(".rlt-label h3")].map(({ textContent }) => textContent)).toEqual([
      ...["P-1/1", "P-1/1"],
    ]);
    expect(page.querySelector(".rlt-label svg desc")?.textContent).toMatch(
      /^Piece: P-1\/1\nShape: \S{4}-\S{4}\nMake: 2\nJob: Quay$/,
    );
    expect(page.body.textContent).toContain("2 of 2 · 1 bend");
    await user.click(screen.getByRole("button", { name: "Put in the workbook" }));
    await screen.findByText(/new sheet Stickers P-1, three beside each other/);
    expect(sheetText(book, "Stickers P-1").split("\n")[0]).toBe("|P-1/1||P-1/1||");
    expect(book.sheet("Stickers P-1").images).toHaveLength(2);
    expect(await readCode(book.sheet("Stickers P-1").images[1]!.png)).toContain("Piece: P-1/1\n");
  });
});

/** A good piece in the first row of the Made table that setting up has written. */
function addMade(book: FakeBook, piece: string): void {
  const { sheet, row, column, columns } = book.table("Made");
  for (const [name, cell] of Object.entries({ Piece: piece, Good: 1 })) {
    const place = Array.from({ length: columns }, (_, each) => column + each).find(
      (each) => sheet.at(row, each) === name,
    );
    sheet.put(row + 1, place!, cell);
  }
}
