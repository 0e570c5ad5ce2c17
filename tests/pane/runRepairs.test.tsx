/** Things a person at the run builder does by keyboard, by pointer and by mistake. */
import { fireEvent, screen, waitFor } from "@testing-library/react";
import { showRuns } from "./support/showPane";

const RUN = ["P-1", "Quay", "Hall", "EMT", "1/2", "up 20, east 40, north 30", 2];

async function openRun() {
  const { sheet, ...shown } = await showRuns([RUN], "A run");
  await screen.findByRole("textbox", { name: "Step 1" });
  const column = (name: string) =>
    Array.from({ length: 30 }, (_, place) => place).find((place) => sheet.at(0, place) === name)!;
  const cell = (name: string, row = 1) => sheet.at(row, column(name));
  return { ...shown, sheet, cell };
}
const step = (number: number) => screen.getByRole<HTMLInputElement>("textbox", { name: `Step ${number}` });

test("a removed step comes back to its place, with the focus in it", async () => {
  const { user, cell } = await openRun();
  await user.click(screen.getByRole("button", { name: "Remove step 2" }));
  await waitFor(() => expect(cell("Route")).toBe("up 20, north 30"));
  await user.click(screen.getByRole("button", { name: "Take back" }));
  await waitFor(() => expect(cell("Route")).toBe("up 20, east 40, north 30"));
  await waitFor(() => expect(document.activeElement).toBe(step(2)));
  expect(screen.queryByText("Step 2 is removed.")).toBeNull();
});

test("after another change the removal is no more to be taken back: it would undo that too", async () => {
  const { user, cell } = await openRun();
  await user.click(screen.getByRole("button", { name: "Remove step 2" }));
  await screen.findByText("Step 2 is removed.");
  await user.type(step(1), "{Control>}a{/Control}{Backspace}up 24{Enter}");
  await waitFor(() => expect(cell("Route")).toBe("up 24, north 30"));
  expect(screen.queryByText("Step 2 is removed.")).toBeNull();
});

test("Escape brings back what stood in a step", async () => {
  const { user, cell } = await openRun();
  await user.type(step(2), " and more");
  expect(step(2).value).toBe("east 40 and more");
  await user.keyboard("{Escape}");
  expect(step(2).value).toBe("east 40");
  await user.tab();
  expect(cell("Route")).toBe("up 20, east 40, north 30");
});

test("a step is inserted before another one", async () => {
  const { user, cell } = await openRun();
  await user.click(screen.getByRole("button", { name: "Insert a step before step 2" }));
  await waitFor(() => expect(cell("Route")).toBe("up 20, up 4', east 40, north 30"));
  expect(document.activeElement).toBe(step(2));
});

test("area and ends, among what is seldom looked at, are written to the run's row", async () => {
  const { user, cell } = await openRun();
  await user.click(screen.getByText("Area, ends, conductors, date, crew"));
  await user.type(screen.getByRole("textbox", { name: "To" }), "Box 7{Enter}");
  await user.type(screen.getByRole("textbox", { name: "From" }), "Panel A{Enter}");
  await waitFor(() => expect([cell("To"), cell("From"), cell("Area")]).toEqual(["Box 7", "Panel A", "Hall"]));
});

test("a copy of a run has all its cells but the name", async () => {
  const { user, cell } = await openRun();
  await user.click(screen.getByRole("button", { name: "Copy of this run" }));
  await waitFor(() => expect(cell("Route", 2)).toBe("up 20, east 40, north 30"));
  expect([cell("Job", 2), cell("Area", 2), cell("Size", 2), Number(cell("Quantity", 2))]).toEqual([
    ...["Quay", "Hall", "1/2", 2],
  ]);
  expect(cell("Run", 2)).not.toBe("P-1");
  expect(cell("Run", 1)).toBe("P-1");
});

test("pointing at a bend in the drawing leads to its step", async () => {
  await openRun();
  const numbers = [...document.querySelectorAll(".rl-turnable circle + text")];
  const second = numbers.find(({ textContent }) => textContent === "2")!;
  fireEvent.click(second.previousElementSibling!);
  await waitFor(() => expect(document.activeElement).toBe(step(3)));
});

test("the pane has one heading of its own and one main part", async () => {
  await openRun();
  expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("Raceway Ledger");
  expect(screen.getByRole("main")).toBeTruthy();
  expect(screen.getAllByRole("tabpanel").length).toBeGreaterThan(0);
});

test("a bend that is added keeps what leads up to it, and its fractions as they were typed", async () => {
  const { user, cell } = await openRun();
  await user.click(screen.getByRole("tab", { name: "A bend" }));
  await user.click(await screen.findByRole("radio", { name: "Offset" }));
  const rise = screen.getByRole("textbox", { name: "Rise" });
  await user.clear(rise);
  await user.type(rise, "5-1/2");
  await user.click(screen.getByRole("button", { name: /^Add to / }));
  await waitFor(() =>
    expect(cell("Route")).toBe("up 20, east 40, north 30, ahead 3', offset 5-1/2 up at 30, ahead 3'"),
  );
  await user.click(await screen.findByRole("button", { name: "Take back" }));
  await waitFor(() => expect(cell("Route")).toBe("up 20, east 40, north 30"));
  expect(document.activeElement?.textContent).toMatch(/^Add to /);
});
