/** Fewer ways to cut the same sticks. */
import fc from "fast-check";
import { binCounts, fillWeight, type FillCount, type Model } from "../../src/cutting/model/model";
import { Work } from "../../src/cutting/model/work";
import { fewerPatterns } from "../../src/cutting/rests/fewerPatterns";

const WEIGHTS = [50, 40, 30, 20, 10];
const model: Model = {
  weights: Int32Array.from(WEIGHTS),
  demands: Int32Array.from(WEIGHTS, () => 99),
  bins: [
    { capacity: 100, cost: 1, limit: Infinity },
    { capacity: 60, cost: 0, limit: 99 },
  ],
};
const sticks = { lengths: [100, 60], step: 1 };

/** A fill with the pieces of these weights. */
function fill(count: number, bin: number, ...weights: number[]): FillCount {
  const items = [...new Set(weights)].map((weight) => WEIGHTS.indexOf(weight));
  const copies = items.map((item) => weights.filter((weight) => weight === WEIGHTS[item]).length);
  return { fill: { bin, items, copies }, count };
}

function fewer(plan: FillCount[], steps = 1e9): FillCount[] {
  const search = fewerPatterns(model, sticks, plan, new Work({ steps }));
  for (let step = search.next(); ; step = search.next()) if (step.done) return step.value;
}
const written = (plan: readonly FillCount[]) =>
  plan
    .map(({ fill, count }) => {
      const weights = fill.items.flatMap((item, k) => Array.from({ length: fill.copies[k]! }, () => WEIGHTS[item]!));
      return `${count} of ${fill.bin}: ${weights.sort((a, b) => b - a).join(" ")}`;
    })
    .sort();

// The first is the emptiest and stays as it is.
const EMPTY = fill(1, 0, 10);

test("two patterns cut once become one cut twice", () => {
  expect(written(fewer([EMPTY, fill(1, 0, 50, 50), fill(1, 0, 30, 30, 20, 20)]))).toEqual([
    "1 of 0: 10",
    "2 of 0: 50 30 20",
  ]);
});

test("three patterns cut once, no two of which go together, become two", () => {
  expect(written(fewer([EMPTY, fill(1, 0, 50, 40), fill(1, 0, 50, 30, 20), fill(1, 0, 40, 30)]))).toEqual([
    "1 of 0: 10",
    "1 of 0: 30 30 20",
    "2 of 0: 50 40",
  ]);
});

test("where sticks are of two kinds, each kind is cut its own way", () => {
  expect(written(fewer([EMPTY, fill(1, 0, 50, 50), fill(1, 0, 40, 30, 30), fill(1, 1, 20)]))).toEqual([
    "1 of 0: 10",
    "1 of 1: 40 20",
    "2 of 0: 50 30",
  ]);
});

test("the fill that leaves the longest rest stays, and without work all do, but for those that are alike", () => {
  expect(written(fewer([fill(1, 0, 50), fill(1, 0, 30, 30)]))).toEqual(["1 of 0: 30 30", "1 of 0: 50"]);
  const plan = [fill(1, 0, 50, 50), fill(1, 0, 30, 30, 20, 20), fill(1, 0, 50, 50)];
  expect(written(fewer(plan, 0))).toEqual(["1 of 0: 30 30 20 20", "2 of 0: 50 50"]);
});

const anyPlan = fc
  .array(
    fc.record({
      bin: fc.integer({ min: 0, max: 1 }),
      count: fc.integer({ min: 1, max: 4 }),
      weights: fc.array(fc.constantFrom(...WEIGHTS), { minLength: 1, maxLength: 8 }),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((fills) =>
    fills
      .map(({ bin, count, weights }) => fill(count, bin, ...weights))
      .filter(({ fill }) => fillWeight(model, fill) <= model.bins[fill.bin]!.capacity),
  );

function pieces(plan: readonly FillCount[]): number[] {
  const all = WEIGHTS.map(() => 0);
  for (const { fill, count } of plan) fill.items.forEach((item, k) => (all[item]! += count * fill.copies[k]!));
  return all;
}

test("the same pieces come from the same sticks in no more ways, none fuller than it can be, and a longest rest stays", () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const after = fewer(plan);
      expect(pieces(after)).toEqual(pieces(plan));
      expect(binCounts(model, after)).toEqual(binCounts(model, plan));
      expect(after.length).toBeLessThanOrEqual(written(plan).length);
      const rest = ({ fill }: FillCount) => sticks.lengths[fill.bin]! - fillWeight(model, fill);
      for (const each of after) expect(rest(each)).toBeGreaterThanOrEqual(0);
      expect(Math.max(0, ...after.map(rest))).toBeGreaterThanOrEqual(Math.max(0, ...plan.map(rest)));
    }),
    { numRuns: 500 },
  );
});
