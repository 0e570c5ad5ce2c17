/**
 * A handbook's spacing beside the exact one, by hand for 1/2 EMT on R 4 (arrow 0.647 before the bend): two bends of A° on
 * a leg stand leg − (8·tan A/2 − 4·A) apart along the conduit. Lengths [in], angles [°].
 */
import { buildRun } from "../../../src/shop/run/buildRun";
import type { Piece } from "../../../src/shop/run/builtRun";
import { handbookSpacing } from "../../../src/shop/schedule/handbook";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const EXACT = 9;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const sin = (degrees: number): number => Math.sin(radians(degrees));

const piecesOf = (route: string, stick = 120): readonly Piece[] =>
  buildRun(runOf(route, { stick }), HALF_EMT).pulls[0]!.pieces;
const spacingsOf = (route: string) => {
  const [piece] = piecesOf(route);
  return piece!.bends.map((_, index) => handbookSpacing(piece!, index, HALF_EMT));
};
/** The leg of an offset less the gain of one bend, half of it at each end. */
const alongLeg = (leg: number, angle: number): number => leg - (8 * Math.tan(radians(angle / 2)) - 4 * radians(angle));
const near = (value: number) => expect.closeTo(value, EXACT) as number;

// Published: NAVEDTRA 14026, table 5-3: a multiplier of 2 for 30°, of 2.6 for 22.5°.
test.each<[string, number, number, number, string]>([
  ["offset 6 up at 30", 30, 6, 2, "2 × rise"],
  ["offset 6 up at 35", 35, 6, 1 / sin(35), "cosecant 1.7434 × rise"],
  // Rolled: 3 up and 4 to the north are 5 together.
  ["offset 3 up 4 north at 30", 30, 5, 2, "2 × rise"],
  ["box offset 1.5 up at 22.5", 22.5, 1.5, 2.6, "2.6 × rise"],
])("%s: beside its second bend", (step, angle, rise, multiplier, rule) => {
  const [first, second] = spacingsOf(`east 40, ${step}, ahead 40`);
  expect(first).toBeUndefined();
  expect(second).toEqual({ handbook: near(multiplier * rise), exact: near(alongLeg(rise / sin(angle), angle)), rule });
});

test("a four-bend saddle is two offsets: beside its second and fourth bend", () => {
  const told = { handbook: near(6), exact: near(alongLeg(6, 30)), rule: "2 × rise" };
  expect(spacingsOf("east 40, saddle 3 up over 12 at 30, ahead 40")).toEqual([undefined, told, undefined, told]);
});

test("a three-bend saddle: beside both outer bends, from the center's mark", () => {
  const exactOf = (height: number, center: number): number => {
    const outer = center / 2;
    // The crest clears the height, so the corner stands R·(1/cos − 1) over it.
    const leg = (height + 4 * (1 / Math.cos(radians(outer)) - 1)) / sin(outer);
    const straight = leg - 4 * Math.tan(radians(outer / 2)) - 4 * Math.tan(radians(outer));
    return straight - 0.647 + 4 * radians(outer);
  };
  // Published: NAVEDTRA 14026, table 5-4: 10 in. for 45° and a depth of 4.
  const told = { handbook: near(10), exact: near(exactOf(4, 45)), rule: "2.5 × height" };
  expect(spacingsOf("east 40, saddle 4 up at 45, ahead 40")).toEqual([told, undefined, told]);
  // Nothing in print for 50°, and no notch: the center too is marked for the arrow, its lead before its start.
  const [first, center, last] = spacingsOf("east 40, saddle 4 up at 50, ahead 40");
  expect(center).toBeUndefined();
  const words = { handbook: near(4 / sin(25)), rule: "cosecant 2.3662 × height" };
  const halfArc = 4 * radians(25);
  expect(first).toEqual({ ...words, exact: near(exactOf(4, 50) - halfArc - 0.647) });
  expect(last).toEqual({ ...words, exact: near(exactOf(4, 50) + halfArc + 0.647) });
});

test("plain bends and sweeps have no spacing", () => {
  expect(spacingsOf("up 40, east 40, north 40")).toEqual([undefined, undefined]);
  expect(spacingsOf("up 40, sweep 20 in 4, east 40")).toEqual([undefined, undefined, undefined, undefined]);
});

test("nor has a bend whose partner is on another piece", () => {
  // 30 in. of rise at 30° are a leg of 60: the coupling stands on it.
  const pieces = piecesOf("east 40, offset 30 up at 30, ahead 40", 80);
  expect(pieces.map(({ bends }) => bends.length)).toEqual([1, 1]);
  expect(handbookSpacing(pieces[1]!, 0, HALF_EMT)).toBeUndefined();
  const [first, second, ...others] = piecesOf("east 90, saddle 30 up at 45, ahead 90", 130);
  expect([first!.bends.length, second!.bends.length, others.length]).toEqual([2, 1, 0]);
  expect(handbookSpacing(first!, 0, HALF_EMT)).toBeDefined();
  expect(handbookSpacing(second!, 0, HALF_EMT)).toBeUndefined();
});
