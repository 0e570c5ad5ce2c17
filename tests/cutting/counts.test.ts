import fc from "fast-check";
import { leastCounts, type Cut } from "../../src/cutting/model/counts";
import type { Bin } from "../../src/cutting/model/model";
import { Work } from "../../src/cutting/model/work";

const bin = (cost: number, limit: number): Bin => ({ capacity: 1, cost, limit });
const cut = (demand: number, ...worths: number[]): Cut => ({ prices: new Float64Array(0), worths, demand });
const cheap = { bins: [bin(2, Infinity), bin(3, 2)], cuts: [cut(6, 2, 3)] };

describe("the cheapest numbers of bins that satisfy what is proven", () => {
  it.each([
    ["few of three others", 3, 3, 40, 6, 300],
    ["many of two others", 2, 14, 120, 40, 100],
  ])("is what trying every number of each kind finds: %s", (_, others, most, needed, dearest, numRuns) => {
    const kinds = fc.array(
      fc.record({ cost: fc.integer({ min: 0, max: dearest }), limit: fc.integer({ min: 0, max: most }) }),
      { maxLength: others },
    );
    const request = kinds.chain((others) =>
      fc.record({
        bins: fc
          .integer({ min: 1, max: dearest })
          .map((cost) => [bin(cost, Infinity), ...others.map((o) => bin(o.cost, o.limit))]),
        cuts: fc.array(
          fc
            .tuple(
              fc.integer({ min: 0, max: needed }),
              fc.integer({ min: 1, max: 9 }),
              fc.array(fc.integer({ min: 0, max: 9 }), { minLength: others.length, maxLength: others.length }),
            )
            .map(([demand, main, worths]) => cut(demand, main, ...worths)),
          { minLength: 1, maxLength: 3 },
        ),
      }),
    );
    fc.assert(
      fc.property(request, ({ bins, cuts }) => {
        const found = leastCounts(bins, cuts, new Work())!;
        expect(found.cost).toBe(tryAll(bins, cuts));
        expect(found.bound).toBe(found.cost);
        expect(found.cost).toBe(costOf(bins, found.counts));
        expect(satisfies(found.counts, cuts)).toBe(true);
        found.counts.forEach((count, k) => expect(count).toBeLessThanOrEqual(bins[k]!.limit));
      }),
      { numRuns },
    );
  });

  it("takes all that costs nothing, and none where nothing is asked for", () => {
    // By hand: two free ones are worth 10 of the 13, one main bin the rest; the priced kind is dearer.
    const bins = [bin(4, Infinity), bin(0, 2), bin(5, 9)];
    expect(leastCounts(bins, [cut(13, 3, 5, 3)], new Work())).toMatchObject({ cost: 4, counts: [1, 2, 0] });
    expect(leastCounts(bins, [cut(10, 3, 5, 3)], new Work())).toMatchObject({ cost: 0, counts: [0, 2, 0] });
    expect(leastCounts(bins, [], new Work())).toMatchObject({ cost: 0, counts: [0, 2, 0] });
  });

  it("leaves out what was tried: 3 of the main kind, 2 of the other, then one of the other and 2 main ones", () => {
    const { bins, cuts } = cheap;
    expect(leastCounts(bins, cuts, new Work())).toMatchObject({ cost: 6, counts: [3, 0] });
    expect(leastCounts(bins, cuts, new Work(), new Set(["3,0"]))).toMatchObject({ cost: 6, counts: [0, 2] });
    expect(leastCounts(bins, cuts, new Work(), new Set(["3,0", "0,2"]))).toMatchObject({ cost: 7, counts: [2, 1] });
    expect(leastCounts(bins, cuts, new Work(), new Set(["3,0", "0,2", "2,1"]))).toBeUndefined();
  });

  it("keeps the cheapest, though a dearer one looks cheaper before its main bins are whole", () => {
    // With the other bin a third of a main one is left to do, which takes a whole one: 1 + 5 > 5.
    expect(leastCounts([bin(5, Infinity), bin(1, 1)], [cut(3, 3, 2)], new Work())).toMatchObject({
      cost: 5,
      counts: [1, 0],
    });
  });

  it("finds what is cheaper by one of a million", () => {
    const bins = [bin(1_000_001, Infinity), bin(500_000, 1), bin(500_000, 1)];
    expect(leastCounts(bins, [cut(2, 2, 1, 1)], new Work())).toMatchObject({ cost: 1_000_000, counts: [0, 1, 1] });
  });

  it("satisfies every cut, not only one", () => {
    // The first asks for 2 main bins, the second for 5 unless the other kind serves it: 1 x 3 + 2 x 2 < 5 x 2.
    expect(leastCounts([bin(2, Infinity), bin(3, 1)], [cut(4, 2, 0), cut(10, 2, 6)], new Work())).toMatchObject({
      cost: 7,
      counts: [2, 1],
    });
  });
});

it("does not look at more numbers than it has time for, and bounds the rest", () => {
  // Each kind is good for one of the needs; there are some 300 x 300 x 300 x 300 numbers to look at.
  const bins = [10, 10, 10, 10].map((cost) => bin(cost, Infinity));
  const cuts = [0, 1, 2, 3].map((k) => cut(3000, ...[0, 1, 2, 3].map((other) => (other === k ? 7 : 1))));
  const work = new Work();
  const found = leastCounts(bins, cuts, work)!;
  expect(satisfies(found.counts, cuts)).toBe(true);
  // Together they need 12,000, and a bin gives 10 of it for 10; one need alone is met by 3000 / 7 bins.
  expect(found.cost).toBeGreaterThanOrEqual(12_000);
  expect(found.bound).toBeGreaterThanOrEqual(4286);
  expect(found.bound).toBeLessThanOrEqual(12_000);
  expect(work.spent).toBeGreaterThan(1e6);
  expect(work.spent).toBeLessThan(3e7);
});

const costOf = (bins: readonly Bin[], counts: readonly number[]): number =>
  counts.reduce((sum, count, k) => sum + count * bins[k]!.cost, 0);
const satisfies = (counts: readonly number[], cuts: readonly Cut[]): boolean =>
  cuts.every(({ worths, demand }) => counts.reduce((sum, count, k) => sum + count * worths[k]!, 0) >= demand);

/** Every number of each kind up to its limit, of the main one up to the largest demand. */
function tryAll(bins: readonly Bin[], cuts: readonly Cut[]): number {
  const largest = Math.max(...cuts.map(({ demand }) => demand));
  let all: number[][] = [[]];
  for (const { limit } of bins)
    all = all.flatMap((some) => Array.from({ length: Math.min(limit, largest) + 1 }, (_, count) => [...some, count]));
  return Math.min(...all.filter((counts) => satisfies(counts, cuts)).map((counts) => costOf(bins, counts)));
}
