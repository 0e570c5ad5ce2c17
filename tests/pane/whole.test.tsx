/** The whole job in one picture: pointing at a run, choosing it by keyboard, clashes, what is not in it. */
import { act, screen, waitFor, within } from "@testing-library/react";
import { showPane } from "./support/showPane";

/** The second crosses the first at 40 in.; the third stands by itself; the fourth says nothing of where it begins. */
const RUNS = [
  ["P-1", "Hall", "EMT", "1/2", "east 100", "0 0 10"],
  ["P-2", "Hall", "EMT", "3/4", "north 80", "40 -50 10"],
  ["P-3", "Yard", "EMT", "1/2", "up 50", "300 0 0"],
  ["P-4", "Yard", "EMT", "1/2", "east 60", ""],
];
const COLUMNS = ["Run", "Area", "Raceway", "Size", "Route", "Start"];

async function openPicture(runs = RUNS) {
  const shown = await showPane();
  await shown.user.click(await screen.findByRole("button", { name: "Set up" }));
  await screen.findByText(/This workbook is set up/);
  const table = shown.book.table("Runs");
  const headers = Array.from({ length: table.columns }, (_, column) =>
    table.sheet.at(table.row, table.column + column),
  );
  const places = COLUMNS.map((name) => headers.indexOf(name));
  runs.forEach((cells, row) => cells.forEach((cell, at) => table.sheet.put(row + 1, places[at]!, cell)));
  table.rows = runs.length + 1;
  await act(async () => shown.book.type(table.sheet, 1, places[0]!, runs[0]![0]!));
  await shown.user.click(screen.getByRole("tab", { name: "Totals" }));
  await shown.user.click(await screen.findByRole("tab", { name: "Picture" }));
  return shown;
}

const rowsInPicture = () =>
  [...document.querySelectorAll(".rl-turnable [data-row]")].map((line) => line.getAttribute("data-row"));

test("shows the runs that say where they begin, names the others, and the pair that takes the same place", async () => {
  await openPicture();
  await screen.findByRole("img", { name: /The job in one picture/ });
  expect(rowsInPicture().sort()).toEqual(["1", "2", "3"]);
  expect(screen.getByText("Not in the picture, without a Start: P-4.")).toBeTruthy();
  const list = screen.getByRole("region", { name: "1 pair of runs takes the same place" });
  expect(within(list).getByRole("listitem").textContent).toMatch(/^P-1P-2 0" center to center where they need 13\/16"3' 4" along P-1, 4' 2" along the other, at /); // prettier-ignore
});

test("pointing at a run goes to its row; the keyboard does by its name", async () => {
  const { user, book } = await openPicture();
  await screen.findByRole("img", { name: /The job in one picture/ });
  await user.click(document.querySelector('.rl-turnable [data-row="3"]')!);
  await waitFor(() => expect(book.selected).toMatchObject({ row: 3, column: 0 }));
  await user.selectOptions(screen.getByRole("combobox", { name: "Run" }), "P-2");
  expect(rowsInPicture().at(-1)).toBe("2");
  await user.click(screen.getByRole("button", { name: "Show P-2 in the sheet" }));
  await waitFor(() => expect(book.selected).toMatchObject({ row: 2, column: 0 }));
});

test("an area alone; told apart by what is made", async () => {
  const { user } = await openPicture();
  await user.selectOptions(await screen.findByRole("combobox", { name: "Area" }), "Yard");
  expect(rowsInPicture()).toEqual(["3"]);
  expect(screen.getByText("No two of these runs take the same place.")).toBeTruthy();
  await user.selectOptions(screen.getByRole("combobox", { name: "Told apart by" }), "what is made");
  expect(document.querySelector(".rl-turnable desc")!.textContent).toMatch(/not begun: P-3\.$/);
});

test("a job in which no run says where it begins says how", async () => {
  await openPicture(RUNS.map((cells) => [...cells.slice(0, 5), ""]));
  expect(await screen.findByText(/^No run says where it begins\. Write east, north and up/)).toBeTruthy();
});
