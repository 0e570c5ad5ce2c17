import { USUAL_BENCH, readBench, type Bench } from "../../../src/shop/bench/bench";
import { buildRun } from "../../../src/shop/run/buildRun";
import type { Piece } from "../../../src/shop/run/builtRun";
import { showInches } from "../../../src/units/show";
import { findSetup, type SetupStep } from "../../../src/shop/bench/setupSearch";
import { HALF_EMT, runOf } from "../../support/demoShoe";

/** Expected numbers below are derived by hand from R 4, OD 0.706: half the OD is 0.353. Exact paths [in]. */
const EXACT = 9;

/** A swing is looked at every few degrees; what is missed between two looks [in]. */
const SWING_SAMPLING = 0.05;

const pieceOf = (route: string): Piece => buildRun(runOf(route), HALF_EMT).pulls[0]!.pieces[0]!;
const setupOf = (route: string, bench: Partial<Bench> = {}) =>
  findSetup(pieceOf(route), HALF_EMT, { ...USUAL_BENCH, ...bench });

const wordsOf = (step: SetupStep | undefined) => step?.room.blocked.map((reason) => reason(showInches));

describe("findSetup", () => {
  test("one 90: the hooked stub swings up, its end ending a radius, its straight and half the OD above", () => {
    const { steps, order } = setupOf("up 45, east 40");
    expect(order).toBe("usual");
    expect(steps).toHaveLength(1);
    expect(steps[0]!.room.above).toBeCloseTo(4 + 41 + 0.353, EXACT);
    expect(steps[0]!.room.below).toBeCloseTo(0.353, EXACT);
    // The stub's end goes round the shoe's center on a circle: farthest out when level with the center.
    expect(Math.abs(steps[0]!.room.behind - Math.hypot(41, 4))).toBeLessThan(SWING_SAMPLING);
    // Before the stroke the free end holds the arc and its straight: 2π + 36.
    expect(steps[0]!.room.ahead).toBeCloseTo(2 * Math.PI + 36, EXACT);
  });

  test("where the free end swings, the same 90 needs room above for the other leg", () => {
    const { steps } = setupOf("up 45, east 40", { swings: "free end" });
    expect(steps[0]!.room.above).toBeCloseTo(4 + 36 + 0.353, EXACT);
  });

  test("a run whose obvious order hits the floor gets another order", () => {
    // Bending the second 90 last would hang the 45 in. stub under a bench 36 in. high.
    const { steps, possible, order } = setupOf("up 45, east 40, up 12");
    expect([possible, order]).toEqual([true, "searched"]);
    expect(steps.map((step) => step.index)).toEqual([1, 0]);
    expect(steps[1]!.room.below).toBeCloseTo(12 + 0.353, EXACT);
  });

  test("the same run keeps its order on a bench that is high enough, or that bends flat on the table", () => {
    expect(setupOf("up 45, east 40, up 12", { height: 46 }).order).toBe("usual");
    expect(setupOf("up 45, east 40, up 12", { plane: "horizontal" }).order).toBe("usual");
  });

  test("a run that no order clears says why", () => {
    const { steps, possible, order } = setupOf("up 45, east 40, up 50");
    expect([possible, order]).toEqual([false, "none works"]);
    expect(wordsOf(steps[1])).toEqual([
      "meets the floor: reaches 45.4 in. below the conduit, the floor is 36 in. below",
    ]);
  });

  test("a low ceiling and a near wall are met", () => {
    expect(wordsOf(setupOf("up 45, east 60", { roomAbove: 45 }).steps[0])).toEqual([
      "needs 45.4 in. above the conduit; there is 45 in.",
    ]);
    expect(wordsOf(setupOf("up 45, east 60", { plane: "horizontal", roomBeside: 45 }).steps[0])).toEqual([
      "needs 45.4 in. beside the conduit; there is 45 in.",
    ]);
  });

  test("flat on a table, a leg that hangs under the table's top meets it", () => {
    // Second bend square to the first: lying flat, the first stub stands upright, and hangs when rolled the other way.
    const table = { plane: "horizontal", tableLength: 60, tableWidth: 30 } as const;
    const hanging = setupOf("up 20, east 30, north 15", table);
    const standing = setupOf("up 20, east 30, south 15", table);
    expect([hanging.order, standing.order].sort()).toEqual(["searched", "usual"]);
  });

  test("a tail too short to hold is told, and the other end is hooked when it can be", () => {
    const { steps, order } = setupOf("up 5.5, east 40");
    expect([order, steps[0]!.hook]).toEqual(["usual", "far"]);
    expect(wordsOf(setupOf("up 5.5, east 5.5").steps[0])).toEqual([
      "the datum side has 1.5 in. straight to hold; the shoe needs 2 in.",
    ]);
  });
});

describe("readBench", () => {
  test("keeps the usual value of what is left out", () => {
    expect(
      readBench([
        ["Setting", "Value"],
        ["Shoe height", `3' 6"`],
        ["plane", "Horizontal"],
      ]),
    ).toEqual({
      ...USUAL_BENCH,
      height: 42,
      plane: "horizontal",
    });
  });

  test.each([
    ["Plane", "sideways", 'bench "plane" must be vertical or horizontal; got "sideways".'],
    ["Shoe height", -3, 'bench "shoe height" must be at least 0 in. and at most 600 in.; got -3 in.'],
    [
      "Colour",
      1,
      'bench row 2: Setting must be one of plane, curls, swings, shoe height, room above, room beside, table drop, table length, table width, support beyond; got "colour".',
    ],
  ])("refuses %s = %s", (setting, value, message) => {
    expect(() =>
      readBench([
        ["Setting", "Value"],
        [setting, value],
      ]),
    ).toThrow(message);
  });
});
