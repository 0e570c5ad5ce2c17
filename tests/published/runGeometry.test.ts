/**
 * Corner points to legs, bends and rotations, against values from outside.
 * X1: points as posted at freemathhelp.com, thread 111090 ("XYZ to LRA"); the lengths, angles and rotations are worked
 * out from them with the standard formulas, independently of this code, to 4 places.
 * X2: computed by hand; three legs along the axes.
 */
import { pathParts, partsToPath } from "../../src/geometry/path";
import type { Vec3 } from "../../src/geometry/vector";
import { expectNear } from "../support/nearVectors";

const FOUR_PLACES = 5e-5;

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
