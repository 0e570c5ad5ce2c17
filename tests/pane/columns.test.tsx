import { act, screen, waitFor } from "@testing-library/react";
import { SELDOM } from "../../taskpane/workbook/design/sheets";
import { showPane } from "./support/showPane";

test("columns few jobs need are shown by one click, and hidden again where nothing stands in them", async () => {
  const { book, user } = await showPane();
  await user.click(await screen.findByRole("button", { name: "Set up" }));
  await screen.findByText(/This workbook is set up/);
  const runs = book.sheet("Runs");
  const headers = book.cellsOf("Runs")[0]!;
  const hidden = () => headers.filter((_, column) => runs.hiddenColumns.has(column));
  expect(hidden()).toEqual(SELDOM);
  // Start offers the same, before there is a run.
  await user.click(await screen.findByRole("button", { name: "More columns in Runs" }));
  await waitFor(() => expect(hidden()).toEqual([]));
  await user.click(screen.getByRole("button", { name: "Hide the empty ones" }));
  await waitFor(() => expect(hidden()).toEqual(SELDOM));
  await user.click(screen.getByRole("tab", { name: "A run" }));
  await act(async () => book.type(runs, 1, headers.indexOf("Run"), "A-1"));
  await user.click(await screen.findByRole("button", { name: "More columns in Runs" }));
  await waitFor(() => expect(hidden()).toEqual([]));
  await act(async () => book.type(runs, 1, headers.indexOf("Crew"), "B"));
  await user.click(screen.getByRole("button", { name: "Hide the empty ones" }));
  await waitFor(() => expect(hidden()).toEqual(SELDOM.filter((name) => name !== "Crew")));
});
