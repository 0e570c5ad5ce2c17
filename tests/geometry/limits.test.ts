/** What a path and a vector refuse, and values at the very limits. [in], [°] */
import { partsToPath, pathParts, type PathBend } from "../../src/geometry/path";
import { pathSpans, pointAlong } from "../../src/geometry/span";
import { NORTH, unit, type Vec3 } from "../../src/geometry/vector";
import { expectNear } from "../support/nearVectors";

const CORNER: Vec3[] = [[0, 0, 0], [40, 0, 0], [40, 30, 0]]; // prettier-ignore
const bend = (values: Partial<PathBend>): PathBend => ({ angle: 90, radius: 4, rotation: 0, ...values });

test("north is the second coordinate", () => {
  expect(NORTH).toEqual([0, 1, 0]);
});

test("a vector without length has no direction", () => {
  expect(() => unit([0, 0, 0])).toThrow("a zero vector has no direction");
  expect(() => unit([0, NaN, 0])).toThrow("a zero vector has no direction");
  expect(unit([0, 0, 1e-200])).toEqual([0, 0, 1]);
});

test.each([Infinity, NaN, 0, -4])("a radius of %p is refused", (radius) => {
  expect(() => pathParts({ points: CORNER, radii: [radius] })).toThrow(`radius 1 must be above 0; got ${radius}.`);
});

test.each([Infinity, NaN, 0, -4])("a leg of %p is refused", (leg) => {
  expect(() => partsToPath([40, leg], [bend({})])).toThrow(`leg 2 must be longer than 0; got ${leg}.`);
});

test.each([180, 181, 0, -90, NaN])("a bend of %p° is refused", (angle) => {
  expect(() => partsToPath([40, 30], [bend({ angle })])).toThrow(
    `angle of bend 1 must be above 0° and below 180°; got ${angle}°.`,
  );
});

test("half a turn between two planes is told as 180, never as -180, whichever side of it rounding falls", () => {
  for (const rotation of [180, -180, 180 - 1e-12, -180 + 1e-12]) {
    const path = partsToPath([40, 30, 50], [bend({ angle: 30 }), bend({ angle: 30, rotation })]);
    expect(pathParts(path).bends[1]!.rotation).toBeGreaterThan(0);
  }
});

test("two bends in one plane are turned by 0, not by -0", () => {
  const points: Vec3[] = [[0, 0, 0], [40, 0, 0], [40, 30, 0], [0, 30, 0]]; // prettier-ignore
  expect(Object.is(pathParts({ points, radii: [4, 4] }).bends[1]!.rotation, 0)).toBe(true);
});

test("a distance that is exactly a span's end lies on that span, and its direction is the span's", () => {
  const path = { points: CORNER, radii: [4] };
  const [straight, arc] = pathSpans(path);
  expectNear(pointAlong(path, straight!.length).point, [36, 0, 0]);
  expectNear(pointAlong(path, straight!.length + arc!.length).point, [40, 4, 0]);
  expectNear(pointAlong(path, straight!.length + arc!.length).direction, [0, 1, 0]);
});
