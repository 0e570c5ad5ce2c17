/** Many workbooks at once: what is read, what is told of stale and broken ones, and that none hides another. */
import { createHash } from "node:crypto";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { version } from "../../../package.json";
import { main } from "../../../workbench/portfolio/command";
import { progressWords } from "../../../workbench/portfolio/progress";
import { readInThreads } from "../../../workbench/portfolio/threads";
import { readCsv } from "../../../workbench/workbook";
import { editedByHand, jobWorkbook } from "./folder";

jest.setTimeout(300_000);

const dist = join(__dirname, "../../../dist");
const built = { bundle: dist, script: join(dist, "tools/portfolioThread.cjs") };

/**
 * Two runs of 25 ft: 50 ft, and of each a piece of 5 ft. The saw takes its kerf, so two of 5 ft do not come from one stick
 * of 10 ft: 3 sticks a run. 4.5 hours for 100 ft are 2.25.
 */
const RUN = { Run: "A", Job: "Quay", Raceway: "EMT", Size: "1/2", Route: "east 25'", Quantity: 2 };
const LABOR = [{ Operation: "EMT 1/2 conduit", Hours: 4.5, Unit: "C ft" }];

let folder: string;
let out: string;
let told: string;
let good: Uint8Array;

beforeAll(async () => {
  good = await jobWorkbook({ Runs: [RUN], Labor: LABOR });
});
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "portfolio-"));
  out = join(folder, "..", `${folder.split("-").at(-1)}-out`);
  told = "";
  for (const stream of [process.stdout, process.stderr])
    jest.spyOn(stream, "write").mockImplementation((words) => ((told += String(words)), true));
});
afterEach(() => {
  jest.restoreAllMocks();
  for (const made of [folder, out]) rmSync(made, { recursive: true, force: true });
});

const put = (name: string, bytes: Uint8Array | string): void => writeFileSync(join(folder, name), bytes);
const run = (...words: string[]): Promise<number> => main([folder, out, ...words], built);
/** A written file as records. */
function written(name: string): Record<string, string>[] {
  const [header, ...rows] = readCsv(readFileSync(join(out, `${name}.csv`), "utf8"));
  return rows.map((row) => Object.fromEntries(header!.map((column, place) => [column, row[place] ?? ""])));
}
const quantity = (file: string, item: string, issue = "now"): number[] =>
  written("items")
    .filter((line) => line.File === file && line.Item === item && line.Issue === issue)
    .map((line) => Number(line.Quantity));

test("a good, a stale and a broken workbook: all are told of, and the broken one hides none", async () => {
  put("a good.xlsx", good);
  // Somebody made the run 35 ft long in a program that does not know the functions: the results are those of 25 ft.
  mkdirSync(join(folder, "older"));
  put("older/stale.xlsx", editedByHand(good, "east 25'", "east 35'"));
  put("broken.xlsx", good.slice(0, 2000));
  expect(await run("--threads", "2")).toBe(1);

  expect(written("workbooks").map(({ File, Jobs, Runs }) => [File, Jobs, Runs])).toEqual([
    ["a good.xlsx", "Quay", "1"],
    ["older/stale.xlsx", "Quay", "1"],
  ]);
  // The items are worked out anew: 35 ft are 4 sticks.
  const stick = "EMT 1/2 conduit, 10 ft stick";
  expect(quantity("a good.xlsx", stick)).toEqual([6]);
  expect(quantity("older/stale.xlsx", stick)).toEqual([8]);
  const conduit = written("items").filter(({ Item }) => Item === "EMT 1/2 conduit");
  expect(conduit.map(({ Job, Unit, Quantity, Hours }) => [Job, Unit, Quantity, Hours])).toEqual([
    ["Quay", "ft", "50", "2.25"],
    ["Quay", "ft", "70", "3.15"],
  ]);
  // Which sheet, which cell, what was saved and what it is now.
  const differences = written("differences");
  expect(new Set(differences.map(({ File }) => File))).toEqual(new Set(["older/stale.xlsx"]));
  expect(differences).toContainEqual({
    File: "older/stale.xlsx",
    Sheet: "Takeoff",
    Cell: "C2",
    Saved: "50",
    Now: "70",
  });
  expect(differences).toContainEqual({ File: "older/stale.xlsx", Sheet: "Takeoff", Cell: "C3", Saved: "6", Now: "8" });
  expect(Number(written("workbooks")[1]!.Different)).toBe(differences.length);
  expect(written("problems")).toEqual([
    { File: "broken.xlsx", Where: "file", What: expect.stringMatching(/^This is not a workbook that can be read/) },
  ]);
  expect(told).toMatch(/2 workbooks read with 2 runs, \d+ items; 1 with results that differ .* \(\d+ cells\), in differences\.csv; 1 problem, in problems\.csv\./); // prettier-ignore
  const hash = createHash("sha256").update(good).digest("hex");
  expect(written("items").filter(({ Hash }) => Hash === hash).every(({ File }) => File === "a good.xlsx")).toBe(true); // prettier-ignore
  expect(new Set(written("items").map(({ Version }) => Version))).toEqual(new Set([version]));
});

test("a folder without a fault ends with 0 and says so; what it wrote is read by nothing else", async () => {
  put("job.xlsx", good);
  put("~$job.xlsx", "the mark of a file that is open");
  put("notes.txt", "no workbook");
  expect(await run()).toBe(0);
  expect(told).toContain("1 workbook read with 1 run");
  expect(told).toContain("every saved result is what is worked out now; no problems");
  expect(readdirSync(out).sort()).toEqual(["differences.csv", "items.csv", "problems.csv", "workbooks.csv"]);
  expect(Number(written("workbooks")[0]!.Results)).toBeGreaterThan(20);
});

test("a saved number that is off is found, one that is off beyond the digits of a file is not", async () => {
  put("off.xlsx", editedByHand(good, /<v>50<\/v>/, "<v>50.00001</v>"));
  put("same.xlsx", editedByHand(good, /<v>50<\/v>/, "<v>50.00000000000001</v>"));
  expect(await run()).toBe(1);
  expect(written("differences")).toEqual([
    { File: "off.xlsx", Sheet: "Takeoff", Cell: "C2", Saved: "50.00001", Now: "50" },
  ]);
});

test("runs as they were issued are an issue of their own, and a run that cannot be counted is told", async () => {
  const runs = [RUN, { ...RUN, Run: "B", Route: "sideways 3" }];
  put("issued.xlsx", await jobWorkbook({ Runs: runs, Issued: [{ ...RUN, Route: "east 15'" }] }));
  expect(await run()).toBe(1);
  expect(quantity("issued.xlsx", "EMT 1/2 conduit")).toEqual([50]);
  expect(quantity("issued.xlsx", "EMT 1/2 conduit", "Issued")).toEqual([30]);
  expect(written("differences")).toEqual([]);
  const [problem, ...more] = written("problems");
  expect(more).toEqual([]);
  expect(problem).toMatchObject({ File: "issued.xlsx", Where: "Runs, run B" });
  expect(problem!.What).toContain("sideways 3");
});

test("a table that cannot be read is told in the words of the function", async () => {
  put("job.xlsx", editedByHand(good, "<t>Allowance</t>", "<t>Extra</t>"));
  expect(await run()).toBe(1);
  expect(written("problems")).toEqual([
    { File: "job.xlsx", Where: "Runs", What: expect.stringMatching(/^allowances must have the column "Allowance"/) },
  ]);
  expect(written("items")).toEqual([]);
});

test("a workbook without a job, a copy and a file of another kind are told", async () => {
  put("a.xlsx", good);
  put("b.xlsx", good);
  put("old.xls", "older");
  const strange = editedByHand(good, "<t>Route</t>", "<t>Way</t>");
  put("empty.xlsx", strange);
  expect(await run()).toBe(1);
  const problems = written("problems").map(({ File, What }) => `${File}: ${What}`);
  expect(problems.join("\n")).toMatch(/empty\.xlsx: There is no table with the columns Run, Raceway, Size and Route/);
  expect(problems.join("\n")).toMatch(/old\.xls: It is no \.xlsx file/);
  expect(problems.join("\n")).toMatch(/b\.xlsx: It is the same as a\.xlsx, byte for byte/);
});

test.each([
  ["no names", [], /got 0 names\.[^]*usage: npm run portfolio/],
  ["an option there is not", ["x", "y", "--fast"], /Unknown option '--fast'[^]*usage:/],
  ["no thread", ["x", "y", "--threads", "0"], /--threads must be a whole number from 1 to 64; got 0\./],
  ["a folder that is not there", ["nowhere at all", "y"], /nowhere at all is no folder\./],
])("%s is told with exit code 2", async (_, words, message) => {
  expect(await main(words, built)).toBe(2);
  expect(told).toMatch(message);
});

test("a folder without workbooks is told, and help is help", async () => {
  expect(await run()).toBe(2);
  expect(told).toMatch(/There is no \.xlsx workbook in /);
  expect(await main(["--help"], built)).toBe(0);
  expect(told).toContain("usage: npm run portfolio -- [options] folder out");
});

test("a thread that breaks down costs its own file alone", async () => {
  put("thread.cjs", `
    const { parentPort } = require("node:worker_threads");
    parentPort.on("message", (file) => {
      if (file === "bad") throw new Error("broke down");
      if (file === "worse") process.exit(3);
      parentPort.postMessage({ hash: file, problem: "none" });
    });`); // prettier-ignore
  const script = join(folder, "thread.cjs");
  const counted: number[] = [];
  const wishes = { script, bundle: "", threads: 1, onDone: (done: number) => counted.push(done) };
  const answers = await readInThreads(["1", "bad", "2", "worse", "3"], wishes);
  expect(answers.map(({ hash }) => hash)).toEqual(["1", "", "2", "", "3"]);
  expect(answers[1]!.problem).toContain("broke down");
  expect(answers[3]!.problem).toContain("ended with code 3");
  expect(counted).toEqual([1, 2, 3, 4, 5]);
});

test("progress is told in words", () => {
  expect(progressWords(120, 1000, 24_000)).toBe("120 of 1,000 workbooks read; about 3 minutes left");
  expect(progressWords(10, 40, 10_000)).toBe("10 of 40 workbooks read; about 30 s left");
});
