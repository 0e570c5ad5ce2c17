import fc from "fast-check";
import { heldBy, putUps, putUpWords } from "../../../src/takeoff/allowances/putUps";

/** Least sum of packages that is enough, and the fewest packages of it, by trying every count of every size. */
function tried(need: number, sizes: readonly number[]): { held: number; count: number } {
  const [size, ...rest] = sizes;
  if (size === undefined) return need <= 0 ? { held: 0, count: 0 } : { held: Infinity, count: Infinity };
  let best = { held: Infinity, count: Infinity };
  for (let count = 0; count <= Math.ceil(Math.max(0, need) / size); count++) {
    const after = tried(need - count * size, rest);
    const all = { held: after.held + count * size, count: after.count + count };
    if (all.held < best.held || (all.held === best.held && all.count < best.count)) best = all;
  }
  return best;
}

test("3 conductors of 410 ft with half a foot at each end and 10 % more: two reels of 1,000 ft, or one of 2,500", () => {
  // Worked out by hand: (410 + 2 · 0.5) · 3 = 1,233 ft, and 1,233 · 1.10 = 1,356.3 ft.
  const feet = (410 + 2 * 0.5) * 3 * 1.1;
  expect(feet).toBeCloseTo(1356.3, 9);
  expect(putUps(feet, [1000, 2500])).toEqual([{ size: 1000, count: 2 }]);
  expect(putUps(feet, [2500])).toEqual([{ size: 2500, count: 1 }]);
  expect(putUps(feet, [500, 1000])).toEqual([{ size: 1000, count: 1 }, { size: 500, count: 1 }]); // prettier-ignore
  expect(putUpWords(putUps(feet, [500, 1000]), "ft")).toBe("1 × 1000 ft + 1 × 500 ft");
});

test("no choice of packages holds the need with less, or as little with fewer", () => {
  const sizes = fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 3 });
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 60 }), sizes, (need, of) => {
      const packages = putUps(need, of);
      const count = packages.reduce((sum, each) => sum + each.count, 0);
      expect({ held: heldBy(packages), count }).toEqual(tried(need, of));
    }),
    { numRuns: 300 },
  );
});

test.each([[1_000_000, [7, 11]], [999_999.5, [1]], [123_457, [500, 300]]] as [number, number[]][])("a large need, %d in %j: enough, and less than one package over", (need, sizes) => {
  const held = heldBy(putUps(need, sizes));
  expect(held).toBeGreaterThanOrEqual(need);
  expect(held - need).toBeLessThan(Math.min(...sizes) + 100);
}); // prettier-ignore
