/**
 * A job as a shop lives it: thirty runs issued, forty pieces made of which three are scrap, then two runs changed and one
 * deleted. Every number is from the table below, added by hand:
 *
 * | runs       | each | pieces | bends a piece | good | scrap |
 * | ---------- | ---- | ------ | ------------- | ---- | ----- |
 * | A-01…A-10  | 2    | 20     | 1 (stub-up)   | 19   | 1     |
 * | B-01…B-10  | 1    | 10     | 2             | 9    | 1     |
 * | C-01…C-10  | 1    | 10     | 0             | 9    | 1     |
 */
import { daily } from "../../src/made/counts/daily";
import { progress } from "../../src/made/counts/progress";
import { standing } from "../../src/made/standing/standing";
import { leftToMake } from "../../src/made/counts/leftToMake";
import { neededPieces } from "../../src/made/counts/neededPieces";
import { buildJob } from "../../src/shop/job/job";
import { jobCuts } from "../../src/takeoff/reports/jobCuts";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { quantityOf, records, rowWhere, runsRange, type RunCells } from "../takeoff/tables";

const two = (number: number): string => String(number).padStart(2, "0");
const numbers = Array.from({ length: 10 }, (_, index) => index + 1);

const ROUTES = { A: "up 20, east 30", B: "up 20, east 40, north 30", C: "east 100" };
const runsOf = (letter: "A" | "B" | "C"): RunCells[] =>
  numbers.map((number) => ({
    ...{ Run: `${letter}-${two(number)}`, Route: ROUTES[letter], Area: letter === "A" ? "Quay" : "Hall" },
    Quantity: letter === "A" ? 2 : 1,
  }));
const issuedRuns = [...runsOf("A"), ...runsOf("B"), ...runsOf("C")];
const issued = runsRange(...issuedRuns);

/** A-01 and B-02 changed, C-03 gone. */
const now = runsRange(
  ...issuedRuns
    .filter(({ Run }) => Run !== "C-03")
    .map((run) => {
      if (run.Run === "A-01") return { ...run, Route: "up 18, east 30" };
      return run.Run === "B-02" ? { ...run, Route: "up 20, east 40, north 20" } : run;
    }),
);

const MADE_HEADERS = ["Date", "Piece", "Good", "Scrapped", "By"];
const made = [
  MADE_HEADERS,
  ...numbers.map((n) => ["2026-11-02", `A-${two(n)}/1`, n === 10 ? 1 : 2, n === 10 ? 1 : 0, n < 6 ? "Ida" : "Olu"]),
  ...numbers.map((n) => ["2026-11-03", `B-${two(n)}`, n === 10 ? 0 : 1, n === 10 ? 1 : 0, "Olu"]),
  ...numbers.map((n) => ["2026-11-03", `C-${two(n)}`, n === 10 ? 0 : 1, n === 10 ? 1 : 0, "Ida"]),
];

const COUNTS = [
  "Pieces needed",
  "Pieces made",
  "Pieces left",
  "Pieces scrapped",
  "Bends needed",
  "Bends made",
  "Bends left",
];
const countsOf = (row: Record<string, string | number>) => COUNTS.map((column) => row[column]);

describe("what was made of what was issued", () => {
  test("in all", () => {
    expect(countsOf(rowWhere(progress(issued, made, { by: "none" }), { Note: "" }))).toEqual([40, 37, 3, 3, 40, 37, 3]);
  });

  test("by area", () => {
    const table = progress(issued, made, { by: "Area" });
    expect(countsOf(rowWhere(table, { Area: "Quay" }))).toEqual([20, 19, 1, 1, 20, 19, 1]);
    expect(countsOf(rowWhere(table, { Area: "Hall" }))).toEqual([20, 18, 2, 2, 20, 18, 2]);
    expect(countsOf(rowWhere(table, { Area: "Total" }))).toEqual([40, 37, 3, 3, 40, 37, 3]);
  });

  test("by who made it: what nobody has made stands alone, and the lines add up to the total", () => {
    const table = progress(issued, made, { by: "By" });
    expect(countsOf(rowWhere(table, { By: "Ida" }))).toEqual([19, 19, 0, 1, 10, 10, 0]);
    expect(countsOf(rowWhere(table, { By: "Olu" }))).toEqual([18, 18, 0, 2, 27, 27, 0]);
    expect(countsOf(rowWhere(table, { By: "" }))).toEqual([3, 0, 3, 0, 3, 0, 3]);
    expect(countsOf(rowWhere(table, { By: "Total" }))).toEqual([40, 37, 3, 3, 40, 37, 3]);
  });

  test("by kind of bend, with the hours that are left", () => {
    const labor = [["Operation", "Minutes"], ["stub-up", 6], ["90", 4]]; // prettier-ignore
    const table = progress(issued, made, { by: "Kind", labor });
    expect(countsOf(rowWhere(table, { Kind: "stub-up" }))).toEqual([30, 28, 2, 2, 30, 28, 2]);
    expect(countsOf(rowWhere(table, { Kind: "90" }))).toEqual([10, 9, 1, 1, 10, 9, 1]);
    expect(countsOf(rowWhere(table, { Kind: "straight" }))).toEqual([10, 9, 1, 1, 0, 0, 0]);
    // Two stub-ups and one 90 are left: 2·6 + 4 minutes.
    expect(rowWhere(table, { Kind: "Total" })["Hours left"]).toBeCloseTo(16 / 60, 12);
  });

  test("day by day", () => {
    expect(daily(issued, made).slice(1)).toEqual([
      ["2026-11-02", "Ida", 10, 0, 10, 30],
      ["2026-11-02", "Olu", 9, 1, 9, 21],
      ["2026-11-03", "Ida", 9, 1, 0, 12],
      ["2026-11-03", "Olu", 9, 1, 18, 3],
    ]);
  });
});

describe("what the change leaves standing", () => {
  const rows = records(standing(now, made, { issued }));
  const of = (piece: string) =>
    rows.filter(({ Made }) => Made === piece).map((row) => [row["Pieces"], row["Standing"], row["For"]]);

  test("pieces of runs that did not change stand as they are", () => {
    const still = rows.filter(({ Standing }) => Standing === "stands as it is");
    // A-02…A-09 twice, A-10 once; B-01, B-03…B-09; C-01, C-02, C-04…C-09.
    expect(still.reduce((sum, row) => sum + Number(row["Pieces"]), 0)).toBe(17 + 8 + 8);
  });

  test("the deleted run's piece and the changed runs' pieces go where they spare the most", () => {
    expect(of("C-03/1")).toEqual([[1, "fits another run", "C-10/1"]]);
    expect(of("B-02/1")).toEqual([[1, "fits another run", "B-10/1"]]);
    expect(of("A-01/1").sort()).toEqual([
      [1, "fits another run", "A-10/1"],
      [1, "fits if cut shorter", "A-01/1"],
    ]);
    expect(rowWhere(standing(now, made, { issued }), { Standing: "fits if cut shorter" })["To do"]).toBe(
      `cut 2" off its datum end`,
    );
  });

  test("two are to be made, and no choice needs fewer: 39 are needed and 37 are there", () => {
    const make = rows.filter(({ Standing, Made }) => Standing === "to make" && Made === "");
    expect(make.map((row) => [row["Pieces"], row["For"]])).toEqual([
      [1, "A-01/1"],
      [1, "B-02/1"],
    ]);
    expect(rows.find(({ Made }) => Made === "Total")).toMatchObject({
      Pieces: 2,
      "To do": "proven: no choice needs fewer",
    });
  });

  test("what no run wants is left over, with the straight conduit on it", () => {
    const few = runsRange({ Run: "C-01", Route: "east 100" });
    const [left] = records(standing(few, [MADE_HEADERS, ["", "B-01/1", 1, 0, ""]], { issued }));
    // Legs 20, 40, 30 with setbacks of 4: the middle one holds 32 in. of straight conduit.
    expect(left).toMatchObject({ Made: "B-01/1", Standing: "left over", Straight: expect.closeTo(32, 9) });
  });
});

describe("what is left to cut and to order", () => {
  /** As the view at the bender writes them: each with the code of the shape that was made. */
  const codes = new Map(neededPieces(buildJob({ runs: issued })).map(({ name, code }) => [name, code]));
  const withShapes = [
    [...MADE_HEADERS, "Shape"],
    ...made
      .slice(1)
      .map((row) => [...row, codes.get(String(row[1])) ?? codes.get(`${String(row[1])}/1`) ?? "none of these"]),
  ];

  // By hand, radius 4: A 50 − 1.717 = 48.283, B 90 − 2·1.717 = 86.566, C 100; of each of the three, one is scrap.
  test("of what was issued: one of each, each in a stick of its own", () => {
    const [all, ...sticks] = records(jobCuts(issued, { left: leftToMake(made) }));
    expect(all!["Sticks"]).toBe(3);
    expect(sticks.flatMap(({ For }) => (For ? [For] : [])).sort()).toEqual(["A-10/1", "B-10/1", "C-10/1"]);
    const order = takeoff(issued, { left: leftToMake(made) });
    expect(quantityOf(order, "EMT 1/2 conduit")).toBeCloseTo((48.28318530718 + 86.56637061436 + 100) / 12, 9);
    expect(quantityOf(order, "EMT 1/2 bend")).toBe(3);
    expect(rowWhere(order, { Item: "made: 37 pieces" })["Note"]).toMatch(
      /^conduit, cuts and bends of these are left out/,
    );
  });

  // After the change six are left: A-01 twice (46.283), A-10, B-02 (76.566), B-10, C-10. Neither B nor C leaves room for
  // an A, and two of the three As share a stick: 5. Bends: 2·1 + 1 + 2 + 2 = 7.
  test("after the change: what was made for another shape is no progress, and is named", () => {
    const cuts = records(jobCuts(now, { left: leftToMake(withShapes) }));
    expect(cuts[0]!["Sticks"]).toBe(5);
    const told = cuts.flatMap(({ Stick, Note }) => (String(Stick).startsWith("made row") ? [`${Stick}: ${Note}`] : []));
    expect(told).toEqual([
      expect.stringMatching(
        /^made row 2: A-01\/1: made as \S+, and A-01\/1 is \S+ now: JOB.STANDING says what it fits$/,
      ),
      expect.stringMatching(/^made row 13: B-02: made as \S+, and B-02\/1 is \S+ now/),
      "made row 24: C-03: no run of this job has that name",
    ]);
    const order = takeoff(now, { left: leftToMake(withShapes) });
    expect(quantityOf(order, "EMT 1/2 bend")).toBe(7);
    const inches = 2 * 46.28318530718 + 48.28318530718 + 76.56637061436 + 86.56637061436 + 100;
    expect(quantityOf(order, "EMT 1/2 conduit")).toBeCloseTo(inches / 12, 9);
    expect(countsOf(rowWhere(progress(now, withShapes, { by: "none" }), { Note: "" }))).toEqual([
      ...[39, 33, 6, 3, 40, 33, 7],
    ]);
  });

  test("fittings are whole whatever is made", () => {
    const fittings = (table: (string | number)[][]) =>
      records(table).filter(({ Item }) => /connector|coupling|strap/.test(String(Item)) && !/^made/.test(String(Item)));
    expect(fittings(takeoff(issued, { left: leftToMake(made) }))).toEqual(fittings(takeoff(issued)));
    expect(fittings(takeoff(issued)).length).toBeGreaterThan(1);
  });

  test("when all is made no stick is cut, from a Stock or without one", () => {
    const one = runsRange({ Run: "C-01", Route: "east 100" });
    const done = leftToMake([["Piece", "Good"], ["C-01", 1]]); // prettier-ignore
    const stock = [["Raceway", "Size", "Length"], ["EMT", "1/2", 120]]; // prettier-ignore
    expect(records(jobCuts(one, { left: done })).map(({ Stick }) => Stick)).toEqual(["made: 1 piece"]);
    for (const order of [takeoff(one, { left: done }), takeoff(one, { left: done, stock })]) {
      expect(quantityOf(order, "EMT 1/2 conduit")).toBe(0);
      expect(records(order).flatMap(({ Item, Quantity }) => (/stick/.test(String(Item)) ? [Quantity] : []))).toEqual([
        0,
      ]);
    }
  });
});

describe("records that do not fit", () => {
  const table = (...rows: (string | number)[][]) => records(progress(issued, [MADE_HEADERS, ...rows], { by: "none" }));

  test("a piece of no run, and a number the run does not have, are told with their row", () => {
    const told = table(["", "Z-9/1", 1, 0, ""], ["", "A-01/7", 1, 0, ""]);
    expect(told.slice(1).map((row) => [Object.values(row)[0], row["Note"]])).toEqual([
      ["made row 2: Z-9/1", "no run of this job has that name"],
      ["made row 3: A-01/7", "the run has other pieces; write its name and the number of the piece, as in A-01/1"],
    ]);
  });

  test("more than is needed is told and is no progress", () => {
    const [total] = table(["", "C-01", 5, 0, ""]);
    expect(total).toMatchObject({ "Pieces made": 1, "Pieces left": 39, Note: "4 made beyond what is needed" });
  });

  test("a row without a count, and one with a negative one, hide no other", () => {
    const told = table(["", "C-01", 0, 0, ""], ["", "C-02", -1, 0, ""], ["", "C-03", 1, 0, ""]);
    expect(told[0]).toMatchObject({ "Pieces made": 1 });
    expect(told.slice(1).map((row) => row["Note"])).toEqual([
      "made row 2: Good and Scrapped are both 0 or empty; write how many were made.",
      "made row 3: Good must be a whole number at least 0 and at most 100000; got -1.",
    ]);
  });

  test("a record read twice counts once; one that came back different is told", () => {
    const ids = [["Piece", "Good", "Id"], ["C-01", 1, "k1"], ["C-01", 1, "k1"], ["C-01", 2, "k1"]]; // prettier-ignore
    const [total, told] = records(progress(issued, ids, { by: "none" }));
    expect(total).toMatchObject({ "Pieces made": 1, Note: "" });
    expect(told!["Note"]).toBe("made row 4: Id k1 stands twice with different cells; the first one counts.");
  });
});
