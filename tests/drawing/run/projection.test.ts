import { projection, viewWords } from "../../../src/drawing/run/projection";
import type { Vec3 } from "../../../src/geometry/vector";

const POINT: Vec3 = [3, 5, 7];
const near = (...flat: number[]) => flat.map((each) => expect.closeTo(each, 9));

test("plan: east to the right, north up; what is higher is nearer", () => {
  expect(projection("plan").flat(POINT)).toEqual(near(3, 5));
  expect(projection("plan").depth(POINT)).toBeCloseTo(-7, 9);
});

test("elevation: east to the right, up is up; what is farther north is farther away", () => {
  expect(projection("elevation").flat(POINT)).toEqual(near(3, 7));
  expect(projection("elevation").depth(POINT)).toBeCloseTo(5, 9);
});

test("looking east: north is on the left", () => {
  expect(projection({ azimuth: 90, elevation: 0 }).flat(POINT)).toEqual(near(-5, 7));
});

test("looking south: east is on the left", () => {
  expect(projection({ azimuth: 180, elevation: 0 }).flat(POINT)).toEqual(near(-3, 7));
});

test("isometric: the three axes are √(2/3) long and 120° apart (the definition of an isometric projection)", () => {
  const { flat } = projection("isometric");
  const axes = (
    [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ] as const
  ).map((axis) => flat(axis));
  for (const [x, y] of axes) expect(Math.hypot(x, y)).toBeCloseTo(Math.sqrt(2 / 3), 9);
  const [east, north, up] = axes.map(([x, y]) => (Math.atan2(y, x) * 180) / Math.PI);
  expect([east, north, up]).toEqual(near(-30, 30, 90));
});

test.each([
  ["plan" as const, "plan, seen from above"],
  ["elevation" as const, "elevation, looking north"],
  [{ azimuth: -90, elevation: 0 }, "elevation, looking west"],
  [{ azimuth: 60, elevation: 25 }, "looking 60° from north, 25° down"],
  [{ azimuth: 45, elevation: -10 }, "looking northeast, 10° up"],
])("a view in words: %j", (view, words) => {
  expect(viewWords(view)).toBe(words);
});
