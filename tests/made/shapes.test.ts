/** Shapes of pieces: what is the same, what fits, and bent-again geometry as the second route. */
import fc from "fast-check";
import { fitOf, fitsAsItIs, longestStraight } from "../../src/made/standing/fits";
import { buildRun } from "../../src/shop/run/buildRun";
import { runPieces } from "../../src/shop/run/builtRun";
import { pieceShape, shapeCode, turnedAround, type PieceShape } from "../../src/shop/run/pieceShape";
import { reverseRoute } from "./reverseRoute";
import { HALF_EMT, runOf } from "../support/demoShoe";

const shapesOf = (route: string, cells = {}): PieceShape[] => {
  const run = runOf(route, { stick: 480, ...cells });
  return runPieces(buildRun(run, HALF_EMT)).map((piece) => pieceShape(run, piece));
};
const shapeOf = (route: string, cells = {}): PieceShape => shapesOf(route, cells)[0]!;
const codeOf = (route: string, cells = {}): string => shapeCode(shapeOf(route, cells));

describe("one shape, one code", () => {
  test.each([
    ["the same run moved and turned", "up 20, east 30, north 40", "east 20, north 30, up 40"],
    ["the same run from its other end", "up 20, east 30, north 40", "south 40, west 30, down 20"],
    [
      "another name for the same bends",
      "up 20, offset 6 east at 30, ahead 30",
      "north 20, offset 6 up at 30, ahead 30",
    ],
    ["less than a thirty-second of difference", "up 20, east 30", "up 20.01, east 30"],
  ])("%s", (_, one, other) => expect(codeOf(one)).toBe(codeOf(other)));

  test.each([
    ["its mirror image", "up 20, east 30, north 40", "up 20, east 30, south 40"],
    ["a sixteenth longer", "up 20, east 30", "up 20, east 30.0625"],
    ["a bend elsewhere", "up 20, east 30", "up 21, east 29"],
    ["a degree more", "east 40, bend 30 up, ahead 40", "east 40, bend 31 up, ahead 40"],
  ])("but not %s", (_, one, other) => expect(codeOf(one)).not.toBe(codeOf(other)));

  test("raceway and size count, the run's name and quantity do not", () => {
    const code = codeOf("up 20, east 30");
    expect(codeOf("up 20, east 30", { name: "Z-9", quantity: 7, job: "Other" })).toBe(code);
    expect(codeOf("up 20, east 30", { raceway: "IMC" })).not.toBe(code);
    expect(codeOf("up 20, east 30", { size: "3/4" })).not.toBe(code);
  });

  test("a code is eight letters and digits that are not taken for one another", () => {
    expect(codeOf("up 20, east 30, north 40")).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/);
  });

  test("a thousand different pieces have a thousand codes", () => {
    const codes = new Set<string>();
    for (let leg = 0; leg < 1000; leg++) codes.add(codeOf(`up ${20 + leg / 16}, east 30, north 20`));
    expect(codes.size).toBe(1000);
  });
});

test("a piece turned around twice is as it was; walked from the other end, its run gives the same turned piece", () => {
  const leg = fc.integer({ min: 160, max: 600 }).map((sixteenths) => sixteenths / 16);
  fc.assert(
    fc.property(fc.tuple(leg, leg, leg, leg), fc.constantFrom("south", "north"), fc.boolean(), (legs, way, up) => {
      const [a, b, c, d] = legs;
      const route = `up ${a}, east ${b}, ${way} ${c}, ${up ? "up" : "down"} ${d}`;
      const shape = shapeOf(route);
      expect(turnedAround(turnedAround(shape))).toEqual(nearly(shape));
      expect(turnedAround(shape)).toEqual(nearly(shapeOf(reverseRoute(route))));
    }),
    { numRuns: 100 },
  );
});

/** A matcher: the same but for the last digits of lengths and angles. */
const nearly = ({ bends, cut, ...rest }: PieceShape) => ({
  ...rest,
  cut: expect.closeTo(cut, 8),
  bends: bends.map(({ start, end, angle, radius, turn }) => ({
    ...{ start: expect.closeTo(start, 8), end: expect.closeTo(end, 8), angle: expect.closeTo(angle, 8), radius },
    turn: expect.closeTo(turn, 6),
  })),
});

describe("a finished piece serves", () => {
  const fit = (made: string, needed: string) => fitOf(shapeOf(made), shapeOf(needed));

  test("as it is, whichever way round", () => {
    expect(fit("up 20, east 30", "up 20, east 30")).toEqual({ cutDatum: 0, cutFar: 0, around: false });
    expect(fit("up 20, east 30", "west 30, down 20")).toMatchObject({ around: true });
    expect(fitsAsItIs(fit("up 20, east 30", "west 30, down 20")!)).toBe(true);
  });

  test("cut shorter at either end or both", () => {
    expect(fit("up 24, east 30", "up 20, east 30")).toMatchObject({ cutDatum: expect.closeTo(4, 9), cutFar: 0 });
    const both = fit("up 24, east 33.5", "up 20, east 30")!;
    expect([both.cutDatum, both.cutFar]).toEqual([expect.closeTo(4, 9), expect.closeTo(3.5, 9)]);
    expect(fit("up 19, east 30", "up 20, east 30")).toBeUndefined();
  });

  test("cut between two of its bends", () => {
    // The second leg holds 30 − 2·4 in. of straight; the piece needs 12 − 4 of it.
    const needed = fit("up 20, east 30, north 40", "up 20, east 12")!;
    expect(needed).toMatchObject({ cutDatum: expect.closeTo(0, 9), around: false });
    expect(fit("up 20, east 30, north 19", "up 20, east 26")).toBeDefined();
    expect(fit("up 20, east 30, north 19", "up 20, east 26.2")).toBeUndefined();
  });

  test("with one more bend, anywhere on it", () => {
    const needed = "up 20, east 30, north 40";
    // Developed: a 90 of radius 4 takes 2·4 off its legs and adds 2π.
    const saved = 8 - 2 * Math.PI;
    expect(fit(`up 20, east ${70 - saved}`, needed)).toMatchObject({ bend: 2 });
    expect(fit(`east ${50 - saved}, north 40`, needed)).toMatchObject({ bend: 1 });
    expect(fit(`east ${90 - 2 * saved}`, needed)).toBeUndefined();
  });

  test("the bend between keeps the turn between its neighbors", () => {
    const needed = "up 40, east 40, offset 6 up at 30, ahead 40, north 40";
    const [shape] = [shapeOf(needed)];
    const without = (index: number, turn: number): PieceShape => ({
      ...shape,
      bends: shape.bends.flatMap((bend, place) =>
        place === index ? [] : [place === index + 1 ? { ...bend, turn } : bend],
      ),
    });
    // The kicks of the offset lie half a turn from each other: without the first, the second turns half a turn more.
    const turns = shape.bends.map(({ turn }) => turn);
    const right = without(1, Math.round(turns[1]! + turns[2]!));
    expect(fitOf(right, shape)).toMatchObject({ bend: 2 });
    expect(fitOf(without(1, turns[2]! + 90), shape)).toBeUndefined();
  });

  test("only of the same raceway and size", () => {
    expect(fitOf(shapeOf("up 20, east 30", { raceway: "RMC" }), shapeOf("up 20, east 30"))).toBeUndefined();
    expect(fitOf(shapeOf("up 20, east 30", { size: "3/4" }), shapeOf("up 20, east 30"))).toBeUndefined();
  });

  test("a straight piece from the longest straight of a bent one", () => {
    expect(longestStraight(shapeOf("up 20, east 50, north 30"))).toBeCloseTo(42, 9);
    expect(fit("up 20, east 50, north 30", "east 42")).toMatchObject({ cutDatum: expect.any(Number) });
    expect(fit("up 20, east 50, north 30", "east 42.2")).toBeUndefined();
  });
});
