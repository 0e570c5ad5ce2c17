/** Formulas that Excel has lost touch with, and names that would be in the way. */
import { act, screen, waitFor } from "@testing-library/react";
import { asEntered, hasToBeEntered, isLost } from "../../taskpane/workbook/design/spelling";
import { tableName } from "../../taskpane/workbook/plan";
import { FakeBook } from "./support/fakeBook";
import { showPane, showSetUp } from "./support/showPane";

test.each([
  // As files name an add-in's functions (seen in our own files, and in OfficeDev/office-js#6611).
  ["=_xldudf_CONDUIT_JOB_SCHEDULE(Runs[#All])", "=CONDUIT.JOB.SCHEDULE(Runs[#All])"],
  ['=IF(A1="","",_xldudf_CONDUIT_RUN_LENGTH(A1,B1)+1)', '=IF(A1="","",CONDUIT.RUN.LENGTH(A1,B1)+1)'],
  // Implicit intersection: a table's first cell only.
  ["=@CONDUIT.JOB.TAKEOFF(Runs[#All])", "=CONDUIT.JOB.TAKEOFF(Runs[#All])"],
  // What is not ours, or right, stays.
  ["=_xldudf_OTHER_THING(1)", "=_xldudf_OTHER_THING(1)"],
  ["=@CONDUIT.OFFSET.SPACING(A1:A9,30)", "=@CONDUIT.OFFSET.SPACING(A1:A9,30)"],
])("%s is entered as %s", (formula, entered) => {
  expect(asEntered(formula)).toBe(entered);
});

test("only a formula of ours that shows it is lost, or is spelled otherwise, has to be entered", () => {
  expect(["#NAME?", "#BUSY!", "#VALUE!", "#N/A", "P-1"].map(isLost)).toEqual([true, true, false, false, false]);
  expect(hasToBeEntered("=CONDUIT.JOB.CHECKS(Runs[#All])", "#BUSY!")).toBe(true);
  expect(hasToBeEntered("=CONDUIT.JOB.CHECKS(Runs[#All])", "Run")).toBe(false);
  expect(hasToBeEntered("=VLOOKUP(A1,mine)", "#NAME?")).toBe(false);
});

test("a workbook whose formulas are lost is known as set up, and they are written anew; the person's cells are not touched", async () => {
  const { book, user } = await showSetUp();
  const own = book.addSheet("Mine", [["#NAME?", "=VLOOKUP(1,2)", "=_xldudf_CONDUIT_OFFSET_SPACING(6,30,4)"]]);
  const corner = (sheet: string) => String(book.sheet(sheet).at(0, 0));
  const before = Object.fromEntries(["Schedule", "Takeoff", "Checks", "Progress"].map((name) => [name, corner(name)]));
  const put = (sheet: string, text: string) => book.sheet(sheet).put(0, 0, text);
  put("Schedule", before.Schedule!.replace("CONDUIT.JOB.SCHEDULE", "_xldudf_CONDUIT_JOB_SCHEDULE"));
  put("Takeoff", before.Takeoff!.replace("=", "=@"));
  put("Checks", "#NAME?");
  put("Progress", "#BUSY!");
  await act(async () => book.type(own, 4, 4, "x"));

  await screen.findByText(/On Schedule, Takeoff, Checks, Progress Excel has lost touch/);
  expect(screen.queryByRole("button", { name: "Set up" })).toBeNull();
  await user.click(screen.getByRole("button", { name: "Write the formulas anew" }));
  await screen.findByText(/5 formulas are written anew/);
  for (const [sheet, formula] of Object.entries(before)) expect(corner(sheet)).toBe(formula);
  expect([0, 1, 2].map((column) => own.at(0, column))).toEqual([
    ...["#NAME?", "=VLOOKUP(1,2)", "=CONDUIT.OFFSET.SPACING(6,30,4)"],
  ]);
  expect(screen.queryByRole("button", { name: "Write the formulas anew" })).toBeNull();
});

test("a column of Runs that shows #NAME? is offered too", async () => {
  const { book } = await showSetUp();
  const runs = book.sheet("Runs");
  const column = book.cellsOf("Runs")[0]!.indexOf("Check");
  await act(async () => book.type(runs, 1, column, "#NAME?"));
  await screen.findByText(/On Runs Excel has lost touch/);
});

test("a defined name is in a table's way, and the table gets another", async () => {
  const book = new FakeBook();
  book.names.push("runs");
  await showSetUp(book);
  expect(book.table("Runs_2").sheet.name).toBe("Runs 2");
});

test.each([
  ["Job1", "Job1_"],
  ["R1C1", "R1C1_"],
  ["R", "R_"],
  ["c", "c_"],
  ["XFD12", "XFD12_"],
  ["Runs 2026-12-01", "Runs_2026_12_01"],
  ["Runs", "Runs"],
  ["Rack", "Rack"],
])("the table on a sheet %s is called %s: Excel refuses what reads like a cell", (sheet, name) => {
  expect(tableName(sheet)).toBe(name);
});

test("loading with the workbook is offered where Excel can do it", async () => {
  let behavior = "None";
  Object.assign(globalThis, {
    Office: {
      addin: {
        getStartupBehavior: async () => behavior,
        setStartupBehavior: async (next: string) => void (behavior = next),
      },
    },
  });
  try {
    const { user } = await showPane();
    await user.click(await screen.findByRole("checkbox", { name: /whenever this workbook opens/ }));
    await waitFor(() => expect(behavior).toBe("Load"));
  } finally {
    Reflect.deleteProperty(globalThis, "Office");
  }
});
