/** The sheet Overview of a written workbook: a formula, and charts that read the very cells of their part. */
import { strFromU8, unzipSync } from "fflate";
import { makeWorkbook, runsFromCsv } from "../../../workbench/workbook";
import { builtFunctions } from "./demoFile";
import { readWithExcelJs, shownValues } from "./otherReader";

jest.setTimeout(120_000);

const RUNS = `Run,Job,Area,Raceway,Size,Route,Quantity,From,To
A,Quay,Hall,EMT,1/2,"up 20, east 30'",2,Panel 1,Box 1
B,Quay,Yard,RMC,3/4,"up 24, north 60'",1,Panel 1,Box 2
`;

const written = (csv: string, overview = true) =>
  makeWorkbook(runsFromCsv(csv, "runs.csv"), builtFunctions(), { title: "Job", overview, withTickets: false });

/** The chart parts of a file: title, and the ranges their labels and bars come from. */
const chartsOf = (bytes: Uint8Array) =>
  Object.entries(unzipSync(bytes))
    .filter(([name]) => /^xl\/charts\/chart\d+\.xml$/.test(name))
    .map(([, part]) => {
      const xml = strFromU8(part);
      const [labels, bars, ...more] = [...xml.matchAll(/<c:f>([^<]*)<\/c:f>/g)].map(([, range]) => range!);
      if (more.length > 0) throw new Error(`a chart of one series has ${more.length + 2} ranges`);
      return { title: /<a:t>([^<]*)<\/a:t>/.exec(xml)![1]!, kind: /<c:(\w+)Chart>/.exec(xml)![1]!, labels, bars };
    });

test("each part with amounts has a bar chart that reads all its rows and no other's", async () => {
  const { bytes } = await written(RUNS);
  const book = await readWithExcelJs(bytes);
  expect(book.getWorksheet("Overview")!.getCell("A1").formula).toContain("JOB_OVERVIEW");
  const rows = shownValues(book, "Overview").map((row, at) => ({ row: at + 1, part: row[0], amount: row[3] }));
  const withAmounts = rows.filter(({ amount }) => typeof amount === "number");
  const parts = [...new Set(withAmounts.map(({ part }) => String(part)))];
  const charts = chartsOf(bytes);
  // Without prices and minutes: feet by size and area, waste, progress.
  expect(parts).toEqual(["Conduit by size", "Conduit by area", "Waste by size", "Progress"]);
  expect(charts.map(({ title, kind }) => [title, kind])).toEqual([
    ["Conduit by size, ft", "bar"],
    ["Conduit by area, ft", "bar"],
    ["Waste by size, ft", "bar"],
    ["Progress, pieces and bends", "bar"],
  ]);
  for (const [at, name] of parts.entries()) {
    const own = withAmounts.filter(({ part }) => part === name).map(({ row }) => row);
    const range = (column: string) => `'Overview'!$${column}$${Math.min(...own)}:$${column}$${Math.max(...own)}`;
    expect(charts[at]).toMatchObject({ labels: range("B"), bars: range("D") });
    expect(own.length).toBe(Math.max(...own) - Math.min(...own) + 1);
  }
});

test("it is one page when printed, and parts without amounts say why", async () => {
  const book = await readWithExcelJs((await written(RUNS)).bytes);
  expect(book.getWorksheet("Overview")!.pageSetup).toMatchObject({ fitToPage: true, fitToWidth: 1, fitToHeight: 1 });
  const why = shownValues(book, "Overview").filter(([, what]) => what === "nothing yet");
  expect(why.map(([part]) => part)).toEqual(["Material by class", "Price by line", "Hours by crew", "Hours by week"]);
  for (const [, , , amount, note] of why) expect([amount, String(note).length > 20]).toEqual(["", true]);
});

test("without the wish there is no such sheet, and no chart", async () => {
  const { bytes } = await written(RUNS, false);
  expect((await readWithExcelJs(bytes)).worksheets.map(({ name }) => name)).not.toContain("Overview");
  expect(chartsOf(bytes)).toEqual([]);
});
