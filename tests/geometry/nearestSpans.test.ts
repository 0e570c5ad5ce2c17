/** Where two centerlines come nearest, against places worked out by hand and against points laid close on both. */
import fc from "fast-check";
import { nearestSpans, NEAREST_TO, stretchOf } from "../../src/geometry/nearestSpans";
import { pathSpans, samplePath } from "../../src/geometry/span";
import { norm, subtract, type Vec3 } from "../../src/geometry/vector";
import type { Path } from "../../src/geometry/path";

const stretches = (path: Path) => pathSpans(path).map((span) => stretchOf(span));
const nearest = (a: Path, b: Path, below = Infinity) => nearestSpans(stretches(a), stretches(b), below);
const line = (...points: Vec3[]): Path => ({ points, radii: [] });

describe("by hand", () => {
  test("two lines that pass over each other: their heights apart", () => {
    const found = nearest(line([0, 0, 3], [100, 0, 3]), line([40, -50, 10], [40, 70, 10]))!;
    expect(found).toMatchObject({ apart: 7, first: { along: 40 }, second: { along: 50 } });
    expect(found.point).toEqual([40, 0, 6.5]);
  });

  test("two 90s around one center: their radii apart, all along", () => {
    const bend = (radius: number): Path => ({ points: [[0, -radius, 0], [radius, -radius, 0], [radius, 0, 0]], radii: [radius] }); // prettier-ignore
    expect(nearest(bend(9), bend(5))!.apart).toBeCloseTo(4, 3);
  });

  test("a line across the middle of a 90: from the line to the arc, not to its chord", () => {
    // The arc about (0, 10) from (0, 0) to (10, 10): its middle lies at 10·(sin 45°, 1 − cos 45°).
    const bend: Path = { points: [[-20, 0, 0], [10, 0, 0], [10, 30, 0]], radii: [10] }; // prettier-ignore
    const [x, y] = [10 * Math.SQRT1_2, 10 * (1 - Math.SQRT1_2)];
    const upright = line([x, y, 2], [x, y, 50]);
    expect(Math.abs(nearest(bend, upright)!.apart - 2)).toBeLessThan(NEAREST_TO);
  });

  test("nothing where they are no nearer than asked for", () => {
    const [a, b] = [line([0, 0, 0], [50, 0, 0]), line([0, 6, 0], [50, 6, 0])];
    expect(nearest(a, b, 6)).toBeUndefined();
    expect(nearest(a, b, 6.001)!.apart).toBeCloseTo(6, 9);
  });
});

/** Paths of three legs and two bends that have room. */
const paths = fc
  .record({
    start: fc.tuple(...[0, 0, 0].map(() => fc.integer({ min: -20, max: 20 }))),
    turns: fc.tuple(...[0, 0].map(() => fc.integer({ min: 0, max: 3 }))),
    legs: fc.tuple(...[0, 0, 0].map(() => fc.integer({ min: 15, max: 40 }))),
    radius: fc.integer({ min: 3, max: 7 }),
    slant: fc.integer({ min: -6, max: 6 }),
  })
  .map(({ start, turns, legs, radius, slant }): Path => {
    const ways: Vec3[] = [[1, 0, 0], [0, 1, 0.1 * slant], [0, -1, 0.2], [0.1 * slant, 0.2, 1]]; // prettier-ignore
    const order = [0, 1 + (turns[0]! % 3), 0].map((way) => ways[way]!);
    order[2] = turns[1]! % 2 === 0 ? ways[0]! : [0.5, 0.7, -0.4];
    const points: Vec3[] = [start as unknown as Vec3];
    order.forEach((way, leg) => {
      const [x, y, z] = points.at(-1)!;
      points.push([x + way[0] * legs[leg]!, y + way[1] * legs[leg]!, z + way[2] * legs[leg]!]);
    });
    return { points, radii: [radius, radius] };
  });

test("random pairs: as near as the nearest of points laid on both, to what their spacing leaves open", () => {
  /** Points along straights as well [in]. */
  const SPACING = 0.5;
  /** Chords of 2° leave an arc of 7 in. by 7·(1 − cos 1°) at most [in]. */
  const LAID_OFF = 0.0011;
  const laid = (path: Path): Vec3[] => {
    const dense = samplePath(path, 2);
    return dense.slice(1).flatMap((to, index): Vec3[] => {
      const from = dense[index]!;
      const count = Math.max(1, Math.ceil(norm(subtract(to, from)) / SPACING));
      return Array.from({ length: count + 1 }, (_, at) => {
        const share = at / count;
        return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share, from[2] + (to[2] - from[2]) * share]; // prettier-ignore
      });
    });
  };
  fc.assert(
    fc.property(paths, paths, (a, b) => {
      const others = laid(b);
      const least = laid(a).reduce(
        (best, [x, y, z]) => others.reduce((low, [u, v, w]) => Math.min(low, Math.hypot(x - u, y - v, z - w)), best),
        Infinity,
      );
      const { apart } = nearest(a, b)!;
      // Laid points are on both but for their chords, so hardly nearer; and no farther than half a spacing on each.
      expect(apart).toBeLessThan(least + NEAREST_TO + 2 * LAID_OFF);
      expect(apart).toBeGreaterThan(least - SPACING);
    }),
    { numRuns: 40, seed: 31 },
  );
});
