import { screen, waitFor } from "@testing-library/react";
import { readBench, USUAL_BENCH } from "../../src/shop/bench/bench";
import { readRules, rulesTable } from "../../src/rules/rules";
import { RUN_COLUMNS } from "../../src/shop/run/runsTable";
import { TABS } from "../../taskpane/workbook/items";
import { FakeBook } from "./support/fakeBook";
import { showSetUp } from "./support/showPane";

const LAST_INPUT = RUN_COLUMNS.at(-1)!.name;

test("an empty workbook gets the sheets of the work, in its order, and loses its empty first sheet", async () => {
  const { book } = await showSetUp();
  expect(book.sheets.map(({ name }) => name)).toEqual([
    ...["Runs", "Counts", "Checks", "Schedule", "Set-up", "Cutting plan", "Takeoff", "Bend counts", "Made", "Progress"],
    ...["Shoes", "Bench", "Stock", "Prices", "Allowances", "Labor", "Rules"],
  ]);
  const runs = `Runs[[#All],[Run]:[${LAST_INPUT}]]`;
  expect(book.sheet("Schedule").at(0, 0)).toBe(`=CONDUIT.JOB.SCHEDULE(${runs},Shoes[#All],Rules[#All])`);
  expect(book.sheet("Set-up").at(0, 0)).toBe(`=CONDUIT.JOB.SETUP(${runs},Shoes[#All],Bench[#All],Rules[#All])`);
  expect(book.sheet("Takeoff").at(0, 0)).toBe(
    `=CONDUIT.JOB.TAKEOFF(${runs},Prices[#All],Shoes[#All],,Labor[#All],Rules[#All],Stock[#All],,Counts[#All],,Allowances[#All])`,
  );
  // The rules as they are built in, each with its source, lengths in the pane's unit; what is typed there stays text, a size too.
  const inFeet = ([rule, value, ...rest]: (string | number)[]) => [
    rule,
    rule === "Lengths shown in" ? "feet" : value,
    ...rest,
  ];
  expect(book.cellsOf("Rules")).toEqual(rulesTable(readRules(null)).map(inFeet));
  expect(book.sheet("Rules").columnFormats.get(1)).toBe("@");
  expect(readBench(book.cellsOf("Bench"))).toEqual(USUAL_BENCH);
});

test("input columns stand left, computed columns right, each given no more than it reads; seldom used ones are out of sight", async () => {
  const { book } = await showSetUp();
  const [headers, row] = book.cellsOf("Runs") as [string[], string[]];
  expect(headers.slice(-4)).toEqual(["Length in.", "Bends", "Degrees", "Check"]);
  expect(headers.slice(0, -4).sort()).toEqual(RUN_COLUMNS.map(({ name }) => name).sort());
  const own = (column: string) => `Runs[[#This Row],[${column}]]`;
  expect(row.at(-4)).toBe(
    `=IF(${own("Route")}="","",CONDUIT.RUN.LENGTH(${own("Route")},${own("Raceway")},${own("Size")},` +
      "Shoes[[#All],[Raceway]:[Deduct]],Rules[[#All],[Rule]:[Value]]))",
  );
  expect([...book.sheet("Runs").hiddenColumns].map((place) => headers[place])).toEqual([
    ...["Stick", "Date", "Crew", "Fittings", "Grounding bushing", "Straps", "Start", "Joints", "Rack"],
    ...["Where", "Cover", "Temperature change", "Ambient", "Breaker", "Check pull"],
    ...["Phase", "Floor", "Height", "Alternate", "Typical"],
  ]);
});

test("more sheets are made when they are wanted", async () => {
  const { book, user } = await showSetUp();
  await user.click(await screen.findByRole("button", { name: "Add them" }));
  await waitFor(() => expect(book.sheets.some(({ name }) => name === "Standing")).toBe(true));
  expect(screen.queryByRole("button", { name: "Add them" })).toBeNull();
  expect(book.sheets.map(({ name }) => name)).toEqual(expect.arrayContaining([...TABS]));
});

test("a first sheet with something in it stays", async () => {
  const book = new FakeBook();
  book.sheet("Sheet1").put(4, 2, "mine");
  await showSetUp(book);
  expect(book.sheet("Sheet1").at(4, 2)).toBe("mine");
});

test("a first sheet with a picture and no cell stays", async () => {
  const book = new FakeBook();
  book.sheet("Sheet1").pictures = 1;
  await showSetUp(book);
  expect(book.sheet("Sheet1").pictures).toBe(1);
  expect(book.sheets.map(({ name }) => name)).toContain("Runs");
});

test("sizes are text, so that 1/2 does not become a date, and have a drop-down", async () => {
  const { book } = await showSetUp();
  const runs = book.sheet("Runs");
  const size = book.cellsOf("Runs")[0]?.indexOf("Size") ?? -1;
  expect(runs.columnFormats.get(size)).toBe("@");
  expect(runs.rules.find(({ column }) => column === size)?.rule).toMatchObject({
    list: { source: expect.stringMatching(/^1\/2,3\/4,1,/) },
  });
});

test("a sheet of the person's named Runs stays; another name is offered", async () => {
  const book = new FakeBook();
  book.addSheet("Runs", [["my own"]]);
  await showSetUp(book);
  expect(book.sheet("Runs").at(0, 0)).toBe("my own");
  expect(book.table("Runs_2").sheet.name).toBe("Runs 2");
  expect(book.sheet("Schedule").at(0, 0)).toBe(
    `=CONDUIT.JOB.SCHEDULE(Runs_2[[#All],[Run]:[${LAST_INPUT}]],Shoes[#All],Rules[#All])`,
  );
});
