/** The Shoes table: every column, its limits, and what an empty cell takes. [in], [°] */
import { readBench, USUAL_BENCH } from "../../../src/shop/bench/bench";
import { readRuns } from "../../../src/shop/run/runsTable";
import { readShoes } from "../../../src/shop/shoe/shoeBook";

const book = (headers: string[], ...rows: unknown[][]) => readShoes([headers, ...rows]);
const problemOf = (headers: string[], ...row: unknown[]) => book(headers, row).problems.map(({ message }) => message);

test("every column is read, under its own header or the other one", () => {
  const headers = ["Conduit kind", "Raceway", "Trade size", "Centerline radius", "Take-up", "Springback", "Dial from", "Dial to", "Dial start", "Shortest tail"]; // prettier-ignore
  expect(book(headers, ["x", "EMT", "1/2", 4.25, 5.5, 3, -10, 120, -3, 2.5]).own).toEqual([
    {
      raceway: "EMT",
      size: "1/2",
      radius: 4.25,
      deduct: 5.5,
      outsideDiameter: 0.706,
      springback: 3,
      dialFrom: -10,
      dialTo: 120,
      dialStart: -3,
      shortestTail: 2.5,
      row: 2,
      source: "shoes row 2",
    },
  ]);
});

test("an empty cell takes the built-in value; a shoe that is not in the table is the built-in one", () => {
  const shoes = book(["Raceway", "Size"], ["EMT", "1/2"]);
  const own = shoes.shoeFor("EMT", "1/2");
  // Published: NEC chapter 9, table 2 (4 in.); deduct 5: Modern Residential Wiring (2021), p. 144.
  expect(own).toMatchObject({
    radius: 4,
    deduct: 5,
    springback: 0,
    dialFrom: -5,
    dialTo: 105,
    dialStart: 0,
    shortestTail: 2,
  });
  expect({ ...own, source: "" }).toEqual({ ...readShoes(null).shoeFor("EMT", "1/2"), source: "", row: 2 });
  expect(readShoes(undefined).own).toEqual([]);
  expect(shoes.shoeFor("EMT", "3/4").radius).toBe(4.5);
  expect(() => shoes.shoeFor("PVC 40", "1/2")).toThrow("There is no built-in shoe for PVC 40 1/2");
});

test.each([
  [4, 5, "shoes row 2"],
  [null, 5, "shoes row 2; radius built in"],
  [4, 0, "shoes row 2; deduct built in"],
  [0, "", "shoes row 2; radius and deduct built in"],
])("radius %p and deduct %p: the shoe says that its numbers are of %s", (radius, deduct, source) => {
  const [own] = book(["Raceway", "Size", "Radius", "Deduct"], ["EMT", "1/2", radius, deduct]).own;
  // Published: NEC chapter 9, table 2 (4 in.); deduct 5: Modern Residential Wiring (2021), p. 144.
  expect(own).toMatchObject({ radius: 4, deduct: 5, source });
});

test("made for another conduit: its radius and deduct, this one's diameter", () => {
  const made = (raceway: string, size: string, madeFor: unknown) =>
    book(["Raceway", "Size", "Made for"], [raceway, size, madeFor]).own[0]!;
  const built = (raceway: "EMT" | "RMC", size: "1/2" | "3/4" | "1") => readShoes(null).shoeFor(raceway, size);
  expect(made("EMT", "1/2", "3/4")).toMatchObject({
    radius: 4.5,
    deduct: built("EMT", "3/4").deduct,
    outsideDiameter: 0.706,
  });
  expect(made("EMT", "1/2", "RMC 1")).toMatchObject({ radius: 7.25, deduct: built("RMC", "1").deduct });
  expect(made("PVC-coated RMC", "1/2", "3/4")).toMatchObject({ radius: 5.75, deduct: built("RMC", "3/4").deduct });
  expect(made("EMT", "1/2", "  RMC   3/4 ")).toMatchObject({ radius: 5.75, deduct: built("RMC", "3/4").deduct });
  expect(problemOf(["Raceway", "Size", "Made for"], "EMT", "1/2", "hose 1")[0]).toMatch(
    /^shoes row 2: Made for must be .*got "hose"/,
  );
  expect(problemOf(["Raceway", "Size", "Made for"], "EMT", "1/2", "big")[0]).toMatch(
    /^shoes row 2: Made for must be .*got "big"/,
  );
});

test.each<[string, unknown, string]>([
  ["Radius", -1, "Radius must be above 0 in. and at most 1000 in.; got -1 in."],
  ["Deduct", -1, "Deduct must be above 0 in. and at most 1000 in.; got -1 in."],
  ["Springback", 46, "Springback must be at least 0 and at most 45; got 46."],
  ["Springback", -1, "Springback must be at least 0 and at most 45; got -1."],
  ["Dial from", -91, "Dial from must be at least -90 and at most 90; got -91."],
  ["Dial from", 91, "Dial from must be at least -90 and at most 90; got 91."],
  ["Dial to", -1, "Dial to must be at least 0 and at most 270; got -1."],
  ["Dial to", 271, "Dial to must be at least 0 and at most 270; got 271."],
  ["Dial start", -91, "Dial start must be at least -90 and at most 90; got -91."],
  ["Dial start", 91, "Dial start must be at least -90 and at most 90; got 91."],
  ["Shortest tail", -1, "Shortest tail must be at least 0 in. and at most 1000 in.; got -1 in."],
  ["Dial start", -6, "Dial start must lie on the dial, -5° to 105°; got -6°."],
])("%s of %p is refused", (column, value, message) => {
  expect(problemOf(["Raceway", "Size", column], "EMT", "1/2", value)).toEqual([`shoes row 2: ${message}`]);
});

test.each<[string, unknown]>([
  ["Springback", 0],
  ["Springback", 45],
  ["Dial from", -90],
  ["Dial to", 270],
  ["Dial start", -5],
  ["Shortest tail", 0],
])("%s of %p is allowed", (column, value) => {
  expect(problemOf(["Raceway", "Size", column], "EMT", "1/2", value)).toEqual([]);
});

test("a dial runs upward, and its start lies on it, both ends included", () => {
  const dial = (...row: unknown[]) =>
    problemOf(["Raceway", "Size", "Dial from", "Dial to", "Dial start"], "EMT", "1/2", ...row);
  expect(dial(0, 90, 90)).toEqual([]);
  expect(dial(0, 90, 0)).toEqual([]);
  expect(dial(10, 10, 10)).toEqual(["shoes row 2: Dial to must be above Dial from (10°); got 10°."]);
  expect(dial(0, 80, 81)).toEqual(["shoes row 2: Dial start must lie on the dial, 0° to 80°; got 81°."]);
});

test("a deduct smaller than half the conduit would have the arrow past the bend", () => {
  const deduct = (value: number) => problemOf(["Raceway", "Size", "Radius", "Deduct"], "EMT", "1/2", 4, value);
  expect(deduct(0.36)).toEqual([]);
  expect(deduct(0.35)).toEqual([
    "shoes row 2: Deduct must be at least 0.353 in. for this radius and diameter; got 0.35 in.",
  ]);
});

test("a shoe that stands twice, or is spoilt, is told with its row and used by no run", () => {
  const shoes = book(["Raceway", "Size", "Radius"], ["EMT", "1/2", 4], ["EMT", "1/2", 5], ["EMT", "3/4", "wide"], ["EMT", "3/4", 4.5], ["hose", "1", 5]); // prettier-ignore
  expect(shoes.problems.map(({ rowNumber }) => rowNumber)).toEqual([3, 4, 5, 6]);
  expect(shoes.problems[0]!.message).toBe(
    "shoes row 3: EMT 1/2 stands twice in shoes; keep one row for each raceway and size.",
  );
  expect(() => shoes.shoeFor("EMT", "1/2")).toThrow("shoes row 3: EMT 1/2 stands twice in shoes");
  expect(() => shoes.shoeFor("EMT", "3/4")).toThrow(/^shoes row (4|5): /);
  expect(shoes.shoeFor("EMT", "1").radius).toBe(5.75);
});

test("runs are read with every column, trimmed, each number within its limits", () => {
  const headers = ["Run", "Job", "Area", "Conduit", "Trade size", "Route", "Qty", "From", "To", "Conductors", "Stick length", "Date", "Crew", "Fittings", "Grounding bushings", "Straps"]; // prettier-ignore
  const row = [
    " A-1 ",
    "Ferry",
    " Hall",
    "EMT",
    "1/2",
    " up 9 ",
    2,
    "LP-1 ",
    "Box",
    "3 #12 THHN",
    "20'",
    "5 May",
    "B",
    "threaded",
    "both",
    4,
  ];
  expect(readRuns([headers, row])).toEqual([
    {
      ...{ rowNumber: 2, name: "A-1" },
      run: {
        ...{
          name: "A-1",
          job: "Ferry",
          area: "Hall",
          raceway: "EMT",
          size: "1/2",
          route: "up 9",
          quantity: 2,
        },
        ...{ from: "LP-1", to: "Box", conductors: "3 #12 THHN", stick: 240, date: "5 May", crew: "B" },
        ...{ fittings: "threaded", groundingBushing: "both", straps: 4 },
      },
    },
  ]);
  const few = ["Run", "Raceway", "Size", "Route", "Quantity", "Stick", "Straps"];
  expect(readRuns([few, ["", "EMT", "1/2", "up 9", null, null, null]])).toMatchObject([
    { run: { name: "row 2", quantity: 1, stick: 120, straps: undefined, job: "" } },
  ]);
  const problem = (...cells: unknown[]) => readRuns([few, ["A-1", "EMT", "1/2", ...cells]])[0];
  expect(problem("up 9", -1, null, null)).toMatchObject({
    problem: "Quantity must be a whole number at least 1 and at most 100000; got -1.",
  });
  expect(problem("up 9", 1, 11, null)).toMatchObject({
    problem: "Stick must be at least 12 in. and at most 480 in.; got 11 in.",
  });
  expect(problem("up 9", 1, 481, null)).toMatchObject({
    problem: expect.stringContaining("at most 480 in.; got 481 in.") as string,
  });
  expect(problem("up 9", 1, 12, -1)).toMatchObject({ problem: "Straps must be a whole number at least 0; got -1." });
  expect(problem("up 9", 1, 480, 0)).toMatchObject({ run: { stick: 480, straps: 0 } });
  expect(problem(null, 1, 12, 0)).toMatchObject({
    problem: `Route is empty; write the legs, for example: up 4', east 12' 6".`,
    rowNumber: 2,
    name: "A-1",
  });
});

test("a bench is the usual one where nothing is given, and words are read whatever their case and spaces", () => {
  expect([readBench(null), readBench(undefined)]).toEqual([USUAL_BENCH, USUAL_BENCH]);
  expect(
    readBench([
      ["Value", "Setting"],
      [" Down ", " CURLS "],
      ["free end", "Swings"],
      [600, "room above"],
    ]),
  ).toEqual({
    ...USUAL_BENCH,
    curls: "down",
    swings: "free end",
    roomAbove: 600,
  });
  expect(() => readBench([["Setting"], ["Plane"]])).toThrow('bench must have the column "Value"');
  expect(() => readBench([["Value"], ["Plane"]])).toThrow('bench must have the column "Setting"');
  expect(() => readBench([["Setting", "Value"], ["Plane", null]])).toThrow('bench "plane" must be vertical or horizontal; got an empty cell.'); // prettier-ignore
});

test("a shoe says when it was measured; one with a built-in radius or deduct, or nothing written, never was", () => {
  const headers = ["Raceway", "Size", "Radius", "Deduct", "Measured", "Where the values come from"];
  const own = (...row: unknown[]) => book(headers, ["EMT", "1/2", ...row]).own[0]!;
  expect(own(4, 5, "2026-11-02 ± 0.06 in.", "test bend")).toMatchObject({
    measured: "2026-11-02 ± 0.06 in.",
    source: "shoes row 2: test bend",
  });
  expect(own(4, 5, 46328, "").measured).toBe("2026-11-02");
  expect(own(4, 5, "", "the maker").source).toBe("shoes row 2: the maker");
  expect(own(4, 5, "", "the maker").measured).toBeUndefined();
  expect(own("", 5, "2026-11-02", "").measured).toBeUndefined();
  expect(own(4, "", "2026-11-02", "test bend").source).toBe("shoes row 2: test bend; deduct built in");
});
