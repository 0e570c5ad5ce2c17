import { readRoute } from "../../src/route/text/readRoute";
import { resolveRoute } from "../../src/route/resolveRoute";
import { onePull, partsOf, resolve } from "../support/pulls";
import { expectNear } from "../support/nearVectors";

const ROOT3 = Math.sqrt(3);

test("legs run from corner to corner from the datum, and the same direction again lengthens a leg", () => {
  const pull = onePull("up 48, east 150, east 12, south 30, ahead 6");
  expectNear(pull.points, [[0, 0, 0], [0, 0, 48], [162, 0, 48], [162, -36, 48]]); // prettier-ignore
  expect(pull.corners).toEqual([
    { point: [0, 0, 48], radius: 4, kind: "bend", step: 2, group: 1, place: 1, of: 1 },
    { point: [162, 0, 48], radius: 4, kind: "bend", step: 4, group: 2, place: 1, of: 1 },
  ]);
});

test("each of the six directions goes its way", () => {
  expectNear(onePull("north 20, up 30, west 40, down 15, east 25, south 9").points.at(-1)!, [-15, 11, 15]);
});

test("a single leg is a pull without corners", () => {
  expect(resolve("east 36")).toEqual([{ points: [[0, 0, 0], [36, 0, 0]], corners: [], end: "open", joints: [] }]); // prettier-ignore
});

test("the steps come back with the pulls", () => {
  const steps = readRoute("up 10, east 20");
  expect(resolveRoute(steps, 4).steps).toEqual(steps);
});

// By hand: 30° toward up of east is (√3/2, 0, 1/2).
test("a bend turns the present direction toward another", () => {
  const { points, corners } = onePull("east 40, bend 30 up, ahead 24");
  expectNear(points, [[0, 0, 0], [40, 0, 0], [40 + 12 * ROOT3, 0, 12]]); // prettier-ignore
  expect(corners[0]).toMatchObject({ kind: "bend", step: 2 });
});

// By hand: from (√3/2, 0, 1/2) toward north 60°: half of it along, √3/2 of it north.
test("a bend from a slanting leg turns in the plane of that leg", () => {
  const { points } = onePull("east 40, bend 30 up, ahead 24, bend 60 north, ahead 20");
  expectNear(points[3]!, [40 + 12 * ROOT3 + 5 * ROOT3, 10 * ROOT3, 17]);
  expectNear(
    partsOf(onePull("east 40, bend 30 up, ahead 24, bend 60 north, ahead 20")).bends.map((bend) => bend.angle),
    [30, 60],
  );
});

test("points are absolute, from the datum", () => {
  const { points, corners } = onePull("up 20, to 100 50 20, to 100 90 -30");
  expectNear(points, [[0, 0, 0], [0, 0, 20], [100, 50, 20], [100, 90, -30]]); // prettier-ignore
  expect(corners.map(({ step }) => step)).toEqual([2, 3]);
});

test("a point straight ahead lengthens the leg, also after an offset", () => {
  expectNear(onePull("to 30 40 0, to 60 80 0").points, [[0, 0, 0], [60, 80, 0]]); // prettier-ignore
  expectNear(onePull("east 40, offset 6 up at 30, to 100 0 6").points.at(-1)!, [100, 0, 6]);
});

// By hand: 6 up at 30° advances 6/tan 30° = 6√3.
test("an offset stands between the leg before, which ends at its first corner, and the leg after", () => {
  const { points, corners } = onePull("east 40, offset 6 up at 30, east 50");
  expectNear(points, [[0, 0, 0], [40, 0, 0], [40 + 6 * ROOT3, 0, 6], [90 + 6 * ROOT3, 0, 6]]); // prettier-ignore
  expect(corners.map(({ kind, step, group, place, of }) => [kind, step, group, place, of])).toEqual([
    ["offset", 2, 1, 1, 2],
    ["offset", 2, 1, 2, 2],
  ]);
});

test("a box offset is an offset under its own name", () => {
  const { corners, points } = onePull("north 40, box offset 3/4 west at 45, ahead 5");
  expectNear(points, [[0, 0, 0], [0, 40, 0], [-0.75, 40.75, 0], [-0.75, 45.75, 0]]); // prettier-ignore
  expect(corners.map(({ kind }) => kind)).toEqual(["box offset", "box offset"]);
});

// By hand: 3 up and 4 east make a true rise of 5; at 45° it advances 5.
test("two rises make a rolling offset of their hypotenuse", () => {
  const { points, corners } = onePull("north 40, offset 3 up 4 east at 45, north 30");
  expectNear(points, [[0, 0, 0], [0, 40, 0], [4, 45, 3], [4, 75, 3]]); // prettier-ignore
  expect(corners[1]).toMatchObject({ kind: "rolling offset", place: 2, of: 2 });
});

// By hand: travel (√3/2, 0, 1/2); square to it, toward up: (−1/2, 0, √3/2). 4 of it at 45° advances 4.
test("a rise is square to a slanting run", () => {
  const { points } = onePull("east 40, bend 30 up, ahead 24, offset 4 up at 45, ahead 20");
  const first = [40 + 12 * ROOT3, 0, 12] as const;
  expectNear(points[3]!, [first[0] + 2 * ROOT3 - 2, 0, first[2] + 2 + 2 * ROOT3]);
});

test("a box ends a pull; the next one starts there, in any direction, and its groups count on", () => {
  const pulls = resolve("up 40, east 60, box, down 60, north 20, box");
  expectNear(pulls.map(({ points }) => points), [
    [[0, 0, 0], [0, 0, 40], [60, 0, 40]],
    [[60, 0, 40], [60, 0, -20], [60, 20, -20]],
  ]); // prettier-ignore
  expect(pulls.map(({ corners }) => corners.map(({ step, group }) => [step, group]))).toEqual([[[2, 1]], [[5, 2]]]);
});

test("after a box the run may go straight on without a corner, or back", () => {
  expect(resolve("east 40, box, ahead 20, box, west 10").map(({ points }) => points.at(-1))).toEqual([
    [40, 0, 0],
    [60, 0, 0],
    [50, 0, 0],
  ]);
});

// By hand, OD 0.706: half of it is 0.353, once for the stub, twice for the back-to-back.
test("a stub and a back-to-back are measured to the backs of their 90s", () => {
  const { points } = onePull("stub 10 down, east 20 back to back, stub 12 up", 4, 0.706);
  expectNear(points, [[0, 0, 0], [0, 0, -9.647], [19.294, 0, -9.647], [19.294, 0, 2]]); // prettier-ignore
});

test.each([0, -4, NaN, Infinity])("a radius of %p is refused", (radius) => {
  expect(() => resolve("up 40", radius)).toThrow(`radius must be above 0; got ${radius}.`);
});
