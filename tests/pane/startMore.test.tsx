import { act, screen, waitFor } from "@testing-library/react";
import { FakeBook, type Cell } from "./support/fakeBook";
import { showPane, showSetUp } from "./support/showPane";

const DEMO = {
  Runs: [
    ["Run", "Job", "Raceway", "Size", "Route", "Quantity"],
    ["TH-01", "Ferry terminal", "EMT", "1/2", "up 10, east 8'", 4],
    ["TH-02", "Ferry terminal", "EMT", "1/2", "up 14, east 20, down 14", 2],
  ],
  Stock: [
    ["Raceway", "Size", "Length", "On hand", "Price"],
    ["EMT", "1/2", "10'", null, 7.4],
  ],
};

beforeEach(() => {
  globalThis.fetch = (async (url: string) => {
    if (url !== "demo.json") throw new Error(`the pane asked for ${url}`);
    return { ok: true, json: async () => DEMO };
  }) as unknown as typeof fetch;
});

/** A table of the person's own, with its headers and rows from A1. */
function ownTable(name: string, rows: Cell[][]): FakeBook {
  const book = new FakeBook();
  const sheet = book.addSheet("Take-off list", rows);
  book.addTable(name, sheet, 0, 0, rows.length, rows[0]?.length ?? 0);
  return book;
}

test("the demo job opens in an empty workbook", async () => {
  const { book, user } = await showPane();
  await user.click(await screen.findByRole("button", { name: "Open the demo job" }));
  await screen.findByText(/The demo job is in the workbook/);
  expect(book.cellsOf("Runs").map((row) => [row[0], row[5]])).toEqual([
    ["Run", "Route"],
    ["TH-01", "up 10, east 8'"],
    ["TH-02", "up 14, east 20, down 14"],
  ]);
});

test("in a workbook that is set up and empty, the demo job fills the empty rows and the empty tables", async () => {
  const { book, user } = await showSetUp();
  await user.click(screen.getByRole("button", { name: "Open the demo job" }));
  await screen.findByText(/The demo job is in the workbook/);
  expect(book.cellsOf("Runs").map((row) => row[0])).toEqual(["Run", "TH-01", "TH-02"]);
  expect(book.cellsOf("Stock")).toEqual([
    ["Raceway", "Size", "Length", "On hand", "Price", "Note"],
    ["EMT", "1/2", "10'", "", 7.4, ""],
  ]);
});

test("with runs in the workbook the demo job asks, and goes below them", async () => {
  const { book, user } = await showPane();
  await user.click(await screen.findByRole("button", { name: "Open the demo job" }));
  await screen.findByText(/The demo job is in the workbook/);
  await user.click(screen.getByRole("button", { name: "Open the demo job" }));
  expect(await screen.findByText(/Runs holds 2 rows/)).toBeTruthy();
  expect(book.table("Runs").rows).toBe(3);
  await user.click(screen.getByRole("button", { name: "Add below" }));
  await waitFor(() => expect(book.table("Runs").rows).toBe(5));
  expect(book.cellsOf("Runs")[3]?.at(-4)).toBe(book.cellsOf("Runs")[1]?.at(-4));
});

test("a demo job that cannot be read is told with what to do", async () => {
  globalThis.fetch = (async () => ({ ok: false, status: 404, statusText: "Not Found" })) as unknown as typeof fetch;
  const { user } = await showPane();
  await user.click(await screen.findByRole("button", { name: "Open the demo job" }));
  expect((await screen.findByRole("alert")).textContent).toMatch(/could not be read \(404 Not Found\)/);
});

test("a table whose headers say what is needed is used as it is", async () => {
  const book = ownTable("Feeders", [
    ["Run", "Conduit", "Trade size", "Route"],
    ["F-1", "EMT", "3/4", "up 40"],
  ]);
  const { user } = await showPane(book);
  await user.selectOptions(await screen.findByRole("combobox", { name: "Your table" }), "Feeders");
  await user.click(screen.getByRole("button", { name: "Use Feeders as Runs" }));
  await waitFor(() => expect(book.settings.get("raceway-ledger.names")).toMatchObject({ Runs: "Feeders" }));
  await user.click(screen.getByRole("button", { name: "Set up" }));
  await screen.findByText(/This workbook is set up/);
  expect(book.sheet("Schedule").at(0, 0)).toBe("=CONDUIT.JOB.SCHEDULE(Feeders[#All],Shoes[#All],Rules[#All])");
  expect(book.tables.map(({ name }) => name)).not.toContain("Runs");
});

test("a table with other headers is linked cell by cell, and stays as it is", async () => {
  const rows: Cell[][] = [
    ["Tag", "Pipe", "Dia", "Path"],
    ["F-1", "EMT", "3/4", "up 40"],
  ];
  const book = ownTable("Feeders", rows);
  const { user } = await showPane(book);
  await user.selectOptions(await screen.findByRole("combobox", { name: "Your table" }), "Feeders");
  const use = screen.getByRole("button", { name: "Use Feeders as Runs" });
  expect(use.getAttribute("aria-disabled")).toBe("true");
  for (const [ours, theirs] of [
    ["Run", "Tag"],
    ["Raceway", "Pipe"],
    ["Size", "Dia"],
    ["Route", "Path"],
  ]) {
    await user.selectOptions(screen.getByRole("combobox", { name: `${ours} (needed)` }), theirs as string);
  }
  await user.click(use);
  await waitFor(() => expect(book.sheet("Runs")).toBeTruthy());
  const path = "INDEX(IF(TRUE,Feeders[Path]),1)";
  expect(book.sheet("Runs").at(1, 5)).toBe(`=IF(ROWS(Feeders)<1,"",IF(${path}="","",${path}))`);
  expect(book.sheet("Runs").columnFormats.get(4)).toBeUndefined();
  expect(book.cellsOf("Feeders")).toEqual(rows);
});

test("the unit a person chose is kept in the workbook and found again", async () => {
  const { book, user, page } = await showPane();
  await user.click(await screen.findByRole("radio", { name: "mm" }));
  await waitFor(() => expect(book.settings.get("raceway-ledger.units")).toBe("mm"));
  page.unmount();
  await showPane(book);
  await waitFor(() => expect(screen.getByRole<HTMLInputElement>("radio", { name: "mm" }).checked).toBe(true));
});

test("in a workbook that is set up the unit is the rule's: the pane writes it there, and follows what is typed there", async () => {
  const { book, user } = await showPane();
  await user.click(await screen.findByRole("button", { name: "Set up" }));
  await screen.findByText(/This workbook is set up/);
  const rule = () => book.cellsOf("Rules").findIndex(([name]) => name === "Lengths shown in");
  expect(book.cellsOf("Rules")[rule()]![1]).toBe("feet");
  await user.click(screen.getByRole("radio", { name: "mm" }));
  await waitFor(() => expect(book.cellsOf("Rules")[rule()]![1]).toBe("mm"));
  await act(async () => book.type(book.sheet("Rules"), rule(), 1, "inches"));
  await waitFor(() => expect(screen.getByRole<HTMLInputElement>("radio", { name: "in." }).checked).toBe(true));
});

test("in millimeters a bare number means millimeters", async () => {
  const { user } = await showPane();
  await user.click(await screen.findByRole("radio", { name: "mm" }));
  await user.click(screen.getByRole("tab", { name: "A bend" }));
  const stub = await screen.findByRole("textbox", { name: "Stub height" });
  await user.clear(stub);
  await user.type(stub, "254");
  // 254 mm is 10 in.; with the built-in deduct of 5 in. the mark stands at 127 mm.
  expect(screen.getByText("Mark at 127 mm")).toBeTruthy();
});
