/** The trial of an Excel, over the local page's objects and the built functions: what it finds there, and what it leaves. */
import { join } from "node:path";
import { compareWithGuide, type GuideData } from "../../../taskpane/trial/parts/guide";
import { PARTS } from "../../../taskpane/trial/parts";
import { speedPart } from "../../../taskpane/trial/parts/speed";
import { differences, reportText } from "../../../taskpane/trial/report";
import { runTrial, type PartReport } from "../../../taskpane/trial/runTrial";
import { Canceled, line, type Part } from "../../../taskpane/trial/types";
import type { Book } from "../../../workbench/engine";
import { readBundle } from "../../../workbench/commandLine/readBundle";
import { openOffice } from "../office/openOffice";

jest.setTimeout(300_000);

const functions = readBundle(join(__dirname, "../../../dist"));
const unwatched = { onStep: () => undefined, isCanceled: () => false };
const sheetsOf = (book: Book) => book.sheets().map(({ name }) => name);
const linesOf = (reports: readonly PartReport[], id: string) => reports.find((report) => report.id === id)!.lines;
const HERE = ["Sheet1", "Second sheet"];

test("the local page does all that the guide says, and has its own sheets afterwards", async () => {
  const book = await openOffice(undefined, functions);
  // Large jobs are timed elsewhere.
  const parts = PARTS.map((part) => (part.id.startsWith("speed") ? speedPart(12) : part));
  const reports = await runTrial(parts, unwatched);
  expect(reports.flatMap(({ lines }) => lines.filter(({ verdict }) => verdict === "differs"))).toEqual([]);
  expect(reports.map(({ problem }) => problem).join("")).toBe("");
  expect(reports.map(({ id }) => id)).toEqual(["about", ...parts.map(({ id }) => id), "left"]);
  expect(linesOf(reports, "speed 12").filter(({ found }) => /^\d+\.\d\d s$/.test(found))).toHaveLength(6);
  expect(sheetsOf(book)).toEqual(HERE);
});

const guided = (data: GuideData): Part => ({
  id: "guide",
  title: "A guide of the test's own",
  run: (bench) => compareWithGuide(bench, data),
});

test("what is not as the guide has it is told with both values: a number, an error, a text, a row too many", async () => {
  await openOffice(undefined, functions);
  const wrong: GuideData = {
    tables: [
      {
        name: "Runs",
        rows: [
          ["Run", "Raceway", "Size", "Route"],
          ["A-1", "EMT", "1/2", "up 36, east 60"],
        ],
      },
    ],
    examples: [
      { formula: "=CONDUIT.LENGTH(12)", rows: [[12]] },
      { formula: "=CONDUIT.LENGTH(13)", rows: [[13.0001]] },
      { formula: '=CONDUIT.LENGTH("x")', rows: [[{ e: "#N/A" }]] },
      { formula: "=CONDUIT.LENGTH.TEXT(12)", rows: [["2'"]] },
      { formula: "=ROWS(CONDUIT.JOB.SCHEDULE(Runs[#All]))>1", rows: [[true]] },
      { formula: "=CONDUIT.CUT.PLAN({40})", rows: [["Sticks", "Stick", "Cut", "Left over", "Note", "Drop"]] },
    ],
  };
  const [first, ...others] = linesOf(await runTrial([guided(wrong)], unwatched), "guide");
  expect(first).toMatchObject({ verdict: "differs", found: "2 do" });
  expect(others.filter(({ verdict }) => verdict === "differs").map(({ found }) => found)).toEqual([
    "13; the guide has 13.0001",
    "#VALUE!; the guide has #N/A",
    "1' 0\"; the guide has 2'",
    "Drop to in row 1, column 7; the guide has nothing",
  ]);
});

test("a part that breaks leaves no sheet and stops no other; one that Excel fails says so", async () => {
  const book = await openOffice(undefined, functions);
  const broken: Part = {
    ...{ id: "broken", title: "Breaks" },
    run: async ({ scratch }) => {
      await scratch.enter(0, 0, [["half"]]);
      expect(sheetsOf(book)).toEqual([...HERE, "Trial"]);
      await scratch.resize("no such table", 0, 0, 2, 2);
      return [];
    },
  };
  const fine: Part = { id: "fine", title: "Works", run: async () => [line("all", "yes", "same")] };
  const reports = await runTrial([broken, fine], unwatched);
  expect(reports[1]!.problem).toMatch(/^A sheet or table the pane was using is gone/);
  expect(reports[2]).toMatchObject({ id: "fine", problem: "" });
  expect(differences(reports)).toBe(1);
  expect(reportText(reports, { print: true, save: false }, "9.9")).toMatch(
    /^# Trial of an Excel with Raceway Ledger 9\.9\n[^]*## Breaks \(broken\)\nBROKE OFF: A sheet[^]*ok {2}all\n[^]*printing from the pane: works\n- {2}saving from the pane: nothing came$/,
  );
  expect(sheetsOf(book)).toEqual(HERE);
});

test("canceled half way: the sheet is gone, the parts after it are not run", async () => {
  const book = await openOffice(undefined, functions);
  let isCanceled = false;
  const long: Part = {
    ...{ id: "long", title: "Takes its time" },
    run: async ({ scratch, step, until }) => {
      await scratch.enter(0, 0, [["half"]]);
      isCanceled = true;
      expect(() => step("goes on")).toThrow(Canceled);
      await until(async () => undefined);
      return [];
    },
  };
  const reports = await runTrial([long, long], { onStep: () => undefined, isCanceled: () => isCanceled });
  expect(reports.map(({ id, problem }) => [id, problem])).toEqual([["about", ""], ["long", "canceled"], ["left", ""]]); // prettier-ignore
  expect(sheetsOf(book)).toEqual(HERE);
});

test("a sheet and tables of the person's that are called as the trial's stay as they are", async () => {
  const book = await openOffice(undefined, functions);
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add("Trial");
    sheet.getRange("A1:A2").formulas = [["Mine"], ["kept"]];
    sheet.tables.add(sheet.getRange("A1:A2"), true).name = "TrialRuns";
    await context.sync();
  });
  const tablesPart = PARTS.filter(({ id }) => id === "tables");
  const reports = await runTrial(tablesPart, unwatched);
  expect(linesOf(reports, "tables").filter(({ verdict }) => verdict === "differs")).toEqual([]);
  expect(linesOf(reports, "left")).toEqual([expect.objectContaining({ verdict: "same" })]);
  expect(sheetsOf(book)).toEqual([...HERE, "Trial"]);
  expect(book.range("Trial!A1:A2").values).toEqual([["Mine"], ["kept"]]);
});

test("what is left over is told", async () => {
  await openOffice(undefined, functions);
  const careless: Part = {
    ...{ id: "careless", title: "Leaves something" },
    run: async () => {
      await Excel.run(async (context) => {
        context.workbook.worksheets.add("Forgotten");
        await context.sync();
      });
      return [];
    },
  };
  expect(linesOf(await runTrial([careless], unwatched), "left")).toEqual([
    expect.objectContaining({ found: "left over: Forgotten", verdict: "differs" }),
  ]);
});
