/** The simulator out of the plane, in several pieces, and proof that it notices what is wrong. */
import { misfit } from "./alignRigid";
import type { Point } from "./frame";
import { bend, EXACT, HALF_OD, piece, type RowStroke } from "./onePiece";

describe("three dimensions", () => {
  // 100 east, 80 north, 60 up: rotation 90, clockwise seen from the datum end. Derived: looking east, north is on the
  // left and the first bend's axis is up; the second turns about north × up = east; from up to east, looking north, is
  // clockwise.
  const corners: Point[] = [
    [0, 0, 0],
    [100, 0, 0],
    [100, 80, 0],
    [100, 80, 60],
  ];
  const mirrored = corners.map(([east, north, up]): Point => [east, north, -up]);
  const first = 100 - 4;
  const second = first + 2 * Math.PI + 80 - 8;
  const cut = second + 2 * Math.PI + 60 - 4;
  const strokes: RowStroke[] = [{ mark: first - 0.647 }, { mark: second - 0.647, plane: 90 }];

  test("two 90s a quarter turn apart land on the corner points", () => {
    expect(misfit(bend(piece(cut, strokes)).points, corners)).toBeLessThan(EXACT);
  });

  test("the same from the star and from the far end", () => {
    const star = 100 + HALF_OD;
    const far = second + 2 * Math.PI + 0.647;
    const rows = piece(cut, [
      { mark: star, lineUp: "star", hook: "far" },
      { mark: far, hook: "far", plane: 90 },
    ]);
    expect(misfit(bend(rows).points, corners)).toBeLessThan(EXACT);
  });

  test("the mirror image is not taken for the shape", () => {
    const rows = piece(cut, [strokes[0]!, { ...strokes[1]!, plane: -90 }]);
    expect(misfit(bend(rows).points, corners)).toBeGreaterThan(100);
    expect(misfit(bend(rows).points, mirrored)).toBeLessThan(EXACT);
  });

  test("in two pieces, coupled on the straight between the bends", () => {
    const joint = 130;
    const rows = [
      ...piece(joint, [strokes[0]!], 1),
      ...piece(cut - joint, [{ mark: second - 0.647 - joint, plane: 90 }], 2),
    ];
    const { points, pieces, straights } = bend(rows);
    expect(misfit(points, corners)).toBeLessThan(EXACT);
    expect(straights[1]).toBeCloseTo(72, 9);
    expect(pieces.map(({ piece: name, length }) => [name, length])).toEqual([
      ["1", joint],
      ["2", cut - joint],
    ]);
  });

  test("a straight piece between two bent ones hands the plane on", () => {
    const rows = [
      ...piece(130, [strokes[0]!], 1),
      ...piece(15, [], 2),
      ...piece(cut - 145, [{ mark: second - 0.647 - 145, plane: 90 }], 3),
    ];
    expect(misfit(bend(rows).points, corners)).toBeLessThan(EXACT);
  });

  test.each([
    ["a mark moved 0.01 in.", 1, { mark: second - 0.647 + 0.01 }],
    ["the first mark moved 0.01 in.", 0, { mark: first - 0.647 - 0.01 }],
    ["the hook on the wrong side", 1, { hook: "far" }],
    ["the sign of the plane", 1, { plane: -90 }],
    ["the star for the arrow", 1, { lineUp: "star" }],
    ["the notch for the arrow", 0, { lineUp: "notch" }],
    ["an angle out by 0.01°", 0, { angle: 90.01 }],
  ])("notices %s", (_, index, change) => {
    const rows = piece(
      cut,
      strokes.map((stroke, place) => (place === index ? { ...stroke, ...change } : stroke)),
    );
    expect(misfit(bend(rows).points, corners)).toBeGreaterThan(0.005);
  });

  test("notices a cut 0.01 in. long", () => {
    expect(misfit(bend(piece(cut + 0.01, strokes)).points, corners)).toBeCloseTo(0.01, 9);
  });
});
