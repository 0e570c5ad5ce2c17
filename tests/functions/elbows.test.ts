/**
 * Runs with factory elbows through the functions. By hand: an elbow of radius R takes R of each leg beside a 90; NEC
 * chapter 9, table 2, one-shot: 9-1/2 in. for trade size 2; straight ends of PVC 2: 2 in. (both from memory). [in]
 */
import { bendCard, runCard } from "../../functions/bend/cards";
import { jobChecks, jobSchedule, jobSetup } from "../../functions/job/jobs";
import { plainArgument } from "../../functions/cell/plainValues";
import { runBendsOf, runCheck, runDegreesOf, runLengthOf, runMarks, runPointsOf } from "../../functions/job/runs";
import { cellError } from "../support/cellError";

const RUNS = [
  ["Run", "Raceway", "Size", "Route"],
  ["P", "PVC 40", "2", "up 24, east 60, up 24"],
  ["E", "EMT", "2", "up 24, east 60, bend 30 up, ahead 40"],
];
const rules = (...rows: (string | number)[][]) => [["Rule", "Value"], ...rows];
const SHOES = [
  ["Raceway", "Size", "Radius", "Deduct", "Measured"],
  ["EMT", "2", 10, 12, "2026-11-02"],
];
/** What Excel hands over for an omitted argument. */
const omitted = null as never;
const PVC = ["up 24, east 60, up 24", "PVC 40", "2"] as const;
const LENGTH = 108 - 4 * 9.5 + 9.5 * Math.PI;

/** Said once for the job, until the shop writes the ends of its own supplier. */
const FROM_MEMORY = ["Rules", "look", expect.stringMatching(/straight ends .* from memory .*PVC 40 2: 2 in\./)];

const cells = (table: unknown[][], ...headers: string[]) =>
  table.slice(1).map((row) => headers.map((header) => row[table[0]!.indexOf(header)]));

test("JOB.SCHEDULE without rules buys the bends of PVC and makes those of metal", () => {
  const table = jobSchedule(RUNS, SHOES);
  expect(cells(table, "Run", "Piece", "Cut length", "Kind").slice(0, 5)).toEqual([
    ["P", 1, expect.closeTo(12.5, 9), "straight"],
    ["P", "", "", "factory elbow"],
    ["P", 2, expect.closeTo(37, 9), "straight"],
    ["P", "", "", "factory elbow"],
    ["P", 3, expect.closeTo(12.5, 9), "straight"],
  ]);
  expect(cells(table, "Run", "Kind").filter(([run]) => run === "E")).toEqual([
    ["E", "stub-up"],
    ["E", "kick"],
  ]);
  expect(jobSchedule(RUNS, SHOES, omitted)).toEqual(table);
});

test("JOB.SCHEDULE, JOB.CHECKS and JOB.SETUP take the rules as their last argument", () => {
  const buyMetal = rules(["Factory elbows above size, metal", "1"], ["Factory elbow angles", 90]);
  const kinds = (table: unknown[][]) => cells(table, "Run", "Kind").map((row) => row.join(" "));
  expect(kinds(jobSchedule(RUNS, SHOES, buyMetal)).slice(-3)).toEqual(["E straight", "E factory elbow", "E kick"]);
  const none = rules(["Factory elbows above size, PVC", "none"]);
  expect(kinds(jobSchedule(RUNS, SHOES, none))).toEqual(["P not built", "E stub-up", "E kick"]);

  const checks = (...more: [] | [unknown[][]]) => cells(jobChecks(RUNS, SHOES, omitted, ...more), "Run", "Weight", "Finding"); // prettier-ignore
  expect(checks()).toEqual([FROM_MEMORY]);
  expect(checks(rules(["Factory elbow straight ends", "PVC 40 2: 2"]))).toEqual([
    ["all runs", "ok", "2 runs checked, nothing found"],
  ]);
  expect(checks(none)).toEqual([["P", "stop", expect.stringContaining("no built-in shoe for PVC 40 2")]]);
  expect(jobChecks(RUNS, SHOES, 2020)).toEqual(jobChecks(RUNS, SHOES, 2020, omitted));

  const steps = (...more: [] | [unknown[][]]) => cells(jobSetup(RUNS, SHOES, omitted, ...more), "Run", "Piece", "Bend");
  expect(steps()).toEqual([["E", 1, 1], ["E", 1, 2]]); // prettier-ignore
  expect(steps(buyMetal)).toEqual([["E", 2, 1]]);
});

test("a rule that cannot be read is told in each, and the usual one counts", () => {
  const bad = rules(["Factory elbows above size, PVC", "big"]);
  const message =
    'rules row 2: "Factory elbows above size, PVC" must be none, all, no shoe or a trade size; got "big".';
  expect(jobSchedule(RUNS, SHOES, bad).slice(0, -1)).toEqual(jobSchedule(RUNS, SHOES));
  expect(cells(jobSchedule(RUNS, SHOES, bad), "Run", "Kind", "Note").at(-1)).toEqual(["Rules", "not read", message]);
  expect(cells(jobChecks(RUNS, SHOES, omitted, bad), "Run", "Weight", "Finding")).toEqual([
    ["Rules", "stop", message],
    FROM_MEMORY,
  ]);
  expect(cells(jobSetup(RUNS, SHOES, omitted, bad), "Run", "Verdict").at(-1)).toEqual([
    "Rules",
    `not read: ${message}`,
  ]);
  expect(cellError(() => jobSchedule(RUNS, SHOES, [["Rule"], ["x"]]))).toMatch(/^#VALUE! rules .*Value/);
});

test("the RUN functions work for PVC without a shoe, and not for metal of such a size that the shop bends itself", () => {
  expect(runLengthOf(...PVC)).toBeCloseTo(LENGTH, 9);
  expect([runBendsOf(...PVC), runDegreesOf(...PVC), runCheck(...PVC)]).toEqual([0, 180, "OK"]);
  expect(runPointsOf(...PVC).map((row) => row[4])).toEqual(["At", "start", "corner", "corner", "end"]);
  const marks = runMarks(...PVC);
  expect(cells(marks, "Piece", "Kind", "Angle", "Plane", "Turn")).toEqual([
    [1, "straight", "", "", ""],
    ["", "factory elbow", 90, 0, "first bend"],
    [2, "straight", "", "", ""],
    ["", "factory elbow", 90, 180, "points opposite to the bend before"],
    [3, "straight", "", "", ""],
  ]);
  for (const metal of [runLengthOf, runBendsOf, runDegreesOf, runPointsOf, runMarks]) {
    const own = rules(["Factory elbows above size, metal", "none"]);
    expect(cellError(() => metal("up 24, east 60", "RMC", "4", omitted, own))).toMatch(
      /^#N\/A There is no built-in shoe for RMC 4/,
    );
  }
});

describe("cards", () => {
  const field = (card: { properties: Record<string, never> }, name: string): unknown =>
    plainArgument(card.properties[name]);
  beforeEach(() =>
    Object.assign(globalThis, { Office: { context: { requirements: { isSetSupported: () => true } } } }),
  );
  afterEach(() => Reflect.deleteProperty(globalThis, "Office"));

  test("a run tells its elbows beside its bends; one without has no such field", () => {
    const card = runCard(...PVC);
    expect(["Bends", "Elbows", "Pieces", "Degrees", "Radius", "Source"].map((name) => field(card, name))).toEqual([
      ...[0, 2, 3, 180, 9.5, "no shoe: every bend is a factory elbow"],
    ]);
    expect(field(card, "Cut lengths")).toEqual([12.5, 37, 12.5].map((length) => [expect.closeTo(length, 9)]));
    expect(Object.keys(runCard("up 24, east 60", "EMT", "1/2").properties)).not.toContain("Elbows");
  });

  test("a run of nothing but elbows has no cut lengths", () => {
    const card = runCard("up 9.5, east 9.5", "PVC 40", "2");
    expect(field(card, "Pieces")).toBe(0);
    expect(Object.keys(card.properties)).not.toContain("Cut lengths");
  });

  test("an elbow has an angle, a gain and a radius, and nothing of the bench", () => {
    const card = bendCard(...PVC, omitted, 2);
    expect(Object.keys(card.properties)).toEqual(["Value", "Angles", "Kind", "Gain", "Raceway", "Size", "Radius", "Source"]); // prettier-ignore
    expect(["Value", "Angles", "Kind", "Radius"].map((name) => field(card, name))).toEqual([
      "factory elbow 90°: bought, laid out at 9.5 in. radius",
      ...[90, "factory elbow", 9.5],
    ]);
    expect(field(card, "Gain")).toBeCloseTo(9.5 * (2 - Math.PI / 2), 9);
  });
});
