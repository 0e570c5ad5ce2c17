import { toRadians } from "../../src/geometry/angle";
import fc from "fast-check";
import { partsToPath, pathParts, type Path } from "../../src/geometry/path";
import { add, rotate, unit, type Vec3 } from "../../src/geometry/vector";
import { expectNear } from "../support/nearVectors";
import { randomParts } from "../support/randomPaths";

const numbers = ({ legs, bends }: Pick<ReturnType<typeof pathParts>, "legs" | "bends">) => [
  legs,
  bends.map(({ angle, radius, rotation }) => [angle, radius, rotation]),
];
const moved = (path: Path, move: (point: Vec3) => Vec3): Path => ({ ...path, points: path.points.map(move) });

// Derived by hand: 40 up, then 30 east; T = R tan 45° = 5, arc = 5π/2.
test("a stub of 40 turned into 30 has the straights and the length worked out by hand", () => {
  const path: Path = { points: [[1, 2, 3], [1, 2, 43], [31, 2, 43]], radii: [5] }; // prettier-ignore
  const parts = pathParts(path);
  expectNear(numbers(parts), [[40, 30], [[90, 5, 0]]]);
  expectNear(parts.straights, [35, 25]);
  expectNear([parts.developed], [60 + (5 * Math.PI) / 2]);
});

// By hand: the first plane's normal is up × east = north; the second's is east × south = down. Looking up to down…
// about east (the leg between), north turns right-handed to up; down is a quarter turn the other way.
test("a bend that turns the second plane counter-clockwise seen from the datum has a negative rotation", () => {
  const points: Vec3[] = [[0, 0, 0], [0, 0, 50], [70, 0, 50], [70, -60, 50]]; // prettier-ignore
  expectNear(
    pathParts({ points, radii: [4, 4] }).bends.map(({ rotation }) => rotation),
    [0, -90],
  );
});

test("an offset turns the second bend by half a turn, told as 180", () => {
  const points: Vec3[] = [[0, 0, 0], [40, 0, 0], [50, 0, 6], [90, 0, 6]]; // prettier-ignore
  expect(pathParts({ points, radii: [4, 4] }).bends[1]!.rotation).toBe(180);
});

test("a leg shorter than its setbacks has a straight below zero, and is not refused", () => {
  const points: Vec3[] = [[0, 0, 0], [0, 0, 3], [20, 0, 3]]; // prettier-ignore
  expectNear(pathParts({ points, radii: [4] }).straights, [-1, 16]);
});

test("two points and no bend are a straight path", () => {
  expect(pathParts({ points: [[0, 0, 0], [0, 3, 4]], radii: [] })).toEqual({ legs: [5], bends: [], straights: [5], developed: 5 }); // prettier-ignore
});

test("legs and bends laid out as points give the same legs and bends back", () => {
  fc.assert(
    fc.property(randomParts, ({ legs, bends }) => {
      expectNear(numbers(pathParts(partsToPath(legs, bends))), numbers({ legs, bends }));
    }),
  );
});

test("points told as legs and bends come back as the same points", () => {
  const points: Vec3[] = [[7, -3, 2], [7, -3, 61], [52, 18, 66], [80, -40, 12], [83, -45, 90]]; // prettier-ignore
  const { legs, bends } = pathParts({ points, radii: [4, 5, 6] });
  // The first bend turns up into (45, 21, 5): its normal is up × (45, 21, 5) = (−21, 45, 0).
  expectNear([...partsToPath(legs, bends, [7, -3, 2], [0, 0, 1], [-21, 45, 0]).points], points);
});

test("moving and turning a path as a whole changes nothing", () => {
  const coordinate = fc.double({ min: -500, max: 500, noNaN: true });
  const turn = fc.double({ min: -170, max: 170, noNaN: true });
  fc.assert(
    fc.property(randomParts, coordinate, coordinate, turn, ({ legs, bends }, east, up, angle) => {
      const axis = unit([2, -1, 3]);
      const path = moved(partsToPath(legs, bends), (point) =>
        add(rotate(point, axis, toRadians(angle)), [east, -17, up]),
      );
      expectNear(numbers(pathParts(path)), numbers({ legs, bends }));
    }),
  );
});

test("a mirrored path has every rotation the other way and all else the same", () => {
  fc.assert(
    fc.property(randomParts, ({ legs, bends }) => {
      const mirrored = moved(partsToPath(legs, bends), ([east, north, up]) => [-east, north, up]);
      expectNear(numbers(pathParts(mirrored)), numbers({ legs, bends: bends.map((b) => ({ ...b, rotation: -b.rotation })) })); // prettier-ignore
    }),
  );
});

test.each<[string, Path, string]>([
  ["one point", { points: [[0, 0, 0]], radii: [] }, "a path needs at least 2 points; got 1."],
  ["a missing radius", { points: [[0, 0, 0], [1, 0, 0], [1, 1, 0]], radii: [] }, "a path of 3 points takes 1 radii; got 0."], // prettier-ignore
  ["a radius of 0", { points: [[0, 0, 0], [1, 0, 0], [1, 1, 0]], radii: [0] }, "radius 1 must be above 0; got 0."], // prettier-ignore
  ["a radius that is no number", { points: [[0, 0, 0], [1, 0, 0], [1, 1, 0]], radii: [NaN] }, "radius 1 must be above 0; got NaN."], // prettier-ignore
  ["points that fall together", { points: [[0, 0, 0], [5, 0, 0], [5, 0, 0]], radii: [4] }, "points 2 and 3 fall together; a leg must be longer than 0."], // prettier-ignore
  ["a point on a straight", { points: [[0, 0, 0], [5, 0, 0], [9, 0, 0]], radii: [4] }, "point 2: the path does not turn there; leave the point out."], // prettier-ignore
  ["a turn straight back", { points: [[0, 0, 0], [5, 0, 0], [2, 0, 0]], radii: [4] }, "point 2: the path turns straight back; a bend must be below 180°."], // prettier-ignore
])("a path with %s is refused in words", (_, path, message) => {
  expect(() => pathParts(path)).toThrow(message);
});

const bend = { angle: 30, radius: 4, rotation: 0 };
test.each<[string, Parameters<typeof partsToPath>, string]>([
  ["too few legs", [[10], [bend]], "1 bends take 2 legs; got 1."],
  ["a leg of 0", [[10, 0], [bend]], "leg 2 must be longer than 0; got 0."],
  ["an angle of 0", [[10, 10], [{ ...bend, angle: 0 }]], "angle of bend 1 must be above 0° and below 180°; got 0°."],
  ["an axis along the run", [[10, 10], [bend], [0, 0, 0], [0, 0, 2], [0, 0, -1]], "the first bend cannot turn about the direction of travel."], // prettier-ignore
])("legs and bends with %s are refused in words", (_, parts, message) => {
  expect(() => partsToPath(...parts)).toThrow(message);
});
