/** A cell that holds 0, which may be an empty one, and a cell that holds an error. */
import { readBench } from "../../../src/shop/bench/bench";
import { checkJob } from "../../../src/shop/checks/checks";
import { buildJob, readableRuns, type Job } from "../../../src/shop/job/job";
import type { Run } from "../../../src/shop/run/runsTable";
import { scheduleJob } from "../../../src/shop/schedule/schedule";
import { zeroQuantities } from "../../../src/shop/run/zeroQuantity";
import { readShoes } from "../../../src/shop/shoe/shoeBook";
import { CellFault } from "../../../src/units/cellFault";

const HEADERS = ["Run", "Raceway", "Size", "Route", "Quantity", "Straps"];
const jobOfRows = (...rows: unknown[][]): Job => buildJob({ runs: [HEADERS, ...rows] });
const runsOf = (...rows: unknown[][]): readonly Run[] => readableRuns(jobOfRows(...rows));
const named = (name: string, quantity: unknown, straps?: unknown) => [
  ...[name, "EMT", "1/2", "up 20, east 30", quantity, straps ?? null],
];

test("a Quantity of 0 counts as 1 and is remembered; others are not", () => {
  const runs = runsOf(named("A", 0), named("B", 2), named("C", null));
  expect(runs.map(({ quantity, quantityWasZero }) => [quantity, quantityWasZero])).toEqual([
    [1, true],
    [2, undefined],
    [1, undefined],
  ]);
});

describe("the runs that have one are named in a sentence", () => {
  const words = "Quantity is 0 or empty and counts as 1: ";
  const many = (count: number) => runsOf(...Array.from({ length: count }, (_, at) => named(`R${at + 1}`, 0)));
  const names = (count: number) => Array.from({ length: count }, (_, at) => `R${at + 1}`).join(", ");

  test("none, where none has one", () => {
    expect(zeroQuantities(runsOf(named("A", 1), ["B", "copper", "1/2", "up 9", 0]))).toEqual([]);
  });

  test("only those, in their order", () => {
    const rows = runsOf(named("A", 0), named("B", 1), ["C", "copper", "1/2", "up 9", 0], named("D", 0));
    expect(zeroQuantities(rows)).toEqual([`${words}A, D`]);
  });

  test("twelve of them, then how many more", () => {
    expect(zeroQuantities(many(12))).toEqual([`${words}${names(12)}`]);
    expect(zeroQuantities(many(15))).toEqual([`${words}${names(12)} and 3 more`]);
  });
});

test("the job's check says so before anything about a run", () => {
  const findings = checkJob(jobOfRows(named("A", 0), named("A", 1)), 2023);
  expect(findings[0]).toEqual({
    run: "Runs",
    weight: "look",
    rule: "a Quantity is 1 or more; an empty one counts as 1",
    finding: "Quantity is 0 or empty and counts as 1: A.",
    fix: "Write how many there are. Delete the row of a run that is not to be made.",
  });
  expect(findings.map(({ run }) => run)).toEqual(["Runs", "A", "Shoes"]);
});

test("the schedule says so once, beside the first line of the run and after what stands there", () => {
  const notesOf = (row: unknown[]) => scheduleJob(jobOfRows(row)).map(({ Note }) => Note);
  expect(notesOf(named("A", 0))).toEqual(["Quantity 0 counts as 1"]);
  expect(notesOf(named("A", 1))).toEqual([""]);
  expect(notesOf(["B", "EMT", "1/2", "east 200", 0, null])).toEqual([
    "coupling on the far end; Quantity 0 counts as 1",
    "coupling on the datum end",
  ]);
});

test("straps of 0 are too few, and may be an empty cell", () => {
  const findingOf = (straps: number) =>
    checkJob(jobOfRows(["A", "EMT", "1/2", "east 300", 1, straps]), 2023).map(({ finding }) => finding);
  // Published: NEC 2023 358.30(A): 3 ft from each end, 10 ft apart.
  const needs = "the run needs at least 3: one within 36 in. of each box and no more than 120 in. apart.";
  expect(findingOf(0)).toEqual([`0 straps are planned (or the cell is empty); ${needs}`]);
  expect(findingOf(1)).toEqual([`1 straps are planned; ${needs}`]);
});

test("a dial and a springback of 0 are meant, and so is one that starts at 0", () => {
  const [shoe] = readShoes([
    ["Raceway", "Size", "Springback", "Dial from", "Dial start"],
    ["EMT", "1/2", 0, 0, 0],
  ]).own;
  expect(shoe).toMatchObject({ springback: 0, dialFrom: 0, dialStart: 0 });
});

test("a run whose name is an error is told by its row, as one that cannot be read", () => {
  expect(jobOfRows(named("A", 1), [new CellFault("#REF!"), "EMT", "1/2", "up 20", 1, null]).rows[1]).toEqual({
    problem: "Run holds the error #REF!.",
    rowNumber: 3,
    name: "row 3",
  });
});

test("a bench with a value of 0 has it; one that is an error is told with its row", () => {
  const bench = (value: unknown) =>
    readBench([
      ["Setting", "Value"],
      ["Table drop", value],
    ]);
  expect(bench(0).tableDrop).toBe(0);
  expect(() => bench(new CellFault("#REF!"))).toThrow("bench row 2: Value holds the error #REF!.");
});
