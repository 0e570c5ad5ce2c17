import { screen } from "@testing-library/react";
import { readBench, USUAL_BENCH } from "../../src/shop/bench/bench";
import { readRules, rulesTable } from "../../src/rules/rules";
import { FakeBook } from "./support/fakeBook";
import { showPane } from "./support/showPane";

const pressSetUp = async (book?: FakeBook) => {
  const shown = await showPane(book);
  await shown.user.click(await screen.findByRole("button", { name: "Set up" }));
  await screen.findByText(/This workbook is set up/);
  return shown;
};

test("an empty workbook gets seven tables and six result sheets", async () => {
  const { book } = await pressSetUp();
  expect(book.tables.map(({ name }) => name)).toEqual(["Runs", "Shoes", "Stock", "Prices", "Labor", "Rules", "Bench"]);
  expect(book.sheets.map(({ name }) => name)).toEqual([
    "Sheet1",
    "Runs",
    "Shoes",
    "Stock",
    "Prices",
    "Labor",
    "Rules",
    "Bench",
    "Schedule",
    "Set-up",
    "Takeoff",
    "Bend counts",
    "Checks",
    "Cutting plan",
  ]);
  expect(book.sheet("Schedule").at(0, 0)).toBe("=CONDUIT.JOB.SCHEDULE(Runs[#All],Shoes[#All],Rules[#All])");
  expect(book.sheet("Set-up").at(0, 0)).toBe("=CONDUIT.JOB.SETUP(Runs[#All],Shoes[#All],Bench[#All],Rules[#All])");
  expect(book.sheet("Takeoff").at(0, 0)).toBe(
    "=CONDUIT.JOB.TAKEOFF(Runs[#All],Prices[#All],Shoes[#All],,Labor[#All],Rules[#All],Stock[#All])",
  );
  expect(book.cellsOf("Runs")[1]!.at(-1)).toBe('=IF(F2="","",CONDUIT.RUN.CHECK(F2,D2,E2,Shoes[#All],,Rules[#All]))');
  // The rules as they are built in, each with its source; a size among them is text.
  expect(book.cellsOf("Rules")).toEqual(rulesTable(readRules(null)));
  const sized = book.cellsOf("Rules").findIndex(([rule]) => rule === "Factory elbows above size, metal");
  expect([book.sheet("Rules").formats.get(`${sized},1`), book.sheet("Rules").formats.get("1,1")]).toEqual([
    "@",
    "General",
  ]);
  expect(readBench(book.cellsOf("Bench"))).toEqual(USUAL_BENCH);
});

test("sizes are text, so that 1/2 does not become a date, and have a drop-down", async () => {
  const { book } = await pressSetUp();
  const runs = book.sheet("Runs");
  const size = book.cellsOf("Runs")[0]?.indexOf("Size") ?? -1;
  expect(runs.formats.get(`1,${size}`)).toBe("@");
  expect(runs.rules.find(({ column }) => column === size)?.rule).toMatchObject({
    list: { source: expect.stringMatching(/^1\/2,3\/4,1,/) },
  });
});

test("a sheet of the person's named Runs stays; another name is offered", async () => {
  const book = new FakeBook();
  book.addSheet("Runs", [["my own"]]);
  await pressSetUp(book);
  expect(book.sheet("Runs").at(0, 0)).toBe("my own");
  expect(book.table("Runs_2").sheet.name).toBe("Runs 2");
  expect(book.sheet("Schedule").at(0, 0)).toBe("=CONDUIT.JOB.SCHEDULE(Runs_2[#All],Shoes[#All],Rules[#All])");
});
