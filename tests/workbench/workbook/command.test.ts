/** The words of the command line that writes a workbook, each held against the tickets that come of it. */
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { main, readCsv } from "../../../workbench/workbook/command";
import { readWithExcelJs, shownValues } from "./otherReader";

jest.setTimeout(300_000);

const bundle = join(__dirname, "../../../dist");
let folder: string;
let told: string[];

/** Bent pieces but C-3; only A-1 stands in Made, only B-2 was issued otherwise. */
const RUNS = `Run,Job,Area,Raceway,Size,Route,Quantity,Crew,Date
A-1,Quay,Hall,EMT,1/2,"up 20, east 30",1,Ida,2026-05-04
B-2,Quay,Yard,EMT,3/4,"up 24, north 30",1,Olu,2026-05-05
C-3,Quay,Yard,EMT,1/2,east 60,1,Ida,2026-05-05
`;
const files = {
  "runs.csv": RUNS,
  "issued.csv": RUNS.replace("up 24", "up 23"),
  "made.csv": "Date,Piece,Good\n2026-05-06,A-1/1,1\n",
};

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "workbook-"));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  told = [];
  for (const stream of [process.stdout, process.stderr])
    jest.spyOn(stream, "write").mockImplementation((words) => (told.push(String(words)), true));
});
afterEach(() => {
  jest.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

const at = (name: string): string => join(folder, name);
/** Runs the command; a word that names a file of this folder leads to it. */
const run = (...words: string[]) =>
  main(
    words.map((word) => (word in files || word.endsWith(".xlsx") ? at(word) : word)),
    { bundle },
  );

const written = () => readWithExcelJs(readFileSync(at("job.xlsx")));

/** Runs that have a ticket in the workbook, in their order. */
const tickets = async (): Promise<string[]> =>
  shownValues(await written(), "Tickets").flatMap(
    ([first]) => /^(\S+) piece 1 of 1, make 1$/.exec(String(first))?.[1] ?? [],
  );

test.each([
  ["bent pieces alone when nothing is said", [], ["A-1", "B-2"]],
  ["straight ones too", ["--straight"], ["A-1", "B-2", "C-3"]],
  ["an area", ["--area", "Yard"], ["B-2"]],
  ["a crew", ["--crew=Ida"], ["A-1"]],
  ["a day", ["--date", "2026-05-05", "--straight"], ["B-2", "C-3"]],
  ["a conduit", ["--conduit", "EMT 3/4"], ["B-2"]],
  ["two wishes at once", ["--crew", "Ida", "--area", "Yard", "--straight"], ["C-3"]],
  ["what is not yet made", ["--made", "made.csv"], ["B-2"]],
  ["what changed since an issue", ["--changed", "issued.csv"], ["B-2"]],
])("tickets of %s", async (_, words, wanted) => {
  expect(await run(...words, "--plain", "runs.csv", "job.xlsx")).toBe(0);
  expect(await tickets()).toEqual(wanted);
});

test("stickers when they are asked for, files of each sheet only when asked for", async () => {
  const sheetNames = async () => (await written()).worksheets.map(({ name }) => name);
  expect(await run("--plain", "runs.csv", "job.xlsx")).toBe(0);
  expect(await sheetNames()).not.toContain("Stickers");
  expect(existsSync(at("job-Runs.csv"))).toBe(false);
  expect(await run("--plain", "--csv", "--stickers", "runs.csv", "job.xlsx")).toBe(0);
  expect(await sheetNames()).toContain("Stickers");
  expect(readCsv(readFileSync(at("job-Runs.csv"), "utf8")).slice(1, 4).map(([name]) => name)).toEqual(["A-1", "B-2", "C-3"]); // prettier-ignore
  expect(told.join("")).toMatch(/job\.xlsx: 3 runs, \d+ rows of results\./);
});

test("a workbook offers the pane of the add-in only when it is asked to", async () => {
  const addIn = { id: "11111111-2222-4333-8444-555555555555", version: "7.8.9" };
  const parts = async (...words: string[]) => {
    expect(await main([...words, at("runs.csv"), at("job.xlsx")], { bundle, addIn })).toBe(0);
    return Object.keys(unzipSync(readFileSync(at("job.xlsx")))).filter((name) => name.includes("webextension"));
  };
  expect(await parts("--offer-pane")).toHaveLength(3);
  expect(await parts()).toEqual([]);
});

test.each([
  [
    "an option there is not",
    ["--color", "runs.csv", "job.xlsx"],
    /Unknown option '--color'[^]*usage: npm run workbook/,
  ],
  ["an option without its value", ["runs.csv", "job.xlsx", "--area"], /--area[^]*argument missing[^]*usage:/],
  ["a value for what takes none", ["--plain=no", "runs.csv", "job.xlsx"], /--plain[^]*does not take an argument/],
  [
    "the pane for a file without its formulas",
    ["--offer-pane", "--plain", "runs.csv", "job.xlsx"],
    /--offer-pane is for live formulas/,
  ],
  ["no files", [], /usage: npm run workbook/],
  ["three files", ["runs.csv", "made.csv", "job.xlsx"], /usage:/],
  ["a second file that is no workbook", ["runs.csv", "made.csv"], /must end in \.xlsx; got .*made\.csv/],
  ["a file that is not there", ["--made", "gone.csv", "runs.csv", "job.xlsx"], /gone\.csv/],
])("%s is told with exit code 2, and nothing is written", async (_, words, message) => {
  expect(await run(...words)).toBe(2);
  expect(told.join("")).toMatch(message);
  expect(existsSync(at("job.xlsx"))).toBe(false);
});
