import { act, fireEvent, screen, waitFor } from "@testing-library/react";
import { showRuns } from "./support/showPane";

const ROUTE = 5;

/** A workbook with two runs, the pane at A run. */
async function openRuns() {
  const runs = [
    ["P-1", "Quay", "Hall", "EMT", "1/2", "up 4', east 12' 6\"", 2],
    ["P-2", "Quay", "Hall", "RMC", "3/4", "north 5', offset 6 up at 30, ahead 4'", 1],
  ];
  const shown = await showRuns(runs, "A run");
  await screen.findByRole("option", { name: "P-2" });
  return shown;
}

const steps = () => screen.getAllByRole<HTMLInputElement>("textbox", { name: /^Step/ }).map(({ value }) => value);

test("the steps of the run are listed as their writer worded them", async () => {
  await openRuns();
  expect(steps()).toEqual(["up 4'", "east 12' 6\""]);
});

test("the pane follows the selected row", async () => {
  const { book, sheet } = await openRuns();
  await act(async () => book.select(sheet, 2, 3));
  await waitFor(() => expect(steps()).toEqual(["north 5'", "offset 6 up at 30", "ahead 4'"]));
});

test("the selection follows the pane", async () => {
  const { book, user } = await openRuns();
  await user.selectOptions(screen.getByRole("combobox", { name: "Run" }), "P-2");
  await waitFor(() => expect(book.selected).toMatchObject({ row: 2, column: 0 }));
  expect(book.active.name).toBe("Runs");
});

test("a step typed here is in the cell; a route typed in the cell is here", async () => {
  const { book, user, sheet } = await openRuns();
  const second = screen.getByRole("textbox", { name: "Step 2" });
  await user.clear(second);
  await user.type(second, "east 9'{Enter}");
  await waitFor(() => expect(sheet.at(1, ROUTE)).toBe("up 4', east 9'"));
  await act(async () => book.type(sheet, 1, ROUTE, "west 20; down 10"));
  await waitFor(() => expect(steps()).toEqual(["west 20", "down 10"]));
});

test("steps move and go by keyboard alone", async () => {
  const { user, sheet } = await openRuns();
  act(() => screen.getByRole("textbox", { name: "Step 2" }).focus());
  await user.keyboard("{Alt>}{ArrowUp}{/Alt}");
  await waitFor(() => expect(sheet.at(1, ROUTE)).toBe("east 12' 6\", up 4'"));
  expect(document.activeElement).toBe(screen.getByRole("textbox", { name: "Step 1" }));
  await user.keyboard("{Alt>}{Delete}{/Alt}");
  await waitFor(() => expect(sheet.at(1, ROUTE)).toBe("up 4'"));
});

test("Delete in a step's words deletes words, not the step", async () => {
  const { user } = await openRuns();
  const first = screen.getByRole<HTMLInputElement>("textbox", { name: "Step 1" });
  act(() => first.focus());
  first.setSelectionRange(0, 0);
  await user.keyboard("{Delete}");
  expect(steps()).toEqual(["p 4'", "east 12' 6\""]);
});

test("a step that cannot be read is told beside it, and kept in the sheet", async () => {
  const { user, sheet } = await openRuns();
  const first = screen.getByRole("textbox", { name: "Step 1" });
  await user.clear(first);
  await user.type(first, "fly 4'");
  expect(screen.getByText(/^got "fly 4'"; expected up, down/)).toBeTruthy();
  fireEvent.blur(first);
  await waitFor(() => expect(sheet.at(1, ROUTE)).toBe("fly 4', east 12' 6\""));
});

test("the spelling that was meant is ready to be taken", async () => {
  const { user, sheet } = await openRuns();
  const first = screen.getByRole("textbox", { name: "Step 1" });
  await user.clear(first);
  await user.type(first, "10' east 8'");
  await user.click(screen.getByRole("button", { name: "Write up 10', east 8'" }));
  expect(steps()).toEqual(["up 10'", "east 8'", "east 12' 6\""]);
  await waitFor(() => expect(sheet.at(1, ROUTE)).toBe("up 10', east 8', east 12' 6\""));
});

test("a broken rule is told in words", async () => {
  const { book, sheet } = await openRuns();
  await act(async () => book.type(sheet, 1, ROUTE, "up 40, east 60, south 60, west 60, down 40, east 60"));
  expect(await screen.findByText(/the run turns 450° between pull points; the limit is 360°/)).toBeTruthy();
});

test("legs too short for their bends are told, with the way to the step", async () => {
  const { book, user, sheet } = await openRuns();
  await act(async () => book.type(sheet, 1, ROUTE, "up 30, east 5, down 30"));
  expect(await screen.findByText("This run cannot be built yet")).toBeTruthy();
  await user.click(screen.getByRole("button", { name: /^Go to step/ }));
  expect(document.activeElement?.getAttribute("aria-label")).toMatch(/^Step [23]$/);
});

test("what can be built of a run is drawn, and the step that cannot is named", async () => {
  const { book, sheet } = await openRuns();
  const drawn = () => document.querySelector(".rl-turnable svg desc")?.textContent ?? "";
  await act(async () => book.type(sheet, 1, ROUTE, "up 30, east 60, norht 5 5, down 30"));
  expect(await screen.findByText(/Drawn as far as step 2: step 3, norht 5 5, is not drawn/)).toBeTruthy();
  expect(drawn()).toMatch(/90°/);
  await act(async () => book.type(sheet, 1, ROUTE, "up 30, east 60, north 40, down 30"));
  await waitFor(() => expect(screen.queryByText(/Drawn as far as/)).toBeNull());
  await act(async () => book.type(sheet, 1, ROUTE, "norht 5 5, up 30"));
  await waitFor(() => expect(document.querySelector(".rl-turnable")).toBeNull());
});

test("a run of PVC has its elbows between its pieces, in the marks and in the drawing", async () => {
  const { book, user, sheet } = await openRuns();
  await act(async () => {
    book.type(sheet, 1, 3, "PVC 40");
    book.type(sheet, 1, 4, "2");
    book.type(sheet, 1, ROUTE, "up 24, east 60, up 24");
  });
  await user.click(await screen.findByRole("tab", { name: "Marks" }));
  // NEC chapter 9, table 2, one-shot: 9-1/2 in. for trade size 2; straight ends of 2 in. (both from memory).
  const cards = () => screen.getAllByRole("heading", { level: 4 }).map(({ textContent }) => textContent);
  await waitFor(() =>
    expect(cards()).toEqual([
      "Piece 1: cut 1' 0-1/2\"",
      "Factory elbow, 90°: bend 1 of the run",
      "Piece 2: cut 3' 1\"",
      "Factory elbow, 90°: bend 2 of the run",
      "Piece 3: cut 1' 0-1/2\"",
    ]),
  );
  expect(screen.getAllByText("Straight; nothing to bend.")).toHaveLength(3);
  expect(screen.getByText("points opposite to the bend before")).toBeTruthy();
  expect(screen.getAllByText('bought; laid out at 9-1/2" radius; straight ends 2"')).toHaveLength(2);
  expect(document.querySelector(".rl-turnable svg desc")?.textContent).toMatch(/elbow 90°.*elbow 90°/);
});

test("a new run stands under the last, with live formulas in its row", async () => {
  const { book, user } = await openRuns();
  await user.click(screen.getByRole("button", { name: "Add a run" }));
  await waitFor(() => expect(book.table("Runs").rows).toBe(4));
  const row = book.cellsOf("Runs")[3] ?? [];
  expect(row.slice(0, 7)).toEqual(["Run 3", "Quay", "", "EMT", "1/2", "", 1]);
  expect(row.at(-4)).toMatch(/^=IF\(Runs\[\[#This Row\],\[Route\]\]="","",CONDUIT\.RUN\.LENGTH\(/);
  expect(await screen.findByText(/No steps yet/)).toBeTruthy();
});

test("a step is added ready to be worded", async () => {
  const { user, sheet } = await openRuns();
  await user.selectOptions(screen.getByRole("combobox", { name: "Kind of step" }), "saddle 3 up at 45");
  await user.click(screen.getByRole("button", { name: "Add step" }));
  await waitFor(() => expect(sheet.at(1, ROUTE)).toBe("up 4', east 12' 6\", saddle 3 up at 45"));
  expect(document.activeElement).toBe(screen.getByRole("textbox", { name: "Step 3" }));
});

test("the run is drawn from every side, and turned by keyboard", async () => {
  const { user } = await openRuns();
  const title = () => document.querySelector(".rl-turnable svg title")?.textContent;
  await user.selectOptions(screen.getByRole("combobox", { name: "Seen from" }), "Any side");
  const before = document.querySelector(".rl-turnable svg")?.innerHTML;
  fireEvent.change(screen.getByRole("slider", { name: "Turn" }), { target: { value: "30" } });
  expect(title()).toMatch(/^P-1: /);
  expect(document.querySelector(".rl-turnable svg")?.innerHTML).not.toBe(before);
});
