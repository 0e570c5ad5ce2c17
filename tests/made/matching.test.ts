/** The matching against every choice tried, and its proof against proofs that are broken. */
import fc from "fast-check";
import { bestMatching, isProven, type Edge } from "../../src/made/standing/matching";

interface Case {
  supply: number[];
  demand: number[];
  edges: Edge[];
}

const anyCase: fc.Arbitrary<Case> = fc
  .record({
    supply: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 4 }),
    demand: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 4 }),
    worths: fc.array(fc.option(fc.integer({ min: 1, max: 9 }), { freq: 3 }), { minLength: 16, maxLength: 16 }),
  })
  .map(({ supply, demand, worths }) => ({
    ...{ supply, demand },
    edges: supply.flatMap((_, thing) =>
      demand.flatMap((__, place): Edge[] => {
        const worth = worths[thing * 4 + place];
        return worth ? [{ thing, place, worth }] : [];
      }),
    ),
  }));

/** Tries every number along every edge. */
function greatestWorth({ supply, demand, edges }: Case, at = 0): number {
  const edge = edges[at];
  if (!edge) return 0;
  let best = 0;
  for (let count = 0; count <= Math.min(supply[edge.thing]!, demand[edge.place]!); count++) {
    const less = (counts: readonly number[], index: number) =>
      counts.map((n, place) => (place === index ? n - count : n));
    const rest = { edges, supply: less(supply, edge.thing), demand: less(demand, edge.place) };
    best = Math.max(best, count * edge.worth + greatestWorth(rest, at + 1));
  }
  return best;
}

test("no choice of all is worth more, and each best one is proven", () => {
  fc.assert(
    fc.property(anyCase, (given) => {
      const { supply, demand, edges } = given;
      const matching = bestMatching(supply, demand, edges);
      expect(matching.worth).toBe(greatestWorth(given));
      expect(isProven(supply, demand, edges, matching)).toBe(true);
    }),
    { numRuns: 400 },
  );
});

test("a path that gives back is found: the greedy choice would leave one place empty", () => {
  const edges = [
    { thing: 0, place: 0, worth: 9 },
    { thing: 0, place: 1, worth: 8 },
    { thing: 1, place: 0, worth: 7 },
  ];
  expect(bestMatching([1, 1], [1, 1], edges).given).toEqual([0, 1, 1]);
});

describe("the proof fails", () => {
  const [supply, demand] = [[2, 1], [1, 2]]; // prettier-ignore
  const edges = [
    { thing: 0, place: 0, worth: 4 },
    { thing: 0, place: 1, worth: 3 },
    { thing: 1, place: 1, worth: 5 },
  ];
  const good = bestMatching(supply, demand, edges);

  test("of nothing that is right", () => {
    expect(good.worth).toBe(12);
    expect(isProven(supply, demand, edges, good)).toBe(true);
  });

  test.each([
    ["one given less", { given: [1, 0, 1], worth: 9 }],
    ["a worth that is not reached", { worth: 13 }],
    ["more than there is", { given: [2, 1, 1], worth: 16 }],
    ["a part of one", { given: [0.5, 1.5, 1] }],
    ["prices that are too low", { thingPrices: [0, 0], placePrices: [0, 0] }],
    ["a price below nothing", { thingPrices: [-1, good.thingPrices[1]!] }],
    ["prices that are too high", { placePrices: good.placePrices.map((price) => price + 1) }],
  ])("of %s", (_, change) => {
    expect(isProven(supply, demand, edges, { ...good, ...change })).toBe(false);
  });
});
