import { act, screen, waitFor, within } from "@testing-library/react";
import type { CutJob } from "../../taskpane/totals/cuts/cutJob";
import type { CutResult, CutSoFar } from "../../taskpane/totals/cuts/cutWork";
import type { FakeBook } from "./support/fakeBook";
import { showRuns } from "./support/showPane";

/** The worker's part, played here one step at a time. */
let planning: { step(): boolean; canceled: boolean };
jest.mock("../../taskpane/totals/cuts/planInWorker", () => ({
  planInWorker: (job: CutJob, onProgress: (soFar: CutSoFar) => void) => {
    const { planJobInSteps } = jest.requireActual<typeof import("../../taskpane/totals/cuts/cutWork")>(
      "../../taskpane/totals/cuts/cutWork",
    );
    const steps = planJobInSteps(job);
    let finish: (result: CutResult) => void = () => undefined;
    const result = new Promise<CutResult>((resolve) => (finish = resolve));
    planning = {
      canceled: false,
      step: () => {
        const step = steps.next();
        if (step.done) finish(step.value);
        else onProgress(step.value);
        return !step.done;
      },
    };
    return { result, cancel: () => (planning.canceled = true) };
  },
}));

/** Three runs: sticks and straps of the first two add up. */
const RUNS = [
  ["P-1", "Quay", "Hall", "EMT", "1/2", "up 4', east 6'", 2],
  ["P-2", "Quay", "Hall", "EMT", "1/2", "north 7'", 1],
  ["P-3", "Quay", "Yard", "RMC", "3/4", "north 5', offset 6 up at 30, ahead 4'", 1],
];

async function openTotals(part: string) {
  const shown = await showRuns(RUNS, "Totals");
  await shown.user.click(await screen.findByRole("tab", { name: part }));
  return shown;
}

test("a line of the take-off opens to the runs behind it, and a run leads to its row", async () => {
  const { book, user } = await openTotals("Take-off");
  await user.click(await screen.findByRole("button", { name: "EMT 1/2 bend" }));
  const behind = screen.getByRole("list", { name: "Runs behind EMT 1/2 bend" });
  expect(behind.textContent).toBe("P-1 1 × 2 = 2");
  await user.click(within(behind).getByRole("button", { name: "P-1" }));
  await waitFor(() => expect(book.selected).toMatchObject({ row: 1, column: 0 }));
});

/** Fills a table's rows below its header and tells the pane. */
async function fill(book: FakeBook, name: string, rows: (string | number)[][]) {
  const { sheet } = book.table(name);
  rows.forEach((cells, row) => cells.forEach((cell, column) => sheet.put(row + 1, column, cell)));
  book.table(name).rows = rows.length + 1;
  await act(async () => book.type(sheet, 1, 0, rows[0]![0]!));
}

/** Waits until a line of the take-off has these cells: the pane reads a change a moment later. */
const line = (item: RegExp, cells: string[]) =>
  waitFor(() =>
    expect(
      within(screen.getByRole("row", { name: item }))
        .getAllByRole("cell")
        .map(({ textContent }) => textContent),
    ).toEqual(cells),
  );

test("prices, minutes and the stock of the workbook are in the take-off and its total", async () => {
  const { book } = await openTotals("Take-off");
  expect(screen.queryByText("Total")).toBeNull();
  await fill(book, "Prices", [["EMT 1/2 strap", "each", 0.5]]);
  await fill(book, "Labor", [["bend", 6]]);
  await fill(book, "Stock", [["EMT", "1/2", 120, "", 8], ["EMT", "1/2", 119, 2, ""]]); // prettier-ignore
  // P-1 twice 118.3 in. and P-2's 84: the offcuts take the long ones, one stick is bought at 8. Straps: 2 × 2 and 2.
  await line(/^EMT 1\/2 conduit, 10 ft stick/, ["1 each", "8.00", ""]);
  await line(/^EMT 1\/2 strap/, ["6 each", "3.00", ""]);
  await line(/^EMT 1\/2 bend/, ["2 each", "", "0.20"]);
  await line(/^EMT 1\/2 set-screw connector/, ["6 each", "no price", ""]);
  // 8 + 3, and four bends of 6 minutes: two of P-1 and the offset of P-3.
  expect(document.querySelector(".rl-total")?.textContent).toMatch(/^Total 11.00 · 0.4 h/);
  expect(screen.getByText(/^no price for .*EMT 1\/2 set-screw connector/)).toBeTruthy();
});

test("what has no price or minutes is put into the lists, once, and waits there; a misspelled row is told", async () => {
  const { book, user } = await openTotals("Take-off");
  await fill(book, "Prices", [["EMT 1/2 srtap", "each", 0.5]]);
  await fill(book, "Labor", [["bend", 6]]);
  expect(
    await screen.findByText(/Prices: "EMT 1\/2 srtap" matches nothing. Did you mean "EMT 1\/2 strap"\?/),
  ).toBeTruthy();
  await user.click(await screen.findByRole("button", { name: "List what is missing" }));
  expect(await screen.findByText(/^Added, ready to fill in: \d+ rows for Prices, \d+ rows for Labor\.$/)).toBeTruthy();
  const items = book.cellsOf("Prices").map(([item]) => item);
  expect(items.slice(0, 3)).toEqual(["Item", "EMT 1/2 srtap", "EMT 1/2 conduit, 10 ft stick"]);
  expect(items).toContain("EMT 1/2 strap");
  expect(new Set(items).size).toBe(items.length);
  expect(book.cellsOf("Labor").map(([operation]) => operation)).toEqual(
    expect.arrayContaining(["bend", "EMT 1/2 conduit", "EMT 1/2 connector", "RMC 3/4 strap"]),
  );
  await waitFor(() => expect(screen.queryByRole("button", { name: "List what is missing" })).toBeNull());
  await line(/^EMT 1\/2 strap/, ["6 each", "no price", ""]);
});

test("a changed rule shows in the take-off, its trace and the cutting plan", async () => {
  const { book, user } = await openTotals("Take-off");
  const { sheet } = book.table("Rules");
  const rows = book.cellsOf("Rules");
  const rule = rows.findIndex(([name]) => name === "Straps per support");
  await line(/^EMT 1\/2 strap/, ["6 each"]);
  await act(async () => book.type(sheet, rule, 1, 3));
  await line(/^EMT 1\/2 strap/, ["18 each"]);
  await user.click(screen.getByRole("button", { name: "EMT 1/2 strap" }));
  expect(screen.getByRole("list", { name: "Runs behind EMT 1/2 strap" }).textContent).toBe(
    "P-1 6 × 2 = 12P-2 6 × 1 = 6",
  );
  await act(async () => book.type(sheet, rule, 1, "many"));
  expect(await screen.findByText(/"Straps per support" must be a number/)).toBeTruthy();
});

/** The cells of each heading in the take-off. */
const headings = () =>
  [...document.querySelectorAll<HTMLTableRowElement>(".rl-group")].map(({ cells }) =>
    [...cells].map(({ textContent }) => textContent),
  );

test("each raceway and size has a heading with what its lines come to; the headings come to the total", async () => {
  const { book } = await openTotals("Take-off");
  expect(headings().slice(0, 2)).toEqual([["EMT 1/2"], ["RMC 3/4"]]);
  await fill(book, "Prices", [["EMT 1/2 strap", "each", 0.5], ["RMC 3/4 strap", "each", 0.75]]); // prettier-ignore
  await fill(book, "Labor", [["bend", 6]]);
  await line(/^EMT 1\/2 strap/, ["6 each", "3.00", ""]);
  // Six straps at 0.5, two at 0.75; two bends of P-1 and the two of P-3's offset at 6 minutes.
  const [emt, rmc] = headings();
  expect([emt!.slice(1), rmc!.slice(1)]).toEqual([
    ["3.00", "0.20"],
    ["1.50", "0.20"],
  ]);
  expect(emt![0]).toMatch(/^EMT 1\/2\d+ lines without a price or minutes$/);
  expect(document.querySelector(".rl-total")?.textContent).toMatch(/^Total 4.50 · 0.4 h/);
});

test("the take-off in groups has a heading for each, and a line opens to the runs of its group", async () => {
  const { user } = await openTotals("Take-off");
  await user.selectOptions(screen.getByRole("combobox", { name: "Group by" }), "Area");
  expect(headings()).toEqual([["Hall"], ["Yard"]]);
  await user.click(screen.getByRole("button", { name: "RMC 3/4 bend" }));
  expect(screen.getByRole("list", { name: "Runs behind RMC 3/4 bend" }).textContent).toBe("P-3 2 × 1 = 2");
});

test("groups of two columns add up to the total, and a share of the sticks opens to the runs of the whole order", async () => {
  const { book, user, sheet } = await openTotals("Take-off");
  await fill(book, "Prices", [
    ["EMT 1/2 conduit, 10 ft stick", "each", 6],
    ["RMC 3/4 conduit, 10 ft stick", "each", 30],
  ]);
  await act(async () => book.type(sheet, 2, 2, "Yard"));
  await user.selectOptions(screen.getByRole("combobox", { name: "Group by" }), "Area, Phase");
  await waitFor(() => expect(headings().map(([heading]) => heading?.slice(0, 4))).toEqual(["Hall", "Yard"]));
  // Three EMT sticks, two RMC: 78.00 in all. Of the EMT 20 ft less two gains are in the hall, 7 ft in the yard.
  const sumsOf = () => headings().map(([, money]) => Number(money));
  // The pane reads the prices a moment after the groups.
  await waitFor(() => expect(sumsOf()[0]! + sumsOf()[1]!).toBeCloseTo(78, 9));
  const sums = sumsOf();
  expect(sums[0]).toBeGreaterThan(13.2);
  expect(sums[0]).toBeLessThan(13.4);
  await user.click(screen.getAllByRole("button", { name: "EMT 1/2 conduit, 10 ft stick" })[0]!);
  expect(screen.getByText(/A share of the whole job's/)).toBeTruthy();
  expect(screen.getByRole("list", { name: "Runs behind EMT 1/2 conduit, 10 ft stick" }).textContent).toBe(
    "P-1P-2 3 × 1 = 3",
  );
});

test("bends are counted as the person asks, in words too", async () => {
  const { user } = await openTotals("Bends");
  const words = () => document.querySelector(".rl-figure desc")?.textContent;
  expect(words()).toMatch(/stub-up.*2/);
  await user.selectOptions(screen.getByRole("combobox", { name: "Count by" }), "Area");
  expect(words()).toMatch(/Hall\D*2.*Yard\D*2/);
});

test("a cutting plan tells how far it is, then its proof and its sticks", async () => {
  const { user } = await openTotals("Cuts");
  await user.click(await screen.findByRole("button", { name: "Plan the cuts" }));
  act(() => void planning.step());
  expect(screen.getByRole("progressbar", { name: "Cutting plan" })).toBeTruthy();
  expect(screen.getByText("Planning EMT 1/2, 1 of 2…")).toBeTruthy();
  await act(async () => {
    while (planning.step());
  });
  // Three sticks of EMT. The RMC takes two: 60 + 12 + 48 in. less the gain of two 30° bends is over the 119-1/4 in. that a
  // threaded 3/4 stick has without its coupling (ANSI C80.1).
  expect(screen.getByText("All together:").parentElement?.textContent).toMatch(/5 sticks to buy; proven least/);
  // By hand: two pieces of 10 ft less the gain of a 90 do not go into one stick, nor either with the 7 ft one.
  expect((await screen.findByText(/3 sticks to buy/)).textContent).toMatch(/proven least/);
  expect(screen.queryByRole("progressbar")).toBeNull();
});

test("a plan can be canceled, and one that the sheet has left behind says so", async () => {
  const { book, user, sheet } = await openTotals("Cuts");
  await user.click(await screen.findByRole("button", { name: "Plan the cuts" }));
  await user.click(screen.getByRole("button", { name: "Cancel" }));
  expect(planning.canceled).toBe(true);
  await user.click(screen.getByRole("button", { name: "Plan the cuts" }));
  await act(async () => {
    while (planning.step());
  });
  await screen.findByRole("button", { name: "Plan again" });
  expect(screen.queryByText(/has changed since this plan/)).toBeNull();
  await act(async () => book.type(sheet, 1, 6, 5));
  expect(await screen.findByText(/has changed since this plan/)).toBeTruthy();
});

test("a snapshot keeps the runs as they are, and changes are told with their difference", async () => {
  const { book, user, sheet } = await openTotals("Changes");
  const onSheet = book.active.name;
  await user.click(await screen.findByRole("button", { name: "Take a snapshot" }));
  await screen.findByText(/^Nothing has changed since/);
  const [copy, counts] = book.tables.slice(-2);
  expect(book.active.name).toBe(onSheet);
  expect(copy?.sheet.name).toMatch(/^Runs \d{4}-\d\d-\d\d$/);
  expect(counts?.sheet.name).toMatch(/^Counts \d{4}-\d\d-\d\d$/);
  expect(book.settings.get("raceway-ledger.snapshots")).toMatchObject([{ table: copy?.name, counts: counts?.name }]);
  await act(async () => book.type(sheet, 1, 6, 3));
  const line = await screen.findByRole("row", { name: /^EMT 1\/2 bend/ });
  expect(
    within(line)
      .getAllByRole("cell")
      .map(({ textContent }) => textContent),
  ).toEqual(["2", "3", "+1"]);
});

test("the drops of a plan go into Stock as on hand, what it used comes off, and both can be taken back", async () => {
  const { book, user } = await openTotals("Take-off");
  await fill(book, "Stock", [["EMT", "1/2", 120, "", 8], ["EMT", "1/2", 119, 3, ""]]); // prettier-ignore
  await line(/^EMT 1\/2 conduit, 10 ft stick/, ["0 each"]);
  await user.click(screen.getByRole("tab", { name: "Cuts" }));
  const before = book.cellsOf("Stock");
  await user.click(await screen.findByRole("button", { name: "Plan the cuts" }));
  await act(async () => {
    while (planning.step());
  });
  // Three EMT pieces, two of 118.3 in. and one of 84 in., come from the three of 119: one drop of 34-15/16 is kept. The
  // RMC has a pup of a foot from a stick of its own, of which the rest is kept.
  await screen.findByText(/When all of it is cut: 3 sticks on hand off Stock, 2 drops into it/);
  await user.click(screen.getByRole("button", { name: "Put the drops into Stock" }));
  await screen.findByText("Stock now holds what this plan leaves on hand.");
  const rows = book.cellsOf("Stock").slice(1);
  expect(rows[0]).toEqual(before[1]);
  expect(rows[1]!.join("")).toBe("");
  expect(rows[2]).toEqual(["EMT", "1/2", 34.9375, 1, "", "drop 1"]);
  expect(rows[3]!.slice(0, 2)).toEqual(["RMC", "3/4"]);
  await user.click(screen.getByRole("button", { name: "Take back" }));
  await screen.findByRole("button", { name: "Put the drops into Stock" });
  const back = book.cellsOf("Stock");
  expect(back.slice(0, 3)).toEqual(before);
  expect(back.slice(3).flat().join("")).toBe("");
});

test("couplings that would save sticks are told with what they save, go into Joints, and can be taken back", async () => {
  const { book, user } = await openTotals("Take-off");
  await fill(book, "Stock", [["EMT", "1/2", 120, "", 10]]);
  await fill(book, "Prices", [["EMT 1/2 set-screw coupling", "each", 1.5]]);
  // Each run of 190 in. takes a whole stick and 70 in. of another.
  await fill(book, "Runs", [
    ["A", "Quay", "Hall", "EMT", "1/2", "east 190", 1],
    ["B", "Quay", "Hall", "EMT", "1/2", "east 190", 1],
    ["C", "Quay", "Hall", "EMT", "1/2", "east 190", 1],
  ]);
  await line(/^EMT 1\/2 conduit, 10 ft stick/, ["6 each", "60.00"]);
  await user.click(screen.getByRole("tab", { name: "Cuts" }));
  await user.click(await screen.findByRole("button", { name: "Plan the cuts" }));
  await act(async () => {
    while (planning.step());
  });
  // Of the three pieces of 70 in. two sit beside 50 in. each: the third, parted once, fills both. 10 less 1.5 is saved.
  expect(
    (await screen.findByText(/1 stick less for 1 coupling more, 8.50 saved: . joined at/)).textContent,
  ).toBeTruthy();
  const before = book.cellsOf("Runs");
  const column = before[0]!.indexOf("Joints");
  expect(book.table("Runs").sheet.hiddenColumns.has(column)).toBe(true);
  await user.click(screen.getByRole("button", { name: "Write these into Joints" }));
  await screen.findByText(/The runs are coupled so now/);
  const joints = book.cellsOf("Runs").slice(1).map((row) => row[column]); // prettier-ignore
  expect(joints.filter((cell) => cell !== "")).toEqual([expect.stringMatching(/^10' 0", 1\d' /)]);
  expect(book.table("Runs").sheet.hiddenColumns.has(column)).toBe(false);
  await user.click(screen.getByRole("button", { name: "Plan again" }));
  await act(async () => {
    while (planning.step());
  });
  expect((await screen.findByText(/5 sticks to buy/)).textContent).toMatch(/proven least/);
  await user.click(screen.getByRole("button", { name: "Take back" }));
  await waitFor(() => expect(book.cellsOf("Runs")).toEqual(before));
});
