import { buildJob } from "../../../src/shop/job/job";
/** Each finding whole: weight, rule, what was found and what would put it right. */
import { checkJob } from "../../../src/shop/checks/checks";
import { findingsText } from "../../../src/shop/checks/findings";
import type { Finding } from "../../../src/shop/code/finding";

const HEADER = ["Run", "Raceway", "Size", "Route", "Conductors", "Straps"];
const SHOE_HEADER = ["Raceway", "Size", "Radius", "Deduct", "Springback", "Dial start", "Shortest tail"];

/** Shoes that were never measured, and ampacity, have tests of their own. */
const aboutRuns = ({ rule }: Finding): boolean => !/^a shoe is measured|310.15/.test(rule);

const findingsOf = (row: unknown[], shoe?: unknown[]): Finding[] =>
  checkJob(buildJob({ runs: [HEADER, row], shoes: shoe ? [SHOE_HEADER, shoe] : null }), 2023).filter(aboutRuns);
const run = (route: string, ...more: unknown[]) => ["A-1", "EMT", "1/2", route, ...more];

test("degrees: the pull is named where there are several", () => {
  const second =
    "up 40, east 60, box, south 60, east 60, north 50, west 40, bend 15 up, ahead 40, bend 90 north, ahead 40";
  expect(findingsOf(run(second))).toEqual([
    {
      run: "A-1",
      weight: "stop",
      rule: "NEC 2023, 358.24(B)",
      finding: "pull 2 turns 375° between pull points; the limit is 360°.",
      fix: 'Put a "box" step into the route, or make it with fewer bends.',
    },
  ]);
});

test("radius: a shoe that is just large enough is, a smaller one is told once there is a bend", () => {
  expect(findingsOf(run("up 40, east 60"), ["EMT", "1/2", 4, 5])).toEqual([]);
  expect(findingsOf(run("east 60"), ["EMT", "1/2", 3.5, 5])).toEqual([]);
  const told = {
    run: "A-1",
    weight: "stop",
    rule: "NEC 2023, 358.24(A)",
    finding: "the shoe bends to 3.5 in. radius; EMT 1/2 needs at least 4 in.",
    fix: "Use a shoe with a larger radius, or correct Radius in the Shoes table.",
  };
  expect(findingsOf(run("up 40, east 60"), ["EMT", "1/2", 3.5, 5])).toEqual([told]);
  // One pull without a bend does not make the other one's bend larger.
  expect(findingsOf(run("up 40, east 60, box, east 40"), ["EMT", "1/2", 3.5, 5])).toEqual([told]);
});

test("fill: conductors that cannot be read, that no size takes, and a nipple beside a longer pull", () => {
  expect(findingsOf(run("up 40, east 60", "some wires"))).toEqual([
    {
      run: "A-1",
      weight: "look",
      rule: "conductors must be readable to check the fill",
      finding: expect.stringContaining("Conductors") as string,
      fix: 'Write them as in "3 #10 THHN, 1 #12 THHN", or leave the cell empty.',
    },
  ]);
  expect(findingsOf(run("up 40, east 60", "99 #2 THHN"))[0]).toMatchObject({
    weight: "stop",
    fix: "Part the conductors between several runs.",
  });
  // Ten 12 THHN fit a nipple of 1/2 EMT (60 %), not a longer pull (40 %); the longer pull counts.
  expect(findingsOf(run("east 10, box, east 60", "10 #12 THHN"))).toHaveLength(1);
});

test("straps: as many as are needed are enough", () => {
  expect(findingsOf(run("east 300", "", 3))).toEqual([]);
  expect(findingsOf(run("east 300", "", 2))[0]).toMatchObject({ weight: "stop", fix: "Plan 3 straps or more." });
});

test("dial: an angle past its end", () => {
  expect(findingsOf(run("up 40, bend 100 east, ahead 60"), ["EMT", "1/2", 4, 5, 6])).toEqual([
    {
      run: "A-1",
      weight: "stop",
      rule: "the dial must reach the angle and its springback",
      finding: "a bend of 100° with 6.67° springback passes the dial's end at 105°.",
      fix: "Start the dial below zero by the springback (Dial start), or make the bend in two.",
    },
  ]);
  expect(findingsOf(run("up 40, bend 98.4 east, ahead 60"), ["EMT", "1/2", 4, 5, 6])).toEqual([]);
});

test("tails: what the shoe cannot hold", () => {
  expect(findingsOf(run("up 5, east 5"))[0]).toEqual({
    run: "A-1",
    weight: "look",
    rule: "the shoe must be able to hold the conduit",
    finding: "piece 1, bend 1: the datum end has 1 in. to hold; the shoe needs 2 in.",
    fix: "Cut the piece longer and trim it after bending, or lengthen the leg.",
    step: 2,
  });
  expect(findingsOf(run("up 6, east 6"))).toEqual([]);
});

test("sweeps: shots of 10° are allowed, larger ones are told once, whatever their number", () => {
  expect(findingsOf(run("up 60, sweep 24 in 9, east 60"))).toEqual([]);
  expect(findingsOf(run("up 60, sweep 24 in 8, east 60"))).toEqual([
    {
      run: "A-1",
      weight: "look",
      rule: "shots of a sweep of at most 10° (common practice)",
      finding: "step 2: a sweep in 8 shots turns 11.25° at each, and may kink.",
      fix: "Make it in 9 shots or more.",
      step: 2,
    },
  ]);
});

test("crowded bends: a straight as long as the shoe needs is enough; shots of a sweep may stand closer", () => {
  expect(findingsOf(run("up 40, east 10, up 40"))).toEqual([]);
  expect(findingsOf(run("up 40, east 9, up 40"))[0]).toEqual({
    run: "A-1",
    weight: "look",
    rule: "bends must not overlap and the shoe must seat between them",
    finding: "steps 2 and 3: 1 in. of straight conduit between two bends; the shoe needs 2 in.",
    fix: "Lengthen the leg between them, use smaller angles, or see JOB.SETUP for an order that works.",
    step: 3,
  });
  // Nine shots on 12 in. stand 12·2·tan 5° − … = 1.4 in. apart: closer than 2 in.
  expect(findingsOf(run("up 60, sweep 12 in 9, east 60"))).toEqual([]);
});

test("rows: what cannot be read or built, shoes that cannot be read, and names that stand twice", () => {
  const runs = [
    HEADER,
    ["A-1", "EMT", "1/2", "up 40, sideways 9"],
    ["A-2", "copper", "1/2", "up 40"],
    ["A-3", "EMT", "1/2", "up 40, east 60"],
    ["A-3", "EMT", "1/2", "up 40, east 70"],
    ["A-2", "EMT", "1/2", "up 40"],
  ];
  const findings = checkJob(buildJob({ runs, shoes: [SHOE_HEADER, ["EMT", "3/4", "wide", 6]] }), 2023).filter(
    aboutRuns,
  );
  const unbuilt = {
    weight: "stop",
    rule: "a run must be readable, and its legs and sticks long enough for its bends and couplings",
    fix: "Correct the row; its other cells are untouched.",
  };
  const twice = {
    weight: "look",
    rule: "a run's name stands once",
    fix: "Give each row a name of its own, or use Quantity for equal runs.",
  };
  expect(findings).toEqual([
    {
      run: "Shoes",
      weight: "stop",
      rule: "a shoe must be readable",
      finding: expect.stringMatching(/^shoes row 2: Radius must be a length/) as string,
      fix: "Correct the row, or delete it to use the built-in shoe.",
    },
    { run: "A-2", finding: "2 rows are named A-2; their pieces cannot be told apart on the bench.", ...twice },
    { run: "A-3", finding: "2 rows are named A-3; their pieces cannot be told apart on the bench.", ...twice },
    expect.objectContaining({
      run: "A-1",
      finding: expect.stringMatching(/^step 2: got "sideways 9"/) as string,
      ...unbuilt,
    }),
    expect.objectContaining({ run: "A-2", finding: expect.stringContaining('got "copper"') as string, ...unbuilt }),
  ]);
});

test("a sentence that ends in in. takes one stop, in the middle of a text nothing is taken away", () => {
  const [finding] = findingsOf(run("up 5, east 5"));
  expect(finding!.finding.endsWith("2 in.")).toBe(true);
  const two = { run: "A", weight: "look", rule: "r", finding: "One.. two.", fix: "f" } as const;
  expect(findingsText([two, { ...two, finding: "Three." }])).toBe("One.. two. (r) f | Three. (r) f");
});
