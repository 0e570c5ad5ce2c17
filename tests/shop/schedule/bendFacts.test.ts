/** One bend of a run in all its facts, by hand for 1/2 EMT on R 4 (arrow 0.647 before the bend). [in], [°] */
import { bendFacts, type BendFacts } from "../../../src/shop/schedule/bendFacts";
import { buildRun } from "../../../src/shop/run/buildRun";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const EXACT = 9;
const near = (value: number) => expect.closeTo(value, EXACT) as number;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;
/** Both setbacks less the arc, R 4. */
const gainOf = (degrees: number): number => 8 * Math.tan(radians(degrees / 2)) - 4 * radians(degrees);

const facts = (route: string, which: number): BendFacts => bendFacts(buildRun(runOf(route), HALF_EMT), which);

test("a 90: its mark, what it gains; it shrinks nothing, as it changes direction", () => {
  const { rows, ...others } = facts("up 20, east 30", 1);
  expect(others).toEqual({
    words: `stub-up 90°: 1' 3-3/8"`,
    kind: "stub-up",
    gain: near(gainOf(90)),
    shrink: undefined,
  });
  expect(rows.map(({ Bend, Mark }) => [Bend, Mark])).toEqual([[1, near(15.353)]]);
});

test("an offset is one bend with two marks; it shrinks rise·tan(A/2) less both gains", () => {
  // The first mark is at 41.1 less the setback 4·tan 15° and 0.647; the second 12 less a gain farther.
  const { rows, ...others } = facts("east 41.1, offset 6 up at 30, ahead 40", 1);
  expect(others).toEqual({
    ...{ words: `offset 30°: 3' 3-3/8", 4' 3-5/16"`, kind: "offset", gain: near(2 * gainOf(30)) },
    shrink: near(6 * Math.tan(radians(15)) - 2 * gainOf(30)),
  });
  expect(rows.map(({ Bend }) => Bend)).toEqual([1, 2]);
});

test("a three-bend saddle is named by its center's angle; its legs are longer than the ground they cover", () => {
  const { words, gain, shrink, rows } = facts("up 30, east 60, saddle 3 up at 45, ahead 30", 2);
  const leg = (3 + 4 * (1 / Math.cos(radians(22.5)) - 1)) / Math.sin(radians(22.5));
  const gains = 2 * gainOf(22.5) + gainOf(45);
  expect(words).toMatch(/^three-bend saddle 45°: [^,]+, [^,]+, [^,]+$/);
  expect([gain, shrink]).toEqual([near(gains), near(2 * leg * (1 - Math.cos(radians(22.5))) - gains)]);
  expect(rows.map(({ Bend }) => Bend)).toEqual([3, 2, 4]);
});

test("a sweep tells its shots; it changes direction, as does a bend in two that comes back", () => {
  const sweep = facts("up 30, sweep 20 in 3, east 40", 1);
  expect(sweep.words).toMatch(/^sweep 3 × 30°: [^,]+, [^,]+, [^,]+$/);
  expect([sweep.gain, sweep.shrink]).toEqual([near(3 * gainOf(30)), undefined]);
});

describe("factory elbows", () => {
  const bought = (route: string, which: number, elbows: readonly number[]): BendFacts =>
    bendFacts(buildRun(runOf(route), HALF_EMT, elbows), which);

  test("an elbow is bought: no mark, but it gains as any bend", () => {
    const { rows, ...others } = bought("up 20, east 30", 1, [90]);
    expect(others).toEqual({
      words: "factory elbow 90°: bought, laid out at 4 in. radius",
      kind: "factory elbow",
      gain: near(gainOf(90)),
      shrink: undefined,
    });
    expect(rows.map(({ Bend, Mark, Angle }) => [Bend, Mark, Angle])).toEqual([["", "", 90]]);
  });

  test("an offset of two elbows shrinks as one that is bent", () => {
    const { words, shrink, gain } = bought("east 40, offset 6 up at 30, ahead 40", 1, [30]);
    expect(words).toBe("factory elbow 2 × 30°: bought, laid out at 4 in. radius");
    expect([gain, shrink]).toEqual([near(2 * gainOf(30)), near(6 * Math.tan(radians(15)) - 2 * gainOf(30))]);
  });

  test("a saddle whose outer bends are elbows is a saddle with one mark", () => {
    const { words, kind, rows } = bought("east 40, saddle 4 up at 60, ahead 40", 1, [30]);
    expect(kind).toBe("three-bend saddle");
    expect(words).toMatch(/^three-bend saddle 60°: factory elbow 30°, [^,]+ on piece 2, factory elbow 30°$/);
    expect(rows.map(({ Bend }) => Bend)).toEqual(["", 1, ""]);
  });

  test("bends behind elbows are found at their count", () => {
    const route = "up 20, east 40, offset 5 up at 30, ahead 20, north 20";
    expect([1, 2, 3].map((which) => bought(route, which, [90]).kind)).toEqual([
      "factory elbow",
      "offset",
      "factory elbow",
    ]);
    expect(bought(route, 2, [90]).rows.map(({ Piece, Bend }) => [Piece, Bend])).toEqual([
      [2, 1],
      [2, 2],
    ]);
  });
});

test("bends are counted through boxes and pieces; the piece is named where there are several", () => {
  const route = "up 30, east 40, box, south 25, up 25";
  expect(facts(route, 1).words).toBe(`stub-up 90°: 2' 1-3/8" on piece 1`);
  expect(facts(route, 2).words).toBe(`stub-up 90°: 1' 8-3/8" on piece 2`);
  expect(facts(route, 2).rows).toMatchObject([{ Piece: 2, Bend: 1 }]);
  expect(facts("up 60, east 90, north 50", 2).words).toMatch(/^90 90°: .* on piece 2$/);
  // An offset is the second bend, with the second and third lines; the third bend has the fourth.
  const linesOf = (which: number) =>
    facts("up 20, east 40, offset 5 up at 30, ahead 20, north 20", which).rows.map(({ Bend }) => Bend);
  expect([1, 2, 3].map(linesOf)).toEqual([[1], [2, 3], [4]]);
  // A straight piece in between has a line of the schedule, but no bend.
  expect(facts("up 30, east 260, north 30", 2).rows).toMatchObject([{ Piece: 3, Bend: 1 }]);
});

test.each<[string, number, string]>([
  ["up 30, east 40, north 40", 3, "the run has 2; got 3."],
  ["up 30, east 40, north 40", 0, "the run has 2; got 0."],
  ["east 40", 1, "the run has none; got 1."],
])("%s has no bend %d", (route, which, words) => {
  expect(() => facts(route, which)).toThrow(`bend must be the number of a bend of the run, and ${words}`);
});
