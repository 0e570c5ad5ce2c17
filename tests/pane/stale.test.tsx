/** A pane that cannot read the sheet says so, lets nothing be made of what it shows, and follows as soon as it can. */
import { act, screen, waitFor } from "@testing-library/react";
import { batch, reading } from "../../taskpane/excel";
import { useFakeExcel } from "./support/fakeExcel";
import { showPane, showSetUp } from "./support/showPane";

const ROUTE = 5;
const VIEWS = ["Start", "A bend", "A run", "The shoe", "Totals", "Tickets", "Bender"];

/** The pane at Tickets, with one run. */
async function openRun() {
  const shown = await showSetUp();
  const sheet = shown.book.sheet("Runs");
  ["P-1", "", "", "EMT", "1/2", "stub 10 up, east 5'", 1].forEach((cell, column) => sheet.put(1, column, cell));
  await act(async () => shown.book.type(sheet, 1, ROUTE, "stub 10 up, east 5'"));
  await shown.user.click(screen.getByRole("tab", { name: "Tickets" }));
  await screen.findByText(/cut 5' 7.*, 1 bend/);
  return { ...shown, sheet };
}

const isOff = (name: string) => screen.getByRole("button", { name }).getAttribute("aria-disabled") === "true";
const WRITERS = ["Print", "Save as a page", "Put in the workbook"];

test.each([
  ["an Excel that lets reads wait", true],
  ["an Excel that refuses them", false],
])("%s: a run typed while the next cell is being edited shows once the edit ends", async (_, canWait) => {
  const { book, sheet } = await openRun();
  book.canWait = canWait;
  // The change is told while the person types on already.
  await act(async () => {
    book.type(sheet, 1, ROUTE, "stub 10 up, east 7'");
    book.beginEdit();
  });
  await screen.findByText("The pane is behind the sheet", undefined, { timeout: 4000 });
  expect(screen.getByText(/Enter or Esc/)).toBeTruthy();
  expect(WRITERS.map(isOff)).toEqual([true, true, true]);
  await act(async () => book.endEdit(sheet, 1, 1, "Quay"));
  await screen.findByText(/cut 7' 7.*, 1 bend/, undefined, { timeout: 4000 });
  expect(screen.queryByText("The pane is behind the sheet")).toBeNull();
  expect(WRITERS.map(isOff)).toEqual([false, false, false]);
});

test("a read that failed is tried again though nothing else happens in the sheet", async () => {
  const { book, sheet } = await openRun();
  book.refuses = "GeneralException";
  await act(async () => book.type(sheet, 1, ROUTE, "stub 10 up, east 7'"));
  await screen.findByText(/The pane keeps trying/);
  expect(screen.getByText(/cut 5' 7.*, 1 bend/)).toBeTruthy();
  book.refuses = "";
  await screen.findByText(/cut 7' 7.*, 1 bend/, undefined, { timeout: 4000 });
});

test("while the last read failed every view says so", async () => {
  const { book, sheet, user } = await openRun();
  book.refuses = "RequestAborted";
  await act(async () => book.type(sheet, 1, ROUTE, "stub 10 up, east 7'"));
  await screen.findByText(/The pane keeps trying/);
  for (const view of VIEWS) {
    await user.click(screen.getByRole("tab", { name: view }));
    expect(screen.getAllByText("The pane is behind the sheet")).toHaveLength(1);
  }
});

test("a step is not written on what may be gone, and Enter writes it once the sheet is read again", async () => {
  const { book, sheet, user } = await openRun();
  await user.click(screen.getByRole("tab", { name: "A run" }));
  const field = await screen.findByRole<HTMLInputElement>("textbox", { name: "Step 2" });
  book.refuses = "RequestAborted";
  await act(async () => book.type(sheet, 1, ROUTE, "stub 10 up, east 5'"));
  await screen.findByText("The pane is behind the sheet");
  await user.clear(field);
  await user.type(field, "east 9'{Enter}");
  await screen.findByText(/Nothing was changed\./);
  expect(sheet.at(1, ROUTE)).toBe("stub 10 up, east 5'");
  book.refuses = "";
  await waitFor(() => expect(screen.queryByText("The pane is behind the sheet")).toBeNull(), { timeout: 4000 });
  expect(field.value).toBe("east 9'");
  await user.type(field, "{Enter}");
  await waitFor(() => expect(sheet.at(1, ROUTE)).toBe("stub 10 up, east 9'"));
});

test("a workbook that cannot be read at first is read later, and the pane then hears of changes", async () => {
  const book = useFakeExcel();
  book.refuses = "GeneralException";
  await showPane(book);
  await screen.findByText("The workbook could not be read");
  book.refuses = "";
  await screen.findByRole("button", { name: "Set up" }, { timeout: 4000 });
  await waitFor(() => expect(book.changeHandlers.size).toBe(1), { timeout: 4000 });
});

test("what a failed change left is told as it is known: refused whole, in part, or never sent", async () => {
  const book = useFakeExcel();
  const outcome = async (body: Parameters<typeof batch>[0]) =>
    (await batch(body).catch((error: Error) => error)) as Error;
  book.refuses = "InvalidOperationInCellEditMode";
  expect((await outcome((_, commit) => commit())).message).toMatch(/Nothing was changed\.$/);
  book.refuses = "AccessDenied";
  expect((await outcome((_, commit) => commit())).message).toMatch(/A part of it may be in the workbook/);
  expect((await outcome((context) => context.sync())).message).toMatch(/Nothing was changed\.$/);
  book.refuses = "";
  const second = await outcome(async (_, commit) => {
    await commit();
    book.refuses = "InvalidOperationInCellEditMode";
    await commit();
  });
  expect(second.message).toMatch(/A part of it may be in the workbook/);
  const read = await reading((context) => context.sync()).catch((error: Error) => error);
  expect((read as Error).message).not.toMatch(/changed|part of it/);
});
