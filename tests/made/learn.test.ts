import { chart } from "../../src/made/learning/chart";
import { learn } from "../../src/made/learning/learn";
import { records, runsRange } from "../takeoff/tables";

const HEADERS = ["Piece", "Good", "Raceway", "Size", "Dial reached", "Angle measured"];
const bent = (...pairs: (readonly [dial: number, angle: number])[]) => [
  HEADERS,
  ...pairs.map(([dial, angle]) => ["A-1/1", 1, "EMT", "1/2", dial, angle]),
];
const shoes = (springback: number, more: Record<string, number> = {}) => [
  ["Raceway", "Size", "Radius", "Deduct", "Springback", ...Object.keys(more)],
  ["EMT", "1/2", 4, 5, springback, ...Object.values(more)],
];
const only = (table: (string | number)[][]) => records(table)[0]!;

/** Springback 1 + 0.04·angle, a little to one side or the other of it: worked out by hand, the sides cancel. */
const LINE = ([30, 45, 60, 75, 90] as const).map((angle, index) => {
  const off = [0.1, -0.2, 0.2, -0.2, 0.1][index]!;
  return [angle + 1 + 0.04 * angle + off, angle] as const;
});

test("the line of the records, its value at 90 and its limits", () => {
  const row = only(learn(bent(...LINE), { shoes: shoes(4.6) }));
  expect(row).toMatchObject({ "Bends measured": 5, Model: "straight line", Verdict: "the shoe in use lies inside" });
  expect(row["Slope"]).toBeCloseTo(0.04, 9);
  expect(row["Intercept"]).toBeCloseTo(1, 9);
  // Squares of the misses: 0.01 + 0.04·3 + 0.01 = 0.14; scatter √(0.14/3); at 90, u = scatter·√(1/5 + 30²/2250).
  const scatter = Math.sqrt(0.14 / 3);
  expect(row["Scatter"]).toBeCloseTo(scatter, 9);
  expect(row["Springback at 90"]).toBeCloseTo(4.6, 9);
  // Student's t of three degrees of freedom, 95 %: 3.182.
  expect(row["Plus or minus"]).toBeCloseTo(3.182 * scatter * Math.sqrt(0.2 + 900 / 2250), 9);
});

test("a shoe in use that lies outside is told, with how far and which way", () => {
  expect(only(learn(bent(...LINE), { shoes: shoes(3) }))["Verdict"]).toBe(
    "the shoe in use is 1.6° too low: measure it anew",
  );
  expect(only(learn(bent(...LINE), { shoes: shoes(6) }))["Verdict"]).toBe(
    "the shoe in use is 1.4° too high: measure it anew",
  );
});

test("bends of one angle only: springback in proportion to the angle", () => {
  const row = only(learn(bent([93, 90], [93.2, 90], [92.8, 90], [93, 90], [93, 90]), { shoes: shoes(3) }));
  expect(row).toMatchObject({ Model: "proportional", Intercept: 0, Verdict: "the shoe in use lies inside" });
  expect(row["Springback at 90"]).toBeCloseTo(3, 9);
});

test("a dial that starts below zero is counted from there", () => {
  const started = LINE.map(([dial, angle]) => [dial - 4, angle] as const);
  const row = only(learn(bent(...started), { shoes: shoes(4.6, { "Dial start": -4 }) }));
  expect(row["Springback at 90"]).toBeCloseTo(4.6, 9);
});

describe("refused, in the shoe's own row", () => {
  test("too few", () => {
    expect(only(learn(bent(...LINE.slice(0, 4))))["Verdict"]).toBe(
      "too few: at least 5 measured bends are needed; got 4.",
    );
  });
  test("that do not fit one line", () => {
    const wild = bent([33, 30], [40, 31], [62, 60], [75, 61], [93, 90]);
    expect(only(learn(wild))["Verdict"]).toMatch(/^they do not fit one line: a bend lies \d\.\d+° from it/);
  });
  test("a springback below nothing", () => {
    expect(only(learn(bent([28, 30], [43, 45], [58, 60], [73, 75], [88, 90])))["Verdict"]).toMatch(/comes out below 0/);
  });
});

describe("with the runs", () => {
  const runs = runsRange({ Run: "B-1", Route: "up 20, east 40, north 30" }, { Run: "B-2", Route: "up 20, east 40" });
  const made = (...rows: (string | number)[][]) => [
    ["Piece", "Good", "Bend", "Dial reached", "Angle measured"],
    ...rows,
  ];

  test("the shoe is that of the run; a piece of no run, and a bend it has not, are told", () => {
    const told = records(learn(made(["B-1/1", 1, 2, 93, 90], ["X-1", 1, 1, 93, 90], ["B-2", 1, 2, 93, 90]), { runs }));
    expect(told.map((row) => [row["Raceway"], row["Verdict"]])).toEqual([
      ["EMT", "too few: at least 5 measured bends are needed; got 1."],
      ["not read", "made row 3: X-1 names no piece of the runs; give Raceway and Size, or the runs it is of."],
      ["not read", "made row 4: Bend must be one of the 1 bends of B-2/1; got 2."],
    ]);
  });

  test("the chart has the error of each bend and says which lie outside", () => {
    const errors = [0, 0.2, -0.2, 0.1, 0, -0.1, 0.1, 0, 0.2, 3];
    const table = records(chart(made(...errors.map((error) => ["B-1/1", 1, 1, 93, 90 + error])), runs));
    expect(table.map((row) => row["Error"])).toEqual(errors.map((error) => expect.closeTo(error, 9)));
    // By hand: the mean is 3.3/10; the steps are .2 .4 .3 .1 .1 .2 .1 .2 2.8, 4.4 in nine.
    const [mean, step] = [0.33, 4.4 / 9];
    expect(table[0]).toMatchObject({
      Mean: expect.closeTo(mean, 9),
      Upper: expect.closeTo(mean + (3 * step) / 1.128, 9),
    });
    expect(table.map((row) => row["Verdict"])).toEqual([...Array<string>(9).fill(""), "outside the limits"]);
  });

  test("two bends have no limits, and this says so", () => {
    const table = records(chart(made(["B-1", 1, 1, 93, 90], ["B-1", 1, 1, 93, 91]), runs));
    expect(table.map((row) => [row["Step"], row["Mean"], row["Verdict"]])).toEqual([
      ["", "", "too few for limits: 3 are needed"],
      [expect.closeTo(1, 9), "", "too few for limits: 3 are needed"],
    ]);
  });
});

test("one reading without the other is told", () => {
  const made = [["Piece", "Good", "Dial reached", "Angle measured"], ["B-1", 1, 93, null]]; // prettier-ignore
  expect(records(learn(made))[0]!["Verdict"]).toBe(
    "made row 2: Dial reached stands without Angle measured; write both, or none.",
  );
});
