/**
 * Corner points to legs, bends and rotations, against values from outside.
 * X1: points as posted at freemathhelp.com, thread 111090 ("XYZ to LRA"); the lengths, angles and rotations are worked
 * out from them with the standard formulas, independently of this code, to 4 places.
 * X2: computed by hand; three legs along the axes.
 * X5 and X7: no published numbers were found; worked out with the standard formulas apart from this code, to 4 places. X5 rolls
 * by the rises of an apprenticeship worksheet, 30 5/8 and 17 5/8, at 45°; X7 is a saddle of four 30s, 6 high and 20 flat.
 */
import { pathParts, partsToPath } from "../../src/geometry/path";
import { pathSpans } from "../../src/geometry/span";
import type { Vec3 } from "../../src/geometry/vector";
import { expectNear } from "../support/nearVectors";

const FOUR_PLACES = 6e-5;
/** Points are printed to five or six places, so angles come back to about this [°]. */
const THREE_PLACES = 5e-4;

const X1: Vec3[] = [
  [38.5202, -14.0264, 0],
  [45.3142, -14.0264, 0],
  [45.3142, -17.5214, 0.9654],
  [48.6822, -17.5214, 0.9654],
];
const X2: Vec3[] = [
  [0, 0, 0],
  [100, 0, 0],
  [100, 80, 0],
  [100, 80, 60],
];

test("the posted points give the lengths, angles and rotations worked out from them", () => {
  const { legs, bends } = pathParts({ points: X1, radii: [1, 1] });
  expectNear(legs, [6.794, 3.6259, 3.368], FOUR_PLACES);
  expectNear(
    bends.map(({ angle, rotation }) => [angle, rotation]),
    [
      [90, 0],
      [90, 180],
    ],
  );
});

test("legs along the three axes give two 90s a quarter turn apart", () => {
  // By hand: normals are up, then east; about north (the leg between) up turns to east right-handed: +90.
  const { legs, bends } = pathParts({ points: X2, radii: [4, 4] });
  expectNear(legs, [100, 80, 60]);
  expectNear(
    bends.map(({ angle, rotation }) => [angle, rotation]),
    [
      [90, 0],
      [90, 90],
    ],
  );
});

test.each<[string, Vec3[], number, number[], number[][], number[], number[], number]>([
  [
    "X5, a rolling offset",
    [
      [0, 0, 0],
      [20, 0, 0],
      [55.3346, 30.625, 17.625],
      [75.3346, 30.625, 17.625],
    ],
    5.75,
    [20, 49.9706, 20],
    [
      [45, 0],
      [45, 180],
    ],
    [17.6183, 45.2072, 17.6183],
    [4.516, 4.516],
    89.4758,
  ],
  [
    "X7, a saddle of four bends",
    [
      [0, 0, 0],
      [10, 0, 0],
      [20.392305, 6, 0],
      [40.392305, 6, 0],
      [50.78461, 0, 0],
      [70.78461, 0, 0],
    ],
    4,
    [10, 12, 20, 12, 20],
    [
      [30, 0],
      [30, 180],
      [30, 0],
      [30, 180],
    ],
    [8.9282, 9.8564, 17.8564, 9.8564, 18.9282],
    [2.0944, 2.0944, 2.0944, 2.0944],
    73.8032,
  ],
])("%s: legs, bends, straights, arcs and total", (_name, points, radius, legs, turns, straights, arcs, total) => {
  const path = { points, radii: turns.map(() => radius) };
  const parts = pathParts(path);
  expectNear(parts.legs, legs, FOUR_PLACES);
  expectNear(
    parts.bends.map(({ angle, rotation }) => [angle, rotation]),
    turns,
    THREE_PLACES,
  );
  expectNear(parts.straights, straights, FOUR_PLACES);
  const bent = pathSpans(path).filter(({ kind }) => kind === "arc");
  expectNear(
    bent.map(({ length }) => length),
    arcs,
    FOUR_PLACES,
  );
  expectNear([parts.developed], [total], FOUR_PLACES);
});

test("the same legs and bends give the points back", () => {
  const bends = [
    { angle: 90, radius: 4, rotation: 0 },
    { angle: 90, radius: 4, rotation: 90 },
  ];
  expectNear([...partsToPath([100, 80, 60], bends).points], X2);
});

test("a 180 has no corner point and is refused by name and value", () => {
  const bends = [{ angle: 180, radius: 4, rotation: 0 }];
  expect(() => partsToPath([10, 10], bends)).toThrow("angle of bend 1 must be above 0° and below 180°; got 180°.");
});
