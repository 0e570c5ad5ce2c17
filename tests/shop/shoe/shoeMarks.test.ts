/**
 * Distances on a shoe and the marks that go with them, by hand for R 4, deduct 5, OD 0.706 (half of it 0.353): arrow lead
 * 5 − 4.353 = 0.647; back gain 8.706 − 2π; star 5 − back gain from the arrow; half the arc of a 90 is π. [in], [°]
 */
import type { CornerKind, RouteCorner } from "../../../src/route/text/types";
import { dialOrWords } from "../../../src/shop/shoe/dialOrWords";
import { bendKind, settingFor } from "../../../src/shop/schedule/lineUp";
import { markFor, type Hook, type LineUp } from "../../../src/shop/shoe/marks";
import { arrowLead, backGain, notchFromArrow, starFromArrow, tailNeeded } from "../../../src/shop/shoe/shoe";
import { buildRun } from "../../../src/shop/run/buildRun";
import type { Piece, PieceBend } from "../../../src/shop/run/builtRun";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const EXACT = 9;
const BACK_GAIN = 8.706 - 2 * Math.PI;
const STAR = 5 - BACK_GAIN;

test("distances on the shoe", () => {
  expect(backGain(HALF_EMT)).toBeCloseTo(BACK_GAIN, EXACT);
  expect(arrowLead(HALF_EMT)).toBeCloseTo(0.647, EXACT);
  expect(starFromArrow(HALF_EMT)).toBeCloseTo(STAR, EXACT);
  expect(notchFromArrow(HALF_EMT, 45)).toBeCloseTo(0.647 + Math.PI / 2, EXACT);
  expect(tailNeeded(HALF_EMT)).toBe(2);
  expect(tailNeeded({ ...HALF_EMT, shortestTail: 0.5 })).toBeCloseTo(0.647, EXACT);
});

test.each<[LineUp, Hook, number]>([
  ["arrow", "datum", 20 - 0.647],
  ["star", "datum", 20 - 0.647 + STAR],
  ["notch", "datum", 20 + Math.PI],
  ["arrow", "far", 20 + 2 * Math.PI + 0.647],
  ["star", "far", 20 + 2 * Math.PI + 0.647 - STAR],
  ["notch", "far", 20 + Math.PI],
])(
  "a 90 that starts 20 in. from the datum end, by the %s with the %s end hooked, is marked at %d",
  (up, hook, mark) => {
    expect(markFor(HALF_EMT, 20, 90, up, hook)).toBeCloseTo(mark, EXACT);
  },
);

test("the dial reads the angle, the springback and its start, up to its end and no farther", () => {
  const shoe = { ...HALF_EMT, springback: 4, dialStart: -1 };
  // A springback of 4° at 90° is a third of that at 30°: −1 + 30 + 4/3.
  expect(dialOrWords(shoe, 30)).toBeCloseTo(29 + 4 / 3, 12);
  expect(dialOrWords({ ...shoe, dialTo: 93 }, 90)).toBe(93);
  expect(dialOrWords({ ...shoe, dialTo: 93 }, 90.5)).toBe("past 93°");
});

const pieceOf = (route: string): Piece => buildRun(runOf(route), HALF_EMT).pulls[0]!.pieces[0]!;
const kindsOf = ({ bends }: Piece) => bends.map((bend, index) => bendKind(bend, bends[index - 1]));
const settingsOf = (route: string, shoe = HALF_EMT) => {
  const piece = pieceOf(route);
  return piece.bends.map((_, index) => Object.values(settingFor(piece, index, shoe)).join(" "));
};

describe("the trade's word for a bend", () => {
  test.each<[string, string[]]>([
    ["up 20, east 30, down 25", ["stub-up", "back-to-back"]],
    // The same legs, but the second 90 turns on instead of back.
    ["up 20, east 30, up 25", ["stub-up", "90"]],
    ["up 20, east 30, north 25", ["stub-up", "90"]],
    ["up 20, bend 40 east, ahead 30, bend 90 down, ahead 12", ["kick", "90"]],
    ["up 20, east 30, bend 40 down, ahead 25", ["stub-up", "kick"]],
    ["up 30, sweep 20 in 2, east 40", ["sweep", "sweep"]],
    ["east 20, offset 6 up at 30, ahead 20, down 15", ["offset", "offset", "90"]],
  ])("%s", (route, kinds) => {
    expect(kindsOf(pieceOf(route))).toEqual(kinds);
  });

  test("the first 90 of a later piece is no stub-up: it is not the first of its pull", () => {
    const [, second] = buildRun(runOf("up 60, east 100, down 30"), HALF_EMT).pulls[0]!.pieces;
    expect(kindsOf(second!)).toEqual(["90"]);
  });
});

describe("what is lined up, and which end is hooked", () => {
  test.each<[string, string[]]>([
    ["up 20, east 30, down 25", ["arrow datum", "star far"]],
    ["up 20, east 30, up 25", ["arrow datum", "arrow datum"]],
    ["up 20, bend 40 east, ahead 30, bend 90 down, ahead 12", ["arrow datum", "arrow datum"]],
    ["east 40, saddle 3 up at 45, ahead 40", ["arrow far", "notch far", "arrow datum"]],
    ["east 40, saddle 3 up at 60, ahead 40", ["arrow far", "notch far", "arrow datum"]],
    ["east 40, saddle 3 up at 30, ahead 40", ["arrow far", "notch far", "arrow datum"]],
    // No notch for 50°: the arrow.
    ["east 40, saddle 3 up at 50, ahead 40", ["arrow far", "arrow datum", "arrow datum"]],
    // Angles that have a notch, but not in the middle of a saddle.
    ["east 40, offset 6 up at 45, ahead 40", ["arrow datum", "arrow datum"]],
    ["east 40, saddle 3 up over 12 at 30, ahead 40", Array.from({ length: 4 }, () => "arrow datum")],
  ])("%s", (route, settings) => {
    expect(settingsOf(route)).toEqual(settings);
  });

  test("the other end is hooked where only that one is long enough to hold", () => {
    // By hand: a 90 on R 4 starts 4 in. before its corner and leaves 4 in. of the other leg.
    expect(settingsOf("up 6, east 30")).toEqual(["arrow datum"]); // 2 to hold: enough
    expect(settingsOf("up 5.9, east 30")).toEqual(["arrow far"]);
    expect(settingsOf("up 5.9, east 6")).toEqual(["arrow far"]); // 2 on the far side: enough
    expect(settingsOf("up 5.9, east 5.9")).toEqual(["arrow datum"]); // neither: as usual
    // The arrow's mark must be on the conduit as well: a shoe that holds an inch still needs its lead.
    const lead = { ...HALF_EMT, shortestTail: 0, deduct: 6.353 };
    expect(settingsOf("up 5.9, east 30", lead)).toEqual(["arrow far"]);
    expect(settingsOf("up 6.1, east 30", lead)).toEqual(["arrow datum"]);
  });

  test("a piece that starts with the middle of a saddle hooks its datum end", () => {
    const { bends, ...piece } = pieceOf("east 40, saddle 3 up at 45, ahead 40");
    expect(settingFor({ ...piece, bends: bends.slice(1) }, 0, HALF_EMT)).toEqual({ lineUp: "notch", hook: "datum" });
  });
});

describe("bends that no route gives, made by hand", () => {
  const corner = (kind: CornerKind, place = 1): RouteCorner => ({
    ...{ point: [0, 0, 0], radius: 4, kind, step: 2, group: 1, place, of: 1 },
  });
  const bend = (cells: Partial<PieceBend> = {}): PieceBend => ({
    ...{ corner: corner("bend"), angle: 90, radius: 4, start: 30, plane: 0, legBefore: 30, place: 1, ...cells },
  });
  const piece = (bends: PieceBend[], cutLength = 100): Piece => ({
    ...{ number: 3, pull: 1, cutLength, bends, coupledBefore: false, coupledAfter: false },
  });
  const settings = (...bends: PieceBend[]) => bends.map((_, index) => settingFor(piece(bends), index, HALF_EMT));
  const [usual, star] = [
    { lineUp: "arrow", hook: "datum" },
    { lineUp: "star", hook: "far" },
  ];

  test("only two plain 90s in a plane that turn the same way are back to back", () => {
    const second = bend({ start: 60 });
    expect([bendKind(second, bend()), settings(bend(), second)[1]]).toEqual(["back-to-back", star]);
    for (const first of [bend({ angle: 40 }), bend({ corner: corner("sweep") })]) {
      expect([bendKind(second, first), settings(first, second)[1]]).toEqual(["90", usual]);
    }
    for (const other of [bend({ start: 60, angle: 40 }), bend({ start: 60, corner: corner("sweep") })]) {
      expect(settings(bend(), other)[1]).toEqual(usual);
    }
    expect(bendKind(second, undefined)).toBe("90");
  });

  test("a tail of exactly what the shoe needs is long enough", () => {
    // An arc of no length, so that the far tail too is a round number.
    const at = (start: number, cutLength: number) =>
      settingFor(piece([bend({ start, radius: 0 })], cutLength), 0, HALF_EMT).hook;
    expect([at(2, 50), at(1.99, 3.99), at(1.99, 3.98)]).toEqual(["datum", "far", "datum"]);
  });

  test("the first bend of a saddle is hooked toward its center, unless only the datum end can be held", () => {
    const first = bend({ corner: corner("three-bend saddle"), angle: 22.5, radius: 0 });
    const hook = (cutLength: number) => settingFor(piece([first], cutLength), 0, HALF_EMT).hook;
    expect([hook(32), hook(31.99)]).toEqual(["far", "datum"]);
  });

  test("the center of a saddle is notched, its outer bends are not, whatever their angle", () => {
    const saddle = (place: number) => bend({ corner: corner("three-bend saddle", place), angle: 30 });
    expect(settings(saddle(1), saddle(2), saddle(3)).map(({ lineUp }) => lineUp)).toEqual(["arrow", "notch", "arrow"]);
  });

  test("a bend that is not there is refused with its number and its piece's", () => {
    expect(() => settingFor(piece([bend()]), 4, HALF_EMT)).toThrow(new RangeError("piece 3 has no bend 5"));
  });
});
