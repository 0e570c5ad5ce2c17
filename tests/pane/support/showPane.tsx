import { act, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { App } from "../../../taskpane/App";
import type { FakeBook } from "./fakeBook";
import { useFakeExcel } from "./fakeExcel";

/** Shows the pane over a fake workbook. */
export async function showPane(book?: FakeBook) {
  const workbook = useFakeExcel(book);
  const user = userEvent.setup();
  const page = render(<App />);
  await act(async () => undefined);
  return { book: workbook, user, page };
}

/** The pane over a workbook that was set up from it. */
export async function showSetUp(book?: FakeBook) {
  const shown = await showPane(book);
  await shown.user.click(await screen.findByRole("button", { name: "Set up" }));
  await screen.findByText(/This workbook is set up/);
  return shown;
}

/** Runs by Run, From, To, Raceway, Size, Route and Quantity in a workbook that was set up, and the pane at a tab. */
export async function showRuns(runs: readonly (readonly (string | number)[])[], tab: string) {
  const shown = await showSetUp();
  const sheet = shown.book.sheet("Runs");
  runs.forEach((cells, row) => cells.forEach((cell, column) => sheet.put(row + 1, column, cell)));
  shown.book.table("Runs").rows = runs.length + 1;
  await act(async () => shown.book.type(sheet, 1, 0, runs[0]![0]!));
  await shown.user.click(screen.getByRole("tab", { name: tab }));
  return { ...shown, sheet };
}
