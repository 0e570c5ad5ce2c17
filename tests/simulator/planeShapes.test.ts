/**
 * The simulator against plane shapes worked out by hand. "Derived" shows the line; published cases name their source.
 */
import { misfit } from "./alignRigid";
import { bend, EXACT, HALF_OD, piece, SHOE } from "./onePiece";

describe("a stub-up", () => {
  test("10 in. end to back from a mark at 5 (published: Modern Residential Wiring 2021, p. 144)", () => {
    const { points } = bend(piece(60, [{ mark: 5 }]));
    expect(points[1]![0] + HALF_OD).toBeCloseTo(10, 9);
  });

  test("10 in. end to back from a mark at 4 with a deduct of 6", () => {
    const { points } = bend(piece(60, [{ mark: 4 }]), { ...SHOE, deduct: 6 });
    expect(points[1]![0] + HALF_OD).toBeCloseTo(10, 9);
  });

  test("the leg beyond it is the stick less the stub's straight and the arc, plus the setback", () => {
    // Derived: the bend starts at 10 − 0.353 − 4 = 5.647; 60 − 5.647 − 2π is straight; 4 more to the corner.
    const { points, straights } = bend(piece(60, [{ mark: 5 }]));
    expect(straights).toEqual([expect.closeTo(5.647, 9), expect.closeTo(60 - 5.647 - 2 * Math.PI, 9)]);
    expect(
      misfit(points, [
        [0, 0, 0],
        [9.647, 0, 0],
        [9.647, 60 - 1.647 - 2 * Math.PI, 0],
      ]),
    ).toBeLessThan(EXACT);
  });

  test("hooked by the far end, it stands at the far end", () => {
    const { points } = bend(piece(60, [{ mark: 60 - 5, hook: "far" }]));
    const leg = Math.hypot(...points[2]!.map((each, axis) => each - points[1]![axis]!));
    expect(leg + HALF_OD).toBeCloseTo(10, 9);
  });
});

describe("a back-to-back", () => {
  test("a star mark at 20, hooked by the far end, is 20 end to back (published: Modern Residential Wiring 2021, p. 145)", () => {
    const { points } = bend(piece(60, [{ mark: 20, lineUp: "star", hook: "far" }]));
    expect(points[1]![0] + HALF_OD).toBeCloseTo(20, 9);
  });

  test("the same back from the arrow, the deduct taken off and not turned round (same source)", () => {
    const { points } = bend(piece(60, [{ mark: 20 - 5 }]));
    expect(points[1]![0] + HALF_OD).toBeCloseTo(20, 9);
  });

  test("20 in. between the backs of two 90s", () => {
    // Derived: laid along the first bend's leg, its back stands 5.647 + 2π − 4 − 0.353 along the stick.
    const back = 5.647 + 2 * Math.PI - 4 - HALF_OD;
    const { points } = bend(piece(80, [{ mark: 5 }, { mark: back + 20, lineUp: "star", hook: "far" }]));
    expect(points[2]![1] - points[1]![1] + 2 * HALF_OD).toBeCloseTo(20, 9);
    expect(points[3]![0]).toBeLessThan(points[2]![0]);
  });
});

describe("an offset", () => {
  // Derived: corners 6/sin 30° = 12 apart; what the corner saves on a 30° bend of R 4 is 8 tan 15° − 4·π/6.
  const spacing = 12 - (8 * Math.tan(Math.PI / 12) - (4 * Math.PI) / 6);

  test("rises 6 at 30° from marks 11.9508 apart, and its ends are parallel", () => {
    expect(spacing).toBeCloseTo(11.9508, 4);
    const { points, end } = bend(
      piece(60, [
        { mark: 20, angle: 30 },
        { mark: 20 + spacing, angle: 30, plane: 180 },
      ]),
    );
    expect(points[3]![1]).toBeCloseTo(6, 9);
    expect(end.ahead).toEqual([expect.closeTo(1, 9), expect.closeTo(0, 9), expect.closeTo(0, 9)]);
  });

  test("the handbook's marks, 12 apart, rise too much by half of what they are too far apart", () => {
    const { points } = bend(
      piece(60, [
        { mark: 20, angle: 30 },
        { mark: 32, angle: 30, plane: 180 },
      ]),
    );
    expect(points[3]![1] - 6).toBeCloseTo((12 - spacing) / 2, 9);
  });

  test("shortens the run by 1.50930", () => {
    // Derived: 6·tan 15° less twice the gain; 60 in. of stick reach 60 − 1.50930.
    const { points } = bend(
      piece(60, [
        { mark: 20, angle: 30 },
        { mark: 20 + spacing, angle: 30, plane: 180 },
      ]),
    );
    expect(60 - points[3]![0]).toBeCloseTo(1.5093, 5);
  });
});

describe("saddles", () => {
  // Derived for height 4, 45° and 22.5°, R 4: the crest of the arc clears 4 in., so the corner stands 4(1/cos 22.5° − 1)
  // higher; between corners (4 + that)/sin 22.5°, less the setbacks 4 tan 11.25° and 4 tan 22.5°.
  const rise = 4 + 4 * (1 / Math.cos(Math.PI / 8) - 1);
  const straight = rise / Math.sin(Math.PI / 8) - 4 * Math.tan(Math.PI / 16) - 4 * Math.tan(Math.PI / 8);
  const center = 40;
  const near = center - Math.PI / 2 - straight - Math.PI / 2;

  test("three bends: the crest of the middle arc clears 4, the ends line up", () => {
    const arrow = near - (5 - 4.353);
    const { points, end } = bend(
      piece(80, [
        { mark: arrow, angle: 22.5 },
        { mark: center, lineUp: "notch", angle: 45, plane: 180 },
        { mark: 2 * center - arrow, hook: "far", angle: 22.5, plane: 180 },
      ]),
    );
    expect(points[2]![1] - 4 * (1 / Math.cos(Math.PI / 8) - 1)).toBeCloseTo(4, 9);
    expect([points[3]![1], points[4]![1]]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
    expect(end.ahead[0]).toBeCloseTo(1, 9);
  });

  test("11.14159 from the outer bend's start to the middle when the corner, not the crest, stands 4 high", () => {
    // Derived: GEOMETRY's check value is 4/sin 22.5° − setbacks + half the middle arc + the outer arc.
    const between = 4 / Math.sin(Math.PI / 8) - 4 * Math.tan(Math.PI / 16) - 4 * Math.tan(Math.PI / 8) + Math.PI;
    expect(between).toBeCloseTo(11.14159, 5);
    const rows = piece(80, [
      { mark: center - between - 0.647, angle: 22.5 },
      { mark: center, lineUp: "notch", angle: 45, plane: 180 },
    ]);
    expect(bend(rows).points[2]![1]).toBeCloseTo(4, 9);
  });

  test("four bends: 3 high over 12, both ends in line", () => {
    // Derived: two offsets of 3 at 30°; between corners 6, less two setbacks; 12 between the inner corners.
    const arc = (4 * Math.PI) / 6;
    const set = 4 * Math.tan(Math.PI / 12);
    const starts = [20, 20 + arc + 6 - 2 * set, 20 + 2 * arc + 18 - 4 * set, 20 + 3 * arc + 24 - 6 * set];
    const planes = [0, 180, 0, 180];
    const { points } = bend(
      piece(
        90,
        starts.map((start, index) => ({ mark: start - 0.647, angle: 30, plane: planes[index]! })),
      ),
    );
    const expected = [0, 0, 3, 3, 0, 0];
    points.forEach((point, index) => expect(point[1]).toBeCloseTo(expected[index]!, 9));
    expect(points[3]![0] - points[2]![0]).toBeCloseTo(12, 9);
  });
});
