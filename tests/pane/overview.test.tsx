/** The overview in the pane, and the bid on its way to paper. */
import { screen, waitFor } from "@testing-library/react";
import { showRuns } from "./support/showPane";

let printed: string[] = [];
jest.mock("../../taskpane/tickets/paper/printHtml", () => ({
  printHtml: (html: string) => printed.push(html),
  saveHtml: () => undefined,
}));
beforeEach(() => void (printed = []));

/** Straight, so that feet are those of the routes. */
const RUNS = [
  ["P-1", "Quay", "Hall", "EMT", "1/2", "north 10'", 2],
  ["P-2", "Quay", "Yard", "EMT", "1/2", "north 7'", 1],
  ["P-3", "Quay", "Yard", "RMC", "3/4", "north 5'", 1],
];

async function openOverview() {
  const shown = await showRuns(RUNS, "Totals");
  await shown.user.click(await screen.findByRole("tab", { name: "Overview" }));
  await screen.findByRole("heading", { name: "Conduit by size" });
  return shown;
}

test("feet by size and area are drawn with their numbers; what is not there yet says why", async () => {
  await openOverview();
  // Straight runs: 2 × 10 + 7 = 27 ft of EMT, 20 of them in the Hall; 5 ft of RMC and 7 of EMT in the Yard.
  const words = [...document.querySelectorAll("figure details p")].map(({ textContent }) => textContent);
  expect(words).toContain("EMT 1/2: 27 ft; RMC 3/4: 5 ft.");
  expect(words).toContain("Hall: 20 ft; Yard: 12 ft.");
  expect(screen.getAllByText(/^no hours yet/)).toHaveLength(2);
  expect(screen.getByText(/^no item has a price yet/)).toBeTruthy();
});

test("an order form goes to paper; a recap without a Bid table says what it needs", async () => {
  const { user } = await openOverview();
  await user.click(screen.getByRole("button", { name: "Print or save as PDF" }));
  expect(await screen.findByText(/rests on a Bid table/)).toBeTruthy();
  expect(printed).toEqual([]);
  await user.selectOptions(screen.getByLabelText("What"), "order");
  await user.click(screen.getByRole("button", { name: "Print or save as PDF" }));
  await waitFor(() => expect(printed).toHaveLength(1));
  expect(printed[0]).toContain("<h1>Order form</h1>");
  expect(printed[0]).toContain("EMT 1/2 conduit, 10 ft stick");
  expect(screen.queryByText(/rests on a Bid table/)).toBeNull();
});
