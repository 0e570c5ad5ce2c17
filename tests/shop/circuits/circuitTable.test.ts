/**
 * What conductors carry and how hard they pull, run by run: the same answers as the single functions and Checks give. Values by hand
 * from NEC 2023 tables 310.16, 310.15(B)(1)(1), 310.15(C)(1) and 250.122, as read.
 */
import { jobChecks, jobCircuits } from "../../../functions/job/jobs";
import { fill } from "../../../functions/job/tables";
import { pullLimit, pullTension } from "../../../functions/wire/pulling";
import { ampacity, groundSize } from "../../../functions/wire/wiring";
import { conductorsWeight } from "../../../src/wiring/cableWeight";
import { readConductors } from "../../../src/wiring/readConductors";
import { runsRange } from "../../takeoff/tables";

const EMT = { Raceway: "EMT", Size: "2", Route: "east 100" };
const lines = (...runs: object[]) => {
  const range = runsRange(...runs.map((run, at) => ({ Run: `R-${at}`, ...EMT, ...run })));
  const [headers, ...rows] = jobCircuits(range);
  return rows.map(
    (row) => Object.fromEntries(headers!.map((header, at) => [header, row[at]])) as Record<string, unknown>,
  );
};

test("where the breaker keeps to it the resulting ampacity stands there: 30 A · 0.7 · 0.87 = 18.27 A, a breaker of 20", () => {
  const run = { Conductors: "9 #12 THHN", Breaker: 20, Ambient: 45 };
  expect(
    jobChecks(runsRange({ Run: "A", ...EMT, ...run })).filter(([, , rule]) => /240\.4|310/.test(String(rule))),
  ).toEqual([]);
  expect(lines(run)[0]).toMatchObject({
    ...{ Conductors: "#12 THHN", Carrying: 9, "Base A": 30, Adjustment: 0.7, "Air °C": 45, Correction: 0.87 },
    ...{ "Ampacity A": expect.closeTo(18.27, 9), "Terminals A": 20, "Allowed A": expect.closeTo(18.27, 9) },
    ...{ Breaker: "20 A", "Largest breaker A": 20, "Least ground": "#12", Verdict: "ok" },
  });
});

test.each([
  [{ Conductors: "3 #4/0 THHN, 1 #4 THHN", Breaker: 225 }, ["4/0", 3, 30, 90, "copper"]],
  [{ Conductors: "9 #12 THHN", Ambient: 45 }, ["12", 9, 45, 90, "copper"]],
  [{ Conductors: "6 #6 XHHW", Where: "wet" }, ["6", 6, 30, 75, "copper"]],
  [{ Conductors: "4 250 kcmil XHHW-2 aluminum", Ambient: "122 F" }, ["250", 4, 50, 90, "aluminum"]],
])("%j carries what AMPACITY says", (run, [size, count, celsius, column, metal]) => {
  const asked = (item?: string) => Number(ampacity(size, count, celsius, column, item, metal));
  expect(lines(run)[0]).toMatchObject({
    ...{ "Base A": asked("base"), Adjustment: asked("adjustment"), Correction: asked("correction") },
    "Ampacity A": asked(),
  });
});

test("ground, fill and pull are those of GROUND.SIZE, FILL and PULL.TENSION", () => {
  const Conductors = "3 #4/0 XHHW-2, 1 #2 XHHW-2 ground";
  // 150 A may protect #1 (130 A at 75 °C, the next rating up), so the ground grows by 211,600 / 83,690.
  const [line] = lines({ Conductors, Breaker: 150, Route: "east 60', north 30'", From: "A", To: "B" });
  expect(line!["Least ground"]).toBe(`#${groundSize(150, "1", "4/0")}`);
  expect(line!["Fill %"]).toBeCloseTo(100 * Number(fill("EMT", "2", Conductors as never)), 9);
  const conductors = readConductors(Conductors);
  const each = Math.sqrt((4 / Math.PI) * conductors[0]!.area);
  const limit = pullLimit(3, "4/0", null, "grip") + 1000; // four cables in a grip: 3,000 lb
  const rules = [
    ["Rule", "Value"],
    ["Factory elbows above size, metal", "no shoe"],
  ];
  const pulled = pullTension(
    "east 60', north 30'",
    "EMT",
    "2",
    conductorsWeight(conductors),
    4,
    each,
    0.5,
    null,
    limit,
    300,
    undefined,
    rules,
  );
  const best = pulled.at(-1)!;
  expect([line!["Tension lb"], line!["Sidewall lb/ft"]]).toEqual([best[4], best[5]]);
  expect(line!["Feed from"]).toBe(best[1] === "datum end" ? "A" : "B");
  expect(line!["Of limit %"]).toBeCloseTo(100 * Math.max(Number(best[4]) / limit, Number(best[5]) / 300), 9);
});

test("a run that Checks stops says so; of several pulls the one nearest to a limit is told", () => {
  expect(lines({ Conductors: "3 #12 THHN", Breaker: 40 })[0]!["Verdict"]).toBe("stopped, see Checks");
  expect(
    lines({ Conductors: "3 #4/0 XHHW-2", Route: "east 10', box, east 200', box, east 20'" })[0]!["Feed from"],
  ).toBe("pull 2: box 1");
});

test("a bad row hides no other: unreadable conductors, air no table has, a run that is not built; without conductors no line", () => {
  const found = lines(
    { Conductors: "3 sausages" },
    { Conductors: "3 #12 THHN", Ambient: 95 },
    { Conductors: "3 #12 THHN", Route: "sideways 3" },
    { Route: "sideways 3" },
    {},
    { Conductors: "3 #12 THHN" },
    { Conductors: "1 #4 bare" },
  );
  expect(found.map(({ Run, Verdict }) => [Run, Verdict])).toEqual([
    ["R-0", expect.stringContaining("sausages")],
    ["R-1", "No correction is listed for 95 °C in the column of 90 °C."],
    ["R-2", expect.stringContaining("step 1")],
    ["R-5", "ok"],
    ["R-6", "ok"],
  ]);
  expect(found[1]).toMatchObject({ "Fill %": expect.any(Number), "Ampacity A": "" });
  expect(found[4]).toMatchObject({ Conductors: "", "Tension lb": expect.any(Number) });
  expect(lines({})).toEqual([
    expect.objectContaining({ Run: "all runs", Verdict: "no run has anything under Conductors" }),
  ]);
});
