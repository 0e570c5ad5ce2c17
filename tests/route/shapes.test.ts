/** Saddles and sweeps: the shapes whose corners depend on the radius of the shoe. */
import fc from "fast-check";
import { samplePath } from "../../src/geometry/span";
import { angleBetween, norm, subtract, type Vec3 } from "../../src/geometry/vector";
import { pullPath } from "../../src/route/problems";
import { arcsOf, onePull, partsOf, resolve } from "../support/pulls";
import { expectNear } from "../support/nearVectors";

const angles = (route: string, radius: number) => partsOf(onePull(route, radius)).bends.map(({ angle }) => angle);
const highest = (route: string, radius: number) =>
  Math.max(...samplePath(pullPath(onePull(route, radius)), 0.5).map(([, , up]) => up));

test("a three-bend saddle turns half the angle, the angle, half the angle, and its crest is as high as asked", () => {
  const route = "east 60, saddle 3 up at 45, east 50";
  expectNear(angles(route, 5), [22.5, 45, 22.5]);
  expectNear([highest(route, 5)], [3]); // 45° in steps of 0.5° has a sample on the crest
  expect(onePull(route).corners.map(({ kind, step, place, of }) => [kind, step, place, of])).toEqual([
    ["three-bend saddle", 2, 1, 3],
    ["three-bend saddle", 2, 2, 3],
    ["three-bend saddle", 2, 3, 3],
  ]);
});

test("the middle corner of a three-bend saddle stands over the obstacle's center", () => {
  const { points } = onePull("up 20, north 60, saddle 3 west at 60, north 50");
  const [first, middle, last] = points.slice(2, 5) as [Vec3, Vec3, Vec3];
  // The corner stands R(1/cos 30° − 1) over the crest; the outer legs fall at 30°.
  const height = 3 + 4 * (2 / Math.sqrt(3) - 1);
  expectNear(middle, [-height, 60, 20]);
  expectNear([first, last], [[0, 60 - height * Math.sqrt(3), 20], [0, 60 + height * Math.sqrt(3), 20]]); // prettier-ignore
});

test("a four-bend saddle is straight for the obstacle's width, centered on it, at the height asked", () => {
  const route = "east 70, saddle 3 up over 12 at 30, east 50";
  expectNear(angles(route, 5), [30, 30, 30, 30]);
  const arcs = arcsOf(onePull(route, 5));
  const [end, start] = [arcs[1]!.from + arcs[1]!.length, arcs[2]!.from];
  expectNear([start - end], [12]);
  expectNear([arcs[2]!.point], [[76, 0, 3]]);
  const { points, corners } = onePull(route, 5);
  expectNear([points[1]![0] - points[2]![0]], [-3 * Math.sqrt(3)]);
  expect(corners.map(({ kind, place, of }) => [kind, place, of])).toEqual([
    ["four-bend saddle", 1, 4],
    ["four-bend saddle", 2, 4],
    ["four-bend saddle", 3, 4],
    ["four-bend saddle", 4, 4],
  ]);
});

test("a saddle leaves the run where and as it would be without it", () => {
  const value = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const over = fc.option(value(1, 20));
  fc.assert(
    fc.property(value(1, 6), value(15, 80), over, value(3, 8), (height, angle, width, radius) => {
      const saddle = `saddle ${height} south${width === null ? "" : ` over ${width}`} at ${angle}`;
      const { points } = onePull(`up 30, east 170, ${saddle}, east 130, down 25`, radius);
      expectNear(points.slice(-2), [[300, 0, 30], [300, 0, 5]]); // prettier-ignore
      expectNear(points.slice(0, 2), [[0, 0, 0], [0, 0, 30]]); // prettier-ignore
      const [first, last] = [points[2]!, points.at(-3)!];
      expectNear([first[0] + last[0], first[1], last[1]], [340, 0, 0]);
      if (width === null) expectNear([points.length], [7]);
    }),
  );
});

// By hand: a 90 of radius 24 in 9 shots of 10° touches the ideal arc's ends at 24 from the corner.
test("a sweep is made of equal shots whose sides touch the ideal arc", () => {
  const { points, corners } = onePull("up 60, sweep 24, east 90");
  expect(corners).toHaveLength(9);
  expect(corners[4]).toMatchObject({ kind: "sweep", radius: 4, step: 2, group: 1, place: 5, of: 9 });
  expectNear(angles("up 60, sweep 24, east 90", 4), Array(9).fill(10));
  const center: Vec3 = [24, 0, 36];
  const half = 24 * Math.tan(Math.PI / 36);
  expectNear([points[1]!, points[9]!], [[0, 0, 36 + half], [24 - half, 0, 60]]); // prettier-ignore
  for (let side = 1; side < 9; side += 1) {
    const [a, b] = [points[side]!, points[side + 1]!];
    const middle: Vec3 = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
    expectNear([norm(subtract(b, a)), norm(subtract(middle, center))], [2 * half, 24]);
    expectNear([angleBetween(subtract(middle, center), subtract(b, a))], [Math.PI / 2]);
  }
});

test.each([
  ["up 60, sweep 24 in 5, east 90", 5, 18],
  ["sweep 24 in 5, up 60, east 90", 5, 18],
  ["east 60, sweep 30, bend 41 up, ahead 60", 5, 8.2],
  ["east 60, sweep 30, bend 7 up, ahead 60", 2, 3.5],
])("%p has %d shots of %d°", (route, shots, angle) => {
  expectNear(angles(route, 4), Array(shots).fill(angle));
});

test("a sweep of the shoe's own radius is one arc: its shots touch", () => {
  const { straights } = partsOf(onePull("up 60, sweep 4 in 6, east 90", 4));
  expectNear(straights.slice(1, -1), Array(5).fill(0));
});

test("a second sweep waits for its own corner", () => {
  const kinds = resolve("up 60, sweep 24, east 99, north 70, sweep 20, up 60")[0]!.corners.map(({ kind }) => kind);
  expect(kinds.filter((kind) => kind === "bend")).toHaveLength(1);
  expect(kinds.indexOf("bend")).toBe(9);
});
