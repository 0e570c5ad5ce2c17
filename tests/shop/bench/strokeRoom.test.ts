/** Room of a single stroke, worked out by hand for 1/2 EMT on R 4: half the OD is 0.353. Lengths [in], angles [°]. */
import { USUAL_BENCH, type Bench } from "../../../src/shop/bench/bench";
import { azimuths } from "../../../src/shop/schedule/usualStrokes";
import { buildRun } from "../../../src/shop/run/buildRun";
import type { Piece } from "../../../src/shop/run/builtRun";
import type { Hook } from "../../../src/shop/shoe/marks";
import type { Shoe } from "../../../src/shop/shoe/shoe";
import { showInches } from "../../../src/units/show";
import { hasRoom, strokeRoom } from "../../../src/shop/bench/strokeCheck";
import { HALF_EMT, runOf } from "../../support/demoShoe";

const pieceOf = (route: string): Piece => buildRun(runOf(route), HALF_EMT).pulls[0]!.pieces[0]!;

/** Points of an arc of R 4 are at most 15° apart: between two the arc stands 4·(1 − cos 7.5°) farther out [in]. */
const ARC_SAMPLING = 0.035;

interface Stroke {
  readonly done?: readonly number[];
  readonly index: number;
  readonly hook: Hook;
  readonly bench?: Partial<Bench>;
  readonly shoe?: Partial<Shoe>;
}
const roomOf = (piece: Piece, { done = [], index, hook, bench, shoe }: Stroke) =>
  strokeRoom(
    piece,
    piece.bends.map((_, place) => done.includes(place)),
    index,
    hook,
    { ...HALF_EMT, ...shoe },
    { ...USUAL_BENCH, ...bench },
  );

describe("what the hook has to hold", () => {
  // Legs 20, 14, 20 less setbacks of 4: straights 16, 6, 16; each arc 2π.
  const blocked = (stroke: Stroke, shortestTail: number) =>
    roomOf(pieceOf("up 20, east 14, up 20"), { ...stroke, shoe: { shortestTail }, bench: { height: 600 } }).blocked.map(
      (reason) => reason(showInches),
    );

  test.each<[string, Stroke, number, number]>([
    ["the whole end, when nothing is bent yet", { index: 0, hook: "datum" }, 16, 16],
    ["the far end with everything between, when nothing is bent yet", { index: 0, hook: "far" }, 16, 22 + 2 * Math.PI],
    ["only up to the bend before", { done: [0], index: 1, hook: "datum" }, 6, 6],
    ["the far end, whatever is bent on the other side", { done: [0], index: 1, hook: "far" }, 16, 16],
    ["only up to the bend behind", { done: [1], index: 0, hook: "far" }, 6, 6],
    ["the datum end, whatever is bent on the far side", { done: [1], index: 0, hook: "datum" }, 16, 16],
    ["the datum end with everything between", { index: 1, hook: "datum" }, 16, 22 + 2 * Math.PI],
  ])("%s", (_, stroke, __, tail) => {
    expect(blocked(stroke, tail)).toEqual([]);
    const [words] = blocked(stroke, tail + 0.01);
    const shown = (inches: number) => String(Number(inches.toFixed(2)));
    expect(words).toBe(
      `the ${stroke.hook} side has ${shown(tail)} in. straight to hold; the shoe needs ${shown(tail + 0.01)} in.`,
    );
  });
});

describe("what stands around the bench", () => {
  test("a bench, a ceiling and a wall that are just touched are not in the way; a hundredth nearer they are", () => {
    const piece = pieceOf("up 45, east 40");
    const stroke = { index: 0, hook: "datum" } as const;
    const just = { height: 0.353, roomAbove: 45.353, roomBeside: 0.353 };
    expect(roomOf(piece, { ...stroke, bench: just }).blocked).toEqual([]);
    expect(
      roomOf(piece, { ...stroke, bench: { height: 0.343, roomAbove: 45.343, roomBeside: 0.343 } }).blocked.map(
        (reason) => reason(showInches),
      ),
    ).toEqual([
      "meets the floor: reaches 0.4 in. below the conduit, the floor is 0.3 in. below",
      "needs 45.4 in. above the conduit; there is 45.3 in.",
      "needs 0.4 in. beside the conduit; there is 0.3 in.",
    ]);
  });

  // Flat on the bench, the second bend: the first stub stands square to the table, its center 26 (22 and R 4) behind the
  // shoe, its end 20 from the table's plane. It swings round the shoe's center, 4 to the side.
  const swinging = { done: [0], index: 1, hook: "datum" } as const;
  const flat = { plane: "horizontal", tableDrop: 4 } as const;
  const stubs = () => [pieceOf("up 20, east 30, north 15"), pieceOf("up 20, east 30, south 15")];
  const hangs = (piece: Piece) => roomOf(piece, { ...swinging, bench: flat }).below > 20;
  const hanging = () => stubs().find(hangs)!;
  const standing = () => stubs().find((piece) => !hangs(piece))!;
  const meets = (piece: Piece, bench: Partial<Bench>, stroke: Stroke = swinging) =>
    roomOf(piece, { ...stroke, bench: { ...flat, ...bench } }).blocked.some(
      (reason) => reason(showInches) === "meets the table",
    );

  test("one of the two stubs hangs, the other stands", () => {
    expect(roomOf(hanging(), { ...swinging, bench: flat }).below).toBeCloseTo(20.353, 9);
    expect(roomOf(standing(), { ...swinging, bench: flat }).above).toBeCloseTo(20.353, 9);
    expect(meets(standing(), { tableLength: 60, tableWidth: 60 })).toBe(false);
  });

  test("the table is met from the length on at which the stub hangs over it", () => {
    expect(meets(hanging(), { tableLength: 25.9, tableWidth: 0.01 })).toBe(false);
    expect(meets(hanging(), { tableLength: 26.1, tableWidth: 0.01 })).toBe(true);
  });

  test("a shorter table is met while the stub swings, when it is wide enough", () => {
    // At 52.5° of the swing the stub stands 26·cos + 4·sin = 19.0 behind and 4 + 26·sin − 4·cos = 22.2 to the side.
    expect(meets(hanging(), { tableLength: 20, tableWidth: 2 * 22 })).toBe(false);
    expect(meets(hanging(), { tableLength: 20, tableWidth: 2 * 23 })).toBe(true);
  });

  test("a table that lies lower than the stub hangs is not met", () => {
    expect(meets(hanging(), { tableLength: 30, tableWidth: 10, tableDrop: 20.3 })).toBe(true);
    expect(meets(hanging(), { tableLength: 30, tableWidth: 10, tableDrop: 20.353 })).toBe(false);
  });

  test("what hangs ahead of the shoe hangs beside no table: it ends at the shoe", () => {
    for (const route of ["north 15, east 40, up 20", "north 15, east 40, down 20"]) {
      const bench = { tableLength: 600, tableWidth: 600 };
      expect(meets(pieceOf(route), bench, { done: [1], index: 0, hook: "datum" })).toBe(false);
    }
  });
});

test("a bend that is made bulges between its ends", () => {
  // By hand: the setback of 150° is 4·tan 75°; seen from the second bend, the arc of the first reaches R past its end.
  const piece = pieceOf("up 16, bend 150 east, ahead 40, north 20");
  const straight = 40 - 4 * Math.tan((75 * Math.PI) / 180) - 4;
  const { behind } = roomOf(piece, { done: [0], index: 1, hook: "datum", bench: { swings: "free end" } });
  expect(Math.abs(behind - (straight + 4))).toBeLessThan(ARC_SAMPLING);
});

test("a stroke of a bend that is not there is refused", () => {
  const piece = pieceOf("up 20, east 30");
  expect(() => roomOf(piece, { index: 2, hook: "datum" })).toThrow(new RangeError("piece 1 has no bend 3"));
});

describe("laws", () => {
  /** The same conduit told from its other end. */
  function turnedRound({ cutLength, bends, ...rest }: Piece): Piece {
    const planes = bends.map(({ plane }) => plane);
    const told = bends.map((bend) => ({
      ...bend,
      start: cutLength - bend.start - (bend.radius * bend.angle * Math.PI) / 180,
    }));
    return {
      ...rest,
      cutLength,
      bends: told.reverse().map((bend, place) => ({ ...bend, plane: place === 0 ? 0 : planes[bends.length - place]! })),
    };
  }

  const pieces = () =>
    [
      "up 25, east 21, north 17, bend 40 east, ahead 12",
      "east 22, offset 6 up 4 north at 35, ahead 19, south 13",
      "up 12, bend 65 west, ahead 18, bend 30 north, ahead 15",
    ].map(pieceOf);
  const BENCHES: Partial<Bench>[] = [
    {},
    { curls: "down" },
    { swings: "free end" },
    { plane: "horizontal" },
    { plane: "horizontal", swings: "free end" },
    { curls: "down", swings: "free end" },
  ];
  const sizes = (stroke: ReturnType<typeof roomOf>) => [
    stroke.above,
    stroke.below,
    stroke.beside,
    stroke.behind,
    stroke.ahead,
  ];
  const expectSame = (a: readonly number[], b: readonly number[]) =>
    a.forEach((value, place) => expect(value).toBeCloseTo(b[place]!, 8));

  test("hooking the far end takes the room that the same conduit takes, told from its other end and hooked by the datum", () => {
    for (const piece of pieces())
      for (const bench of BENCHES)
        for (const done of [[], [0], [2], [0, 2]]) {
          const last = piece.bends.length - 1;
          const there = { done: done.map((place) => last - place), index: last - 1, hook: "datum", bench } as const;
          expectSame(
            sizes(roomOf(piece, { done, index: 1, hook: "far", bench })),
            sizes(roomOf(turnedRound(piece), there)),
          );
        }
  });

  test("a bench that curls down takes below what one that curls up takes above", () => {
    for (const piece of pieces()) {
      const stroke = { done: [0], index: 1, hook: "datum" } as const;
      const [above, below, ...others] = sizes(roomOf(piece, stroke));
      expectSame(sizes(roomOf(piece, { ...stroke, bench: { curls: "down" } })), [below!, above!, ...others]);
    }
  });

  test("lying flat, a conduit takes to the side what it takes up or down when upright, and the other way round", () => {
    for (const piece of pieces()) {
      const stroke = { done: [0], index: 1, hook: "far" } as const;
      const upright = roomOf(piece, stroke);
      const flat = roomOf(piece, { ...stroke, bench: { plane: "horizontal" } });
      expectSame(
        [flat.beside, flat.behind, flat.ahead],
        [Math.max(upright.above, upright.below), upright.behind, upright.ahead],
      );
      expect(upright.beside).toBeCloseTo(Math.max(flat.above, flat.below), 8);
    }
  });

  test("azimuths add up the planes from the first bend on", () => {
    const piece = pieceOf("up 25, east 21, north 17, up 20");
    const [, second, third] = piece.bends.map(({ plane }) => plane);
    expect([second, third].map((plane) => Math.round(Math.abs(plane!)))).toEqual([90, 90]);
    expect(azimuths(piece)).toEqual([0, second, second! + third!]);
    expect(azimuths({ ...piece, bends: piece.bends.map((bend) => ({ ...bend, plane: 30 })) })).toEqual([0, 30, 60]);
  });
});

test("whether there is room is one answer, asked alone or with the room a stroke takes", () => {
  const piece = pieceOf("up 45, east 20, north 20, up 14, offset 6 east at 30, ahead 12");
  const benches: Partial<Bench>[] = [
    {},
    { height: 14 },
    { roomAbove: 20 },
    { plane: "horizontal", roomBeside: 25, height: 25 },
    { curls: "down", height: 30 },
    { swings: "free end", height: 20, tableDrop: 2 },
  ];
  const answers = benches.flatMap((changed) => {
    const bench = { ...USUAL_BENCH, ...changed };
    return Array.from({ length: 2 ** piece.bends.length }, (_, made) => made).flatMap((made) => {
      const done = piece.bends.map((_, place) => Boolean(made & (1 << place)));
      const open = piece.bends.flatMap((_, index) => (done[index] ? [] : [index]));
      return open.flatMap((index) =>
        (["datum", "far"] as const).map((hook) => ({
          asked: hasRoom(piece, done, index, hook, HALF_EMT, bench),
          told: strokeRoom(piece, done, index, hook, HALF_EMT, bench).blocked.length === 0,
        })),
      );
    });
  });
  expect(answers.filter(({ asked, told }) => asked !== told)).toEqual([]);
  expect(answers.filter(({ asked }) => asked).length).toBeGreaterThan(100);
  expect(answers.filter(({ asked }) => !asked).length).toBeGreaterThan(100);
});
