import { readRules } from "../../../src/rules/rules";
import { fittingRule } from "../../../src/shop/fittings/fittingRule";
import { jobOfRuns } from "../../support/jobs";
/**
 * Runs worked out with a shoe, by hand for R 4: a 90 takes 4 in. of each leg and 2π of conduit; a coupling stands 3 in. (2
 * to hold, 1 for its seat) from bends and ends. Lengths [in].
 */
import { buildRun, buildRunWith } from "../../../src/shop/run/buildRun";
import type { BuiltRun } from "../../../src/shop/run/builtRun";
import type { Run } from "../../../src/shop/run/runsTable";
import { readShoes, type ShoeBook } from "../../../src/shop/shoe/shoeBook";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const EXACT = 9;
const ARC = 2 * Math.PI;

const built = (route: string, cells: Partial<Run> = {}): BuiltRun => buildRun(runOf(route, cells), HALF_EMT);
const near = (value: number) => expect.closeTo(value, 2) as number;
const cutsOf = ({ pulls }: BuiltRun): number[] =>
  pulls.flatMap(({ pieces }) => pieces.map(({ cutLength }) => cutLength));

describe("pieces of a run", () => {
  test("no pup at the box where a longer last piece takes no stick more; else two couplings' room is the least", () => {
    expect(cutsOf(built("east 122"))).toEqual([110, 12]);
    expect(cutsOf(built("east 130"))).toEqual([118, 12]);
    expect(cutsOf(built("east 40", { stick: 18 }))).toEqual([near(12), near(16), near(12)]);
    // Two sticks of 16 in. and a piece of at least 6: no three pieces have a foot each.
    expect(cutsOf(built("east 34", { stick: 16 }))).toEqual([near(12), near(16), near(6)]);
  });

  test("a coupling stands 3 in. from a bend at the least, on either side of it", () => {
    // Ends of 2 in. take no coupling, so it stands on the leg of 112 between the bends, where a piece gets shortest.
    expect(cutsOf(built("up 6, east 120, up 6"))).toEqual([near(4 + 112 + 2 * ARC - 12), near(12)]);
    expect(cutsOf(built("up 6, east 120, up 9", { stick: 125 }))).toEqual([near(12), near(2 + 112 + 5 + 2 * ARC - 12)]);
    // Six inches between two bends are just enough for a coupling, less is not.
    const far = (leg: number) => cutsOf(built(`up 30, east ${leg}, up 30`, { stick: 40 }));
    expect(far(14.001)).toEqual([near(26 + ARC + 3), near(3.001 + ARC + 26)]);
    expect(far(13.9)).toHaveLength(3);
  });

  test("bends too close together for a coupling in between are told with the stretch and the stick", () => {
    // Three 90s with an inch between them take 26 to 46.85 of the conduit; couplings may stand up to 23 and from 49.85.
    expect(() => built("up 30, east 9, up 9, east 30", { stick: 24 })).toThrow(
      "A stick of 24 in. cannot span from 23 in. to 49.85 in. along the conduit: bends stand too close together for a " +
        "coupling in between. Make a leg longer or use a longer stick.",
    );
  });

  test("each bend lies on its piece, with its place, plane and the leg before it", () => {
    const { pulls } = built("up 60, east 90, north 50");
    const [first, second, ...others] = pulls[0]!.pieces;
    expect(others).toEqual([]);
    expect(first).toMatchObject({ number: 1, pull: 1, coupledBefore: false, coupledAfter: true });
    expect(second).toMatchObject({ number: 2, pull: 1, coupledBefore: true, coupledAfter: false });
    expect(first!.bends).toMatchObject([
      {
        place: 0,
        plane: 0,
        legBefore: expect.closeTo(60, EXACT) as number,
        start: expect.closeTo(56, EXACT) as number,
      },
    ]);
    expect(second!.bends).toMatchObject([
      {
        ...{ place: 1, plane: expect.closeTo(90, EXACT) as number, legBefore: expect.closeTo(90, EXACT) as number },
        start: expect.closeTo(56 + ARC + 82 - first!.cutLength, EXACT) as number,
      },
    ]);
    expect(pulls[0]!.joints).toEqual([first!.cutLength]);
  });

  test("what is wrong in each pull is told, a sentence after the other", () => {
    expect(() => built("up 3, east 20, box, up 2, east 20")).toThrow(/ 1 in\. short\. step \d+: .* 2 in\. short\.$/);
  });
});

describe("without a shoe in the book", () => {
  const large = (route: string): BuiltRun => buildRunWith(runOf(route, { raceway: "RMC", size: "4" }), readShoes(null));

  test("straight conduit is built all the same, with a shoe that only stands in", () => {
    // Published: NEC chapter 9, table 2, other bends: 24 in. for 4; ANSI C80.1: outside diameter 4.500.
    expect(large("east 90").shoe).toEqual({
      ...{ raceway: "RMC", size: "4", radius: 24, outsideDiameter: 4.5, deduct: 26.25 },
      ...{ springback: 0, dialFrom: 0, dialTo: 90, dialStart: 0, shortestTail: 0 },
      source: "no shoe: straight conduit",
    });
    expect(cutsOf(large("east 90, box, east 20"))).toEqual([90, 20]);
  });

  test("a bend, in whatever pull, is bought; where the shop bends every size it needs a shoe", () => {
    expect(large("up 90, east 90").pulls[0]!.elbows).toHaveLength(1);
    const own = fittingRule(readRules([["Rule", "Value"], ["Factory elbows above size, metal", "none"]])); // prettier-ignore
    const none = (route: string) => () =>
      buildRunWith(runOf(route, { raceway: "RMC", size: "4" }), readShoes(null), own);
    expect(none("up 90, east 90")).toThrow("There is no built-in shoe for RMC 4");
    expect(none("east 90, box, east 90, up 90")).toThrow("There is no built-in shoe for RMC 4");
  });
});

test("an error that no user made is not told as a finding of a row", () => {
  const fail = () => {
    throw new RangeError("the book is broken");
  };
  const broken: ShoeBook = { own: [], problems: [], shoeFor: fail, lookUp: fail };
  const run = runOf("east 60");
  for (const use of [() => buildRunWith(run, broken), () => jobOfRuns([run], broken)]) {
    expect(use).toThrow(new RangeError("the book is broken"));
  }
});
