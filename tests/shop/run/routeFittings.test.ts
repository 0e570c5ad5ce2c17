/** Conduit bodies, unions, expansion fittings and flexible pieces of a route, through cuts, take-off, checks and schedule. By hand. */
import { jobTakeoff } from "../../../functions/job/takeoff";
import { buildOneRun } from "../../../src/shop/run/oneRun";
import { runPieces } from "../../../src/shop/run/builtRun";
import { runPoints } from "../../../src/shop/run/runTotals";
import { scheduleRun } from "../../../src/shop/schedule/schedule";
import { ticketsOf } from "../../../src/shop/ticket/ticket";
import { checkBuiltRun } from "../../../src/shop/checks/checks";
import { readRules } from "../../../src/rules/rules";

const RULES = [
  ["Rule", "Value"],
  ["Take-out at a body", "EMT 1/2: 1"],
];
const cuts = (route: string, rules: unknown = null) =>
  runPieces(buildOneRun(route, "EMT", "1/2", null, rules)).map(({ cutLength }) => cutLength);
const HEAD = ["Run", "Raceway", "Size", "Route", "Quantity", "From", "To", "Conductors"];
const items = (route: string, raceway = "EMT", conductors = "") => {
  const [, ...lines] = jobTakeoff([HEAD, ["A", raceway, "1/2", route, 2, "Panel", "Motor", conductors]]) as (
    string | number
  )[][];
  return Object.fromEntries(lines.map(([item, , quantity]) => [item, quantity]));
};
const told = (route: string, raceway = "EMT", rules: unknown = null) =>
  checkBuiltRun(buildOneRun(route, raceway, "1/2", null, rules), 2020, readRules(rules)).map(({ finding }) => finding);

test("a body takes its take-out on each side, and no bend is made", () => {
  expect(cuts("up 40, LB, east 60")).toEqual([40, 60]);
  expect(cuts("up 40, LB, east 60", RULES)).toEqual([39, 59]);
  expect(cuts("up 40, LB, east 60, C, ahead 24", RULES)).toEqual([39, 58, 23]);
});

test("degrees start again at a body: it is a pull point (NEC 2020: conduit bodies and boxes)", () => {
  const four = "up 20, east 20, up 20, east 20, up 20";
  expect(told(`${four}, north 20, up 20`).join()).toContain("turns 540°");
  expect(told(`${four}, LB, north 20, up 20`, "EMT", RULES).join()).not.toContain("turns");
});

test("a body is counted, holds no connector and makes no pull box", () => {
  expect(items("up 40, LB, east 60")).toMatchObject({ "EMT 1/2 LB body": 2, "EMT 1/2 set-screw connector": 4 });
  expect(items("up 40, LB, east 60")).not.toHaveProperty("EMT 1/2 pull box");
  expect(items("up 40, box, east 60")).toMatchObject({ "EMT 1/2 pull box": 2, "EMT 1/2 set-screw connector": 8 });
});

test("conductors take no make-up at a body, and the length of a flexible piece", () => {
  const wire = (route: string) =>
    items(route, "EMT", "1 #12 THHN")["#12 THHN conductor"] ??
    items(route, "EMT", "1 #12 THHN")["12 AWG THHN conductor"];
  // 100 in. and 36 in. at each end; twice. The piece of 36 in. comes besides.
  expect(wire("up 40, LB, east 60")).toBeCloseTo((2 * (100 + 72)) / 12, 9);
  expect(wire("up 40, LB, east 60, flex 36 up 12")).toBeCloseTo((2 * (136 + 72)) / 12, 9);
});

test("a union parts the pieces where it stands and takes the place of a coupling", () => {
  expect(cuts("east 200, union, ahead 60")).toEqual([120, 80, 60]);
  const with1 = items("east 50, union, ahead 60", "RMC");
  expect(with1["RMC 1/2 union"]).toBe(2);
  expect(with1).not.toHaveProperty("RMC 1/2 threaded coupling");
  expect(items("east 50, coupling, ahead 60")).toMatchObject({ "EMT 1/2 set-screw coupling": 2 });
});

test("past a bend it stands where the leg says, less what the bend saves", () => {
  // R 4: the quarter saves 8 - 2π.
  expect(cuts("up 40, east 50, union, ahead 60")).toEqual([expect.closeTo(40 + 50 - 8 + 2 * Math.PI, 9), 60]);
});

test("a union is told on the pieces beside it, and no other is asked for then", () => {
  const built = buildOneRun("east 50, union, ahead 30, up 40", "RMC", "1/2", null);
  expect(scheduleRun(built).map(({ Note }) => Note)).toEqual([
    "union on the far end",
    expect.stringContaining("union on the datum end"),
  ]);
  expect(told("east 50, union, ahead 30, up 40", "RMC").join()).not.toContain("turned onto its coupling");
  expect(told("east 50, coupling, ahead 30, up 40", "RMC").join()).toContain("turned onto its coupling");
});

test.each([
  ["up 40, union, east 60", "step 2: a union stands on straight conduit"],
  ["up 40, east 3, expansion, east 60", "step 3: an expansion stands on straight conduit"],
])("%s is refused", (route, words) => expect(() => cuts(route)).toThrow(words));

test("an expansion fitting of the route is one of those that a straight takes", () => {
  // PVC 3.38e-5 in./in.°F: 100 ft over 60 °F move 2.4 in.: one fitting of 4 in. travel.
  expect(items("east 100'", "PVC 40")["PVC 40 1/2 expansion fitting"]).toBe(2);
  expect(items("east 50', expansion, east 50'", "PVC 40")["PVC 40 1/2 expansion fitting"]).toBe(2);
  expect(told("east 100'", "PVC 40").join()).toContain("expansion fitting");
  expect(told("east 50', expansion, east 50'", "PVC 40").join()).not.toContain("expansion fitting");
});

test("a flexible piece: feet, a connector at its box, a fitting to the conduit", () => {
  expect(items("up 40, flex 36 up 12 east 8")).toMatchObject({
    "FMC 1/2 conduit": 6,
    "FMC 1/2 flex connector": 2,
    "EMT 1/2 to FMC coupling": 2,
    "EMT 1/2 set-screw connector": 2,
  });
  const boxed = items("up 40, box, liquidtight 36 up 12 east 8");
  expect(boxed).toMatchObject({ "LFMC 1/2 conduit": 6, "LFMC 1/2 liquidtight connector": 4, "EMT 1/2 pull box": 2 });
  expect(boxed).not.toHaveProperty("EMT 1/2 to LFMC coupling");
});

test("the schedule, tickets and points name what a piece goes to", () => {
  const built = buildOneRun("up 40, LB, east 60, flex 36 up 12", "EMT", "1/2", null);
  expect(scheduleRun(built).map(({ Note }) => Note)).toEqual([
    "far end at the LB",
    "datum end at the LB; far end at a flexible piece of FMC",
  ]);
  expect(ticketsOf(built).map(({ ends }) => ends)).toEqual([
    { datum: "", far: "the LB" },
    { datum: "the LB", far: "a flexible piece of FMC" },
  ]);
  expect(runPoints(built).map((row) => row[4])).toEqual(["At", "start", "LB", "flexible", "end"]);
});

test("an unknown take-out is told", () => {
  expect(told("up 40, LB, east 60").join()).toContain("LB: the take-out of bodies of EMT 1/2 is counted as 0");
  expect(told("up 40, LB, east 60", "EMT", RULES).join()).not.toContain("take-out");
});
