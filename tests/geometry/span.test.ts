import fc from "fast-check";
import { partsToPath, pathParts, type Path } from "../../src/geometry/path";
import { pathSpans, pointAlong, samplePath } from "../../src/geometry/span";
import { norm, subtract, type Vec3 } from "../../src/geometry/vector";
import { expectNear } from "../support/nearVectors";
import { randomParts } from "../support/randomPaths";

const chainLength = (points: readonly Vec3[]) =>
  points.slice(1).reduce((sum, point, index) => sum + norm(subtract(point, points[index]!)), 0);

// 40 up, 30 east, R 5: the arc starts at 35 up, its center 5 to the east of there.
const stub: Path = { points: [[0, 0, 0], [0, 0, 40], [30, 0, 40]], radii: [5] }; // prettier-ignore
/** What two sums of chords leave of the arcs [in]. */
const CHORDS = 1e-6;
const ARC = (5 * Math.PI) / 2;

test("spans run straight, arc, straight and tell where each begins", () => {
  const spans = pathSpans(stub);
  expect(spans.map(({ kind }) => kind)).toEqual(["straight", "arc", "straight"]);
  expectNear(
    spans.map(({ from, length, point, direction }) => [from, length, point, direction]),
    [
      [0, 35, [0, 0, 0], [0, 0, 1]],
      [35, ARC, [0, 0, 35], [0, 0, 1]],
      [35 + ARC, 25, [5, 0, 40], [1, 0, 0]],
    ],
  );
  const arc = spans[1]!;
  if (arc.kind !== "arc") throw new Error("the second span is an arc");
  expectNear([arc.center, arc.normal, arc.angle, arc.radius], [[5, 0, 35], [0, 1, 0], 90, 5]); // prettier-ignore
});

test("a distance is found on straights and arcs", () => {
  const half = 5 * Math.SQRT1_2; // halfway round, 45°
  expectNear([pointAlong(stub, 0).point, pointAlong(stub, 12).point], [[0, 0, 0], [0, 0, 12]]); // prettier-ignore
  expectNear([pointAlong(stub, 35 + ARC / 2).point], [[5 - half, 0, 35 + half]]);
  expectNear([pointAlong(stub, 35 + ARC / 2).direction], [[Math.SQRT1_2, 0, Math.SQRT1_2]]);
  expectNear([pointAlong(stub, 35 + ARC + 7).point], [[12, 0, 40]]);
  expectNear([pointAlong(stub, pathParts(stub).developed).point], [[30, 0, 40]]);
});

test.each([-0.001, 68.001, NaN])("a distance of %p off the conduit is refused", (distance) => {
  expect(() => pointAlong(stub, distance)).toThrow(/^distance must be from 0 to 67\.85\d*; got/);
});

test("samples stand at most the given turn apart and hold both tangent points", () => {
  const points = samplePath(stub, 40); // 90° in three steps of 30°
  const [c, s] = [5 * Math.cos(Math.PI / 6), 5 * 0.5];
  expectNear(points, [[0, 0, 0], [0, 0, 35], [5 - c, 0, 35 + s], [5 - s, 0, 35 + c], [5, 0, 40], [30, 0, 40]]); // prettier-ignore
});

test("a step that divides the angle takes no extra sample for rounding", () => {
  expect(samplePath(stub, 10)).toHaveLength(2 + 9 + 1);
});

test.each([0, -5, NaN])("a step of %p degrees is refused", (step) => {
  expect(() => samplePath(stub, step)).toThrow("maxStepDegrees must be above 0");
});

test("the developed length is what summing up small chords of the centerline comes to", () => {
  fc.assert(
    fc.property(randomParts, ({ legs, bends }) => {
      const path = partsToPath(legs, bends);
      // A chord falls short by its step squared; two sums, one at half the step, leave that out (Richardson).
      const sum = (samples: number) => {
        let length = 0;
        for (const span of pathSpans(path)) {
          const points = Array.from({ length: samples + 1 }, (_, i) =>
            pointAt(path, span.from + (span.length * i) / samples),
          );
          length += chainLength(points);
        }
        return length;
      };
      expectNear([(4 * sum(64) - sum(32)) / 3], [pathParts(path).developed], CHORDS);
    }),
    { numRuns: 25 },
  );
});

const pointAt = (path: Path, distance: number) =>
  pointAlong(path, Math.min(Math.max(distance, 0), pathParts(path).developed)).point;

test("the centerline is one piece: each span begins where and as the one before ends", () => {
  fc.assert(
    fc.property(randomParts, ({ legs, bends }) => {
      const path = partsToPath(legs, bends);
      const spans = pathSpans(path);
      expectNear([samplePath(path, 3).at(-1)!], [path.points.at(-1)!]);
      for (const [index, span] of spans.entries()) {
        const next = spans[index + 1];
        if (!next) continue;
        const end = pointAlong(path, span.from + span.length);
        expectNear([end.point, end.direction], [next.point, next.direction]);
      }
    }),
  );
});
