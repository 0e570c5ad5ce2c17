/** Racks: members as runs of their own. Legs by hand, laws as properties, tickets' marks against OFFSET.STAGGER. */
import fc from "fast-check";
import { stagger } from "../../../src/bends/groups/stagger";
import { jobTakeoff } from "../../../functions/job/takeoff";
import { buildJob, builtRows, unbuiltRows } from "../../../src/shop/job/job";
import { checkJob } from "../../../src/shop/checks/checks";
import { scheduleJob, scheduleRun } from "../../../src/shop/schedule/schedule";
import { runPieces, type BuiltRun } from "../../../src/shop/run/builtRun";
import { pathParts } from "../../../src/geometry/path";
import { pullPath } from "../../../src/route/problems";
import { bendAgain } from "../../simulator/bendAgain";
import { misfit } from "../../simulator/alignRigid";
import { HALF_EMT, onBench } from "../../support/demoShoe";

const HEAD = ["Run", "Raceway", "Size", "Route", "Quantity", "From", "To", "Rack", "Start", "Conductors"];
const table = (route: string, rack: string, size = "1/2", conductors = "") => [
  HEAD,
  ["A", "EMT", size, route, 2, "Panel", "each receptacle", rack, "", conductors],
];
const built = (route: string, rack: string): BuiltRun[] => {
  const job = buildJob({ runs: table(route, rack) });
  expect(unbuiltRows(job).map(({ problem }) => problem)).toEqual([]);
  return builtRows(job).map((row) => row.built);
};
const problem = (route: string, rack: string) =>
  unbuiltRows(buildJob({ runs: table(route, rack) }))
    .map((row) => row.problem)
    .join();
const legs = (run: BuiltRun) => pathParts(pullPath(run.pulls[0]!.pull)).legs;

test("up 40, east 100, south 60, three at 3 to the south: 40 100 60, 40 97 57, 40 94 54", () => {
  const runs = built("up 40, east 100, south 60", "3 at 3 south");
  expect(runs.map(({ run }) => run.name)).toEqual(["A-1", "A-2", "A-3"]);
  expect(runs.map(legs)).toEqual([
    [40, 100, 60],
    [40, 97, 57],
    [40, 94, 54],
  ]);
});

test("a side square to every bend's plane: equal cuts and equal marks", () => {
  const [first, second] = built("up 40, east 100, offset 6 up at 30, ahead 50", "2 at 4 north").map((run) =>
    scheduleRun(run).map(({ "Cut length": cut, Mark, Angle }) => [cut, Mark, Angle]),
  );
  expect(second).toEqual(first);
});

test("an offset toward the rack's side shifts its marks by the stagger of 3 in. at 30°", () => {
  const marks = built("east 60, offset 6 north at 30, ahead 60", "2 at 3 north").map((run) =>
    scheduleRun(run).map(({ Mark }) => Number(Mark)),
  );
  expect(marks[0]![0]! - marks[1]![0]!).toBeCloseTo(stagger(3, 30), 9);
  expect(stagger(3, 30)).toBeCloseTo(0.8038, 4);
});

test("sweeps nest around one center: radii 24, 21, 18 inside, 27, 30 outside", () => {
  const radius = (run: BuiltRun) => {
    const [a, b] = runPieces(run)
      .flatMap(({ bends }) => bends)
      .slice(0, 2);
    // Shots of 10° touch the ideal arc in the middle of their sides: 2·R·tan 5° apart, corner to corner.
    return b!.legBefore / (2 * Math.tan((a!.angle / 2) * (Math.PI / 180)));
  };
  expect(built("up 60, sweep 24, east 90", "3 at 3 east").map(radius)).toEqual(
    [24, 21, 18].map((r) => expect.closeTo(r, 9)),
  );
  expect(built("up 60, sweep 24, east 90", "3 at 3 west").map(radius)).toEqual(
    [24, 27, 30].map((r) => expect.closeTo(r, 9)),
  );
});

/** The side at each leg, worked out by a second route: distance between the lines of the same leg. */
type Point = readonly number[];
const minus = (a: Point, b: Point) => a.map((value, axis) => value - b[axis]!);
const size = (a: Point) => Math.hypot(...a);
const apart = (p: Point, q: Point, r: Point): number => {
  const [way, to] = [minus(q, p), minus(r, p)];
  const on = way.reduce((sum, value, axis) => sum + value * to[axis]!, 0) / size(way) ** 2;
  return size(
    minus(
      to,
      way.map((value) => value * on),
    ),
  );
};
const VECTORS: Record<string, Point> = {
  up: [0, 0, 1],
  north: [0, 1, 0],
  south: [0, -1, 0],
  east: [1, 0, 0],
  west: [-1, 0, 0],
  down: [0, 0, -1],
};
const ACROSS: Record<string, string[]> = {
  up: ["north", "south", "east", "west"],
  down: ["north", "south", "east", "west"],
  north: ["up", "down", "east", "west"],
  south: ["up", "down", "east", "west"],
  east: ["up", "down", "north", "south"],
  west: ["up", "down", "north", "south"],
};

test("law: every leg of every conduit lies at its spacing from the first one's, and tickets bent again are parallel", () => {
  const turn = fc.record({
    way: fc.nat(3),
    leg: fc.integer({ min: 60, max: 110 }),
    extra: fc.nat(3),
    angle: fc.constantFrom(15, 22.5, 30, 45),
  });
  let seen = 0;
  fc.assert(
    fc.property(
      fc.constantFrom("up", "north", "east", "west"),
      fc.array(turn, { minLength: 1, maxLength: 4 }),
      fc.nat(3),
      (first, turns, at) => {
        const toward = ACROSS[first]![at]!;
        let way: string = first;
        const steps = [`${first} 70`];
        for (const { way: next, leg, extra, angle } of turns) {
          way = ACROSS[way]![next]!;
          steps.push(`${way} ${leg}`);
          if (extra === 0) steps.push(`offset 5 ${ACROSS[way]![(next + 1) % 4]} at ${angle}`, "ahead 60");
          if (extra === 1) steps.push("union", "ahead 40");
        }
        const route = steps.join(", ");
        const job = buildJob({ runs: table(route, `3 at 3 ${toward}`) });
        if (unbuiltRows(job).length > 0) return;
        seen++;
        const runs = builtRows(job).map((row) => row.built);
        runs.slice(1).forEach((member, index) => {
          const shift = 3 * (index + 1);
          const own = member.pulls[0]!.pull.points.map((point) =>
            point.map((value, axis) => value + shift * VECTORS[toward]![axis]!),
          );
          const base = runs[0]!.pulls[0]!.pull.points;
          base.slice(1).forEach((point, leg) => {
            for (const end of [own[leg]!, own[leg + 1]!]) expect(apart(base[leg]!, point, end)).toBeCloseTo(shift, 6);
          });
          const bent = bendAgain(scheduleRun(member), onBench(HALF_EMT));
          expect(misfit(bent[0]!.points, member.pulls[0]!.pull.points)).toBeLessThan(1e-6);
        });
      },
    ),
    { numRuns: 150, seed: 41 },
  );
  expect(seen).toBeGreaterThan(50);
});

test("what holds it: trapezes, strut, rods and straps, with the load of conduit and conductors", () => {
  const [, ...lines] = jobTakeoff(table("east 240", "4 at 3 north", "2")) as (string | number)[][];
  const of = (name: string) => lines.find(([item]) => item === name);
  // 240 in.: supports 36 in. from each end, 168 between at most 120 apart: three; twice.
  expect(of("trapeze")).toMatchObject({ 2: 6 });
  // Three gaps of 3 in., one outside diameter of 2.197, 2 in. on each side.
  expect(of("strut")![2]).toBeCloseTo((6 * (9 + 2.197 + 4)) / 12, 9);
  expect(of("threaded rod")).toMatchObject({ 2: 12 });
  expect(of("EMT 2 strut strap")).toMatchObject({ 2: 24 });
  expect(lines.some(([item]) => item === "EMT 2 strap")).toBe(false);
  // EMT 2 weighs 148 lb/100 ft (Steel Tube Institute): 4 × 1.48 × 10.
  expect(String(of("trapeze")!.at(-1))).toContain("59.2 lb on each at most");
  expect(of("EMT 2 set-screw connector")).toMatchObject({ 2: 16 });
  // One box where the rack ends, for each of the two racks.
  expect(of("Box")).toMatchObject({ 2: 2 });
});

test("a box on the way is one of the rack", () => {
  const [, ...lines] = jobTakeoff(table("east 100, box, ahead 100", "3 at 3 north")) as (string | number)[][];
  expect(lines.find(([item]) => item === "EMT 1/2 pull box")).toMatchObject({ 2: 2 });
});

test.each([
  ["up 40, east 60", "3", "Rack must be how many conduits"],
  ["up 40, east 60", "1 at 3 north", "Rack, conduits, must be"],
  ["up 40, east 60", "3 at 0.5 north", "at least the outside diameter of EMT 1/2, 0.706 in.; got 0.5 in."],
  ["up 40, east 60", "3 at 3 up", "step 1: the other conduits of a rack must lie square to the run's first leg."],
  ["up 10, east 60", "6 at 3 east", "step 1: this leg of A-5 would be -2 in.: make it longer, or the rack narrower."],
  ["east 40, saddle 3 north at 45, ahead 40", "2 at 3 north", "step 2: a saddle of a rack must rise square"],
  ["east 40, box, north 40", "2 at 3 north", "a rack cannot turn in a box"],
  ["east 40, flex 24 up 12", "2 at 3 north", "step 2: a flexible piece is written run by run"],
])("%s with %s: %s", (route, rack, words) => expect(problem(route, rack)).toContain(words));

test("a name that is there already is told, and a rack that comes to stand upright", () => {
  const rows = [
    ...table("up 40, east 60, south 40", "2 at 3 west"),
    ["A-2", "EMT", "1/2", "up 40", 1, "", "", "", "", ""],
  ];
  const told = checkJob(buildJob({ runs: rows }), 2023).map(({ run, finding }) => `${run}: ${finding}`);
  expect(told.join("\n")).toContain("A-1: from step 2 on its conduits lie one above the other.");
  expect(told.some((line) => line.startsWith("A-2") && /twice|row/.test(line))).toBe(true);
  expect([...new Set(scheduleJob(buildJob({ runs: rows })).map(({ Run }) => Run))]).toEqual(["A-1", "A-2"]);
});
