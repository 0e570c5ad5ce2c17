import { jobOfRuns } from "../../support/jobs";
/** Orders that the set-up search finds, against every order of the bends with either end on the hook. 1/2 EMT on R 4. [in] */
import { USUAL_BENCH, type Bench } from "../../../src/shop/bench/bench";
import { buildRun } from "../../../src/shop/run/buildRun";
import type { Piece } from "../../../src/shop/run/builtRun";
import { settingFor } from "../../../src/shop/schedule/lineUp";
import type { Hook } from "../../../src/shop/shoe/marks";
import { scheduleRun } from "../../../src/shop/schedule/schedule";
import { findSetup } from "../../../src/shop/bench/setupSearch";
import { SETUP_HEADERS, setupTable } from "../../../src/shop/bench/setupTable";
import { readShoes } from "../../../src/shop/shoe/shoeBook";
import { strokeRoom, type StrokeRoom } from "../../../src/shop/bench/strokeCheck";
import { showInches } from "../../../src/units/show";
import { HALF_EMT, runOf } from "../../support/demoShoe";

interface Step {
  readonly index: number;
  readonly hook: Hook;
}

const pieceOf = (route: string): Piece => buildRun(runOf(route), HALF_EMT).pulls[0]!.pieces[0]!;
const doneIn = (piece: Piece, steps: readonly Step[]): boolean[] =>
  piece.bends.map((_, place) => steps.some(({ index }) => index === place));

/** A swap of the ends weighs 10, a hook that is not the schedule's 3, a saddle's outer bend before its center 2, a step back toward the datum end 1. */
function weightOf(piece: Piece, steps: readonly Step[]): number {
  const weights = steps.map(({ index, hook }, place) => {
    const before = steps[place - 1];
    const swap = before && before.hook !== hook ? 10 : 0;
    const back = before && before.index > index ? 1 : 0;
    const { kind, place: part, group } = piece.bends[index]!.corner;
    const made = steps.slice(0, place).map((step) => piece.bends[step.index]!.corner);
    const early =
      kind === "three-bend saddle" &&
      part !== 2 &&
      !made.some((corner) => corner.group === group && corner.place === 2);
    return swap + back + (early ? 2 : 0) + (settingFor(piece, index, HALF_EMT).hook === hook ? 0 : 3);
  });
  return weights.reduce((sum, weight) => sum + weight, 0);
}

/** Every way to make the piece, stroke by stroke. */
function everyWay(piece: Piece, bench: Bench): (readonly Step[])[] {
  const known = new Map<string, boolean>();
  const fits = (done: readonly boolean[], index: number, hook: Hook): boolean => {
    const key = [...done, index, hook].join();
    const answer = known.get(key) ?? strokeRoom(piece, done, index, hook, HALF_EMT, bench).blocked.length === 0;
    known.set(key, answer);
    return answer;
  };
  const onFrom = (steps: readonly Step[]): (readonly Step[])[] => {
    if (steps.length === piece.bends.length) return [steps];
    const done = doneIn(piece, steps);
    const open = piece.bends.flatMap((_, index) => (done[index] ? [] : [index]));
    return open.flatMap((index) =>
      (["datum", "far"] as const)
        .filter((hook) => fits(done, index, hook))
        .flatMap((hook) => onFrom([...steps, { index, hook }])),
    );
  };
  return onFrom([]);
}

const LOW = { roomAbove: 30 } as const;
const DOWN = { curls: "down", height: 30 } as const;
const FLAT = { plane: "horizontal", roomBeside: 30, height: 25 } as const;

test.each<[string, Partial<Bench>]>([
  ["up 45, east 40, up 12", { height: 36 }],
  ["up 45, east 20, north 20, up 14", { height: 20, swings: "free end" }],
  ["up 45, east 20, north 20, up 14", DOWN],
  ["up 41, offset 6 east at 30, ahead 12, north 20", { height: 14 }],
  ["up 41, offset 6 east at 30, ahead 12, north 20", FLAT],
  ["east 30, saddle 3 up at 45, ahead 25, up 20", LOW],
  ["north 30, saddle 3 east at 45, ahead 24, down 26", { height: 14 }],
  ["down 9, north 18, west 43, up 24", FLAT],
  ["north 19, west 38, up 16", LOW],
  ["north 26, west 13, south 40, west 23", LOW],
  ["down 17, north 24, up 25, north 29", LOW],
])("%s on a bench with %j: the cheapest of all ways", (route, room) => {
  const piece = pieceOf(route);
  const bench = { ...USUAL_BENCH, ...room };
  const { steps, order, possible } = findSetup(piece, HALF_EMT, bench);
  expect([order, possible]).toEqual(["searched", true]);
  const least = Math.min(...everyWay(piece, bench).map((way) => weightOf(piece, way)));
  expect(weightOf(piece, steps)).toBe(least);
  steps.forEach(({ index, hook, room: told }, place) => {
    const done = doneIn(piece, steps.slice(0, place));
    expect(told).toEqual(strokeRoom(piece, done, index, hook, HALF_EMT, bench));
  });
});

test("the usual way, kept or given back, has each stroke with the bends before it made", () => {
  for (const [route, order, height] of [
    ["up 20, east 30, north 25", "usual", 600],
    ["up 45, east 40, up 50", "none works", 36],
  ] as const) {
    const piece = pieceOf(route);
    const bench = { ...USUAL_BENCH, height };
    const setup = findSetup(piece, HALF_EMT, bench);
    expect([setup.order, setup.possible]).toEqual([order, order === "usual"]);
    const told = ({ blocked, ...room }: StrokeRoom) => ({
      ...room,
      blocked: blocked.map((words) => words(showInches)),
    });
    expect(setup.steps.map((step) => ({ ...step, room: told(step.room) }))).toEqual(
      [0, 1].map((index) => ({
        ...{ index, hook: "datum" },
        room: told(strokeRoom(piece, [index > 0, false], index, "datum", HALF_EMT, bench)),
      })),
    );
  }
});

describe("a piece of many bends", () => {
  const stairs = (bends: number): Piece => {
    const legs = Array.from({ length: bends + 1 }, (_, leg) => `${["up", "east", "north"][leg % 3]} 14`);
    return buildRun({ ...runOf(legs.join(", ")), stick: 480 }, HALF_EMT).pulls[0]!.pieces[0]!;
  };

  test.each([10, 14])(
    "of %i is searched for a while, and where the search stopped no order is called impossible",
    (bends) => {
      const piece = stairs(bends);
      expect(piece.bends).toHaveLength(bends);
      const setup = findSetup(piece, HALF_EMT, { ...USUAL_BENCH, roomAbove: 34, height: 20 });
      expect([setup.order, setup.possible]).toEqual(["stopped", false]);
      expect(setup.steps.map(({ index }) => index)).toEqual(piece.bends.map((_, index) => index));
    },
  );

  test("of 8 has the order that the room allows", () => {
    const piece = stairs(8);
    const bench = { ...USUAL_BENCH, roomAbove: 34, height: 30 };
    const { steps, order } = findSetup(piece, HALF_EMT, bench);
    expect(order).toBe("searched");
    for (const [place, { index, hook }] of steps.entries()) {
      const done = doneIn(piece, steps.slice(0, place));
      expect(strokeRoom(piece, done, index, hook, HALF_EMT, bench).blocked).toEqual([]);
    }
  });
});

describe("the table of a searched order", () => {
  const shoes = () =>
    readShoes([
      ["Raceway", "Size", "Radius", "Deduct", "Shortest tail"],
      ["EMT", "1/2", 4, 5, 2],
    ]);
  const rowsOf = (route: string, room: Partial<Bench>) =>
    setupTable(jobOfRuns([runOf(route)], shoes()), { ...USUAL_BENCH, ...room })
      .slice(1)
      .map((row) => Object.fromEntries(SETUP_HEADERS.map((header, at) => [header, row[at]!])));

  test("a bend that the schedule lines up with the star is lined up with the arrow when the other end is hooked", () => {
    const rows = rowsOf("north 26, west 13, south 40, west 23", LOW);
    expect(rows.map((row) => [row["Bend"], row["Hook"], row["Line up"]])).toEqual([
      [1, "datum", "arrow"],
      [2, "datum", "arrow"],
      [3, "far", "arrow"],
    ]);
    // Hooked as in the schedule, it keeps the star: here the third bend, as the third of three in one plane.
    const star = rowsOf("south 9, east 15, north 44, west 27", LOW);
    expect(star.map((row) => [row["Hook"], row["Line up"]])).toEqual([
      ["datum", "arrow"],
      ["datum", "arrow"],
      ["far", "star"],
    ]);
    // By hand: straights of 22 and 5 and an arc of 2π before it; the arrow stands 0.647 before the bend.
    expect(rows[1]!["Mark"]).toBeCloseTo(22 + 2 * Math.PI + 5 - 0.647, 9);
  });

  test("a notch serves whichever end is hooked: the mark stays the schedule's", () => {
    const route = "north 40, saddle 3 east at 45, ahead 60, west 60";
    const rows = rowsOf(route, LOW);
    const center = rows.find((row) => row["Bend"] === 2)!;
    const scheduled = scheduleRun(buildRun(runOf(route), HALF_EMT)).find((row) => row.Bend === 2)!;
    expect([scheduled.Hook, center["Hook"], center["Line up"]]).toEqual(["far", "datum", "notch"]);
    expect(center["Mark"]).toBeCloseTo(scheduled.Mark as number, 9);
  });

  test("from the last bend to the first one the shorter way round is told", () => {
    // Seen along the first leg, looking south: the offset's first bend points left (east). The third bend points down, 90°
    // counterclockwise, the last one opposite to it, 90° clockwise of the first. Back to the first is −90°, for which the
    // conduit is rolled the other way round from +90°.
    const rows = rowsOf("south 36, offset 5 east at 30, ahead 18, down 20, south 26", DOWN);
    expect(rows.slice(0, 2).map((row) => [row["Bend"], row["Turn"]])).toEqual([
      [4, "first bend; put the far end on the hook's side"],
      [1, "turn 90° clockwise, seen from the datum end"],
    ]);
  });

  test("an end that reaches just as far as the bench allows wants no support", () => {
    for (const [route, reach] of [
      ["east 70, up 40", "Reach behind"],
      ["up 20, east 80", "Reach ahead"],
    ] as const) {
      const limit = rowsOf(route, {})[0]![reach] as number;
      expect(limit).toBeGreaterThan(60);
      expect(rowsOf(route, { supportBeyond: limit })[0]!["Verdict"]).toBe("clear");
      expect(rowsOf(route, { supportBeyond: limit - 1e-9 })[0]!["Verdict"]).toMatch(/^support the (hooked|free) end/);
    }
  });
});
