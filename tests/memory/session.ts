/** A session of edits on one job, and what every whole-job function answers after each. */
import type * as cutFunctions from "../../functions/job/cuts";
import type * as jobFunctions from "../../functions/job/jobs";
import type * as madeFunctions from "../../functions/job/made";
import type * as takeoffFunctions from "../../functions/job/takeoff";
import type * as cellFaults from "../../src/units/cellFault";

const { generatedRuns } = jest.requireActual<{ generatedRuns(count: number, seed: number): Table }>(
  "../../tools/bench/generatedRuns.cjs",
);

type Table = unknown[][];

/** The tables a job is read from. */
interface Workbook {
  readonly runs: Table;
  readonly issued: Table;
  readonly shoes: Table;
  readonly rules: Table;
  readonly stock: Table;
  readonly labor: Table;
  readonly bench: Table;
  readonly made: Table;
}

export type Modules = typeof cutFunctions &
  typeof jobFunctions &
  typeof madeFunctions &
  typeof takeoffFunctions &
  typeof cellFaults;

/** A copy of the functions that remembers nothing yet. */
export function freshModules(): Modules {
  const loaded: Partial<Modules> = {};
  jest.isolateModules(() => {
    for (const file of [
      "functions/job/cuts",
      "functions/job/jobs",
      "functions/job/made",
      "functions/job/takeoff",
      "src/units/cellFault",
    ])
      Object.assign(loaded, jest.requireActual<object>(`../../${file}`));
  });
  return loaded as Modules;
}

/** Everything that a workbook's result sheets show, as text. */
export function answersTo(book: Workbook, from: Modules): Record<string, string> {
  const { runs, issued, shoes, rules, stock, labor, bench, made } = copyOf(book, from);
  const tables = {
    schedule: from.jobSchedule(runs, shoes, rules),
    setup: from.jobSetup(runs, shoes, bench, rules),
    checks: from.jobChecks(runs, shoes, 2023, rules),
    takeoff: from.jobTakeoff(runs, undefined, shoes, undefined, labor, rules),
    byArea: from.jobTakeoff(runs, undefined, shoes, "Area", undefined, rules),
    fromStock: from.jobTakeoff(runs, undefined, shoes, undefined, undefined, rules, stock),
    bends: from.jobBends(runs, "Area, Kind", shoes, labor, rules),
    cuts: from.jobCutsOf(runs, stock, shoes, undefined, undefined, rules),
    changes: from.jobChanges(issued, runs, shoes, rules),
    trace: from.jobTrace(runs, "Box", shoes, rules),
    takeoffLeft: from.jobTakeoff(runs, undefined, shoes, undefined, undefined, rules, undefined, made),
    cutsLeft: from.jobCutsOf(runs, stock, shoes, undefined, undefined, rules, made),
    progress: from.jobProgress(runs, made, "Area"),
    // It compares at most 3,000 pieces.
    standing: from.jobStanding(runs.slice(0, STOOD), made, issued.slice(0, STOOD), shoes, rules),
  };
  return Object.fromEntries(Object.entries(tables).map(([name, table]) => [name, JSON.stringify(table)]));
}

/** Rows that a standing is asked of. */
const STOOD = 50;

/** A new array for every row, as Excel hands them over; an error cell as the functions of `from` know it. */
const copyOf = (book: Workbook, { CellFault }: Modules): Workbook =>
  Object.fromEntries(
    Object.entries(book).map(([name, table]: [string, Table]) => [
      name,
      table.map((row) => row.map((cell) => (cell === BAD ? new CellFault("#REF!") : cell))),
    ]),
  ) as unknown as Workbook;

/** Stands for a cell with an error. */
const BAD = Symbol("#REF!");

export function startOf(count: number): Workbook {
  const runs = generatedRuns(count, 11);
  return {
    runs,
    issued: runs,
    shoes: [
      ["Raceway", "Size", "Radius", "Deduct", "Springback"],
      ["EMT", "3/4", 4.6, 6.1, 3],
      ["RMC", "1", 5.8, 11, 4],
    ],
    rules: [
      ["Rule", "Value"],
      ["Straps per support", 1],
    ],
    stock: [
      ["Raceway", "Size", "Length", "On hand", "Price"],
      ["EMT", "1/2", 120, "buy", ""],
      ["EMT", "1/2", 74, 3, ""],
    ],
    labor: [
      ["Operation", "Minutes"],
      ["bend", 4],
      ["EMT 1/2 strap", 2],
    ],
    bench: [
      ["Setting", "Value"],
      ["Room above", 70],
    ],
    made: [
      ["Date", "Piece", "Good", "Scrapped"],
      ["2026-12-01", "R-1/1", 1, 0],
    ],
  };
}

/** Cells of the Runs table. */
const COLUMN = { run: 0, area: 2, size: 4, route: 5, quantity: 6 };

const withRuns = (book: Workbook, change: (runs: Table) => Table): Workbook => ({
  ...book,
  runs: change(book.runs.map((row) => [...row])),
});

const withCell = (book: Workbook, share: number, column: number, value: unknown): Workbook =>
  withRuns(book, (runs) => {
    runs[1 + Math.floor(share * (runs.length - 2))]![column] = value;
    return runs;
  });

/** What people do to a job, one after the other. */
export const EDITS: readonly (readonly [name: string, edit: (book: Workbook) => Workbook, silent?: true])[] = [
  ["a route is changed", (book) => withCell(book, 0.5, COLUMN.route, "up 33, east 91, north 60")],
  ["the last row is changed", (book) => withCell(book, 1, COLUMN.quantity, 9)],
  ["a row is inserted", (book) => withRuns(book, (runs) => spliced(runs, 7, 0, ["New", ...runs[3]!.slice(1)]))],
  ["a row is deleted", (book) => withRuns(book, (runs) => spliced(runs, 20, 1))],
  ["the names of two rows are cleared", (book) => withCell(withCell(book, 0.3, 0, ""), 0.6, 0, "")],
  ["a row is inserted above them", (book) => withRuns(book, (runs) => spliced(runs, 2, 0, [...runs[5]!]))],
  ["a row is copied twice", (book) => withRuns(book, (runs) => spliced(runs, 30, 0, [...runs[30]!], [...runs[30]!]))],
  ["a size cannot be read", (book) => withCell(book, 0.2, COLUMN.size, "7/8")],
  ["a cell holds an error", (book) => withCell(book, 0.7, COLUMN.area, BAD)],
  ["the table is sorted", (book) => withRuns(book, ([head, ...rows]) => [head!, ...rows.sort(byRoute)])],
  [
    "a column is put before the others",
    (book) => withRuns(book, (runs) => runs.map((row, at) => [`x${at}`, ...row])),
    true,
  ],
  ["a row is left blank", (book) => withRuns(book, (runs) => spliced(runs, 12, 0, []))],
  ["a shoe is measured", (book) => ({ ...book, shoes: [...book.shoes, ["IMC", "1", 6, 8.2, 5]] })],
  ["a shoe is measured anew", (book) => ({ ...book, shoes: withShoe(book.shoes, 1, ["EMT", "3/4", 4.9, 6.4, 2]) })],
  ["a shoe cannot be read", (book) => ({ ...book, shoes: withShoe(book.shoes, 2, ["RMC", "1", "wide", 11, 4]) })],
  ["that shoe is taken out, the rows below move up", (book) => ({ ...book, shoes: spliced([...book.shoes], 2, 1) })],
  [
    "elbows of one size get another radius",
    (book) => ({
      ...book,
      rules: [
        ...book.rules,
        ["Factory elbows above size, metal", "3/4"],
        ["Factory elbow radius", "RMC 1: 8; IMC 1: 7"],
      ],
    }),
  ],
  [
    "a rule is changed",
    (book) => ({
      ...book,
      rules: [
        ["Rule", "Value"],
        ["Straps per support", 2],
      ],
    }),
  ],
  ["a rule is added", (book) => ({ ...book, rules: [...book.rules, ["Saw kerf", 0.125]] })],
  ["an offcut is put on the rack", (book) => ({ ...book, stock: [...book.stock, ["EMT", "1/2", 61, 2, ""]] })],
  ["minutes are written", (book) => ({ ...book, labor: [...book.labor, ["offset", 7]] })],
  [
    "the bench is moved",
    (book) => ({
      ...book,
      bench: [
        ["Setting", "Value"],
        ["Room above", 40],
      ],
    }),
  ],
  ["a piece is made", (book) => ({ ...book, made: [...book.made, ["2026-12-02", "R-2/1", 1, 1]] })],
  ["the job is issued", (book) => ({ ...book, issued: book.runs })],
  ["the first change is taken back", (book) => ({ ...book, runs: book.issued.slice(0, -1) })],
];

const withShoe = (shoes: Table, at: number, shoe: unknown[]): Table =>
  shoes.map((row, place) => (place === at ? shoe : row));

function spliced(table: Table, start: number, removed: number, ...rows: Table): Table {
  table.splice(start, removed, ...rows);
  return table;
}

const byRoute = (a: unknown[], b: unknown[]): number => (String(a[COLUMN.route]) < String(b[COLUMN.route]) ? -1 : 1);

/**
 * Follows a session: after every edit, what was remembered has to be answered as if nothing were.
 * @param every how many edits are made before the next is asked for anew, the last always
 */
export function follow(count: number, edits: typeof EDITS, every = 1): void {
  const warm = freshModules();
  let book = startOf(count);
  const states = new Set([JSON.stringify(answersTo(book, warm))]);
  for (const [index, [name, edit]] of edits.entries()) {
    book = edit(book);
    const remembered = answersTo(book, warm);
    states.add(JSON.stringify(remembered));
    if ((edits.length - 1 - index) % every !== 0) continue;
    const anew = answersTo(book, freshModules());
    expect(anew["schedule"]!.length).toBeGreaterThan(count * 100);
    for (const key of Object.keys(anew)) {
      if (remembered[key] !== anew[key]) throw new Error(`${key} remembers wrongly after ${name}`);
    }
  }
  // A column beside the others and an empty row change nothing; everything else does.
  expect(states.size).toBe(1 + edits.length - edits.filter(([, , silent]) => silent).length);
}
