/** Where the prices of no list prove that one stick fewer will not do: cases. */
import fc from "fast-check";
import { Branching } from "../../src/cutting/branching/branching";
import { verifyPlan } from "../../src/cutting/checking/verify";
import { excludeSticks } from "../../src/cutting/checking/verifyBranches";
import type { CutPlan } from "../../src/cutting/checking/plan";
import { bestFit } from "../../src/cutting/greedy/bestFit";
import { binCounts, planCost, type Model } from "../../src/cutting/model/model";
import type { Branch } from "../../src/cutting/model/packing";
import { seededRandom } from "../../src/cutting/model/random";
import { Work } from "../../src/cutting/model/work";
import { planCuts } from "../../src/cutting/solve";
import type { CutRequest } from "../../src/cutting/model/request";
import { leastCost } from "./bruteForce";

/**
 * The classic example of an instance that needs a stick more than its linear program rounded up (Fieldhouse 1990, as
 * Scheithauer and Terno quote it; from memory): sticks of 132, pieces 44, 33 and 12; 259/132 of a stick, yet three sticks.
 */
const FIELDHOUSE: CutRequest = {
  pieces: [
    { length: 44, quantity: 2 },
    { length: 33, quantity: 3 },
    { length: 12, quantity: 6 },
  ],
  stocks: [{ length: 132 }],
};

function modelOf(weights: readonly number[], capacity: number): Model {
  const different = [...new Set(weights)].sort((a, b) => b - a);
  return {
    weights: Int32Array.from(different),
    demands: Int32Array.from(different, (weight) => weights.filter((other) => other === weight).length),
    bins: [{ capacity, cost: 1, limit: Infinity }],
  };
}

const branched = (model: Model, bins: number) => {
  const work = new Work();
  const known = bestFit(model, model.demands, [Infinity], [0], work);
  const steps = new Branching(model, bins, known, seededRandom(1), work).run();
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
};

const weightLists = fc
  .array(fc.integer({ min: 9, max: 60 }), { minLength: 2, maxLength: 9 })
  .map((weights) => weights.sort((a, b) => b - a));

/** Any tree of cases with any prices, sound or not. */
const trees = (pieces: number): fc.Arbitrary<Branch> =>
  fc.letrec<{ tree: Branch; leaf: Branch; fork: Branch }>((tie) => ({
    tree: fc.oneof({ maxDepth: 4 }, tie("leaf"), tie("fork")),
    leaf: fc.record({ prices: fc.array(fc.integer({ min: 0, max: 30 }), { minLength: pieces, maxLength: pieces }) }),
    fork: fc.record({
      pieces: fc
        .tuple(fc.integer({ min: 0, max: pieces - 1 }), fc.integer({ min: 0, max: pieces - 1 }))
        .map((two) => [...two]),
      together: tie("tree"),
      apart: tie("tree"),
    }),
  })).tree;

describe("proof by cases", () => {
  it("says what trying everything says, and its check agrees", () => {
    let proofs = 0;
    fc.assert(
      fc.property(weightLists, (weights) => {
        const request = { pieces: weights.map((length) => ({ length, quantity: 1 })), stocks: [{ length: 100 }] };
        const least = leastCost(request);
        const model = modelOf(weights, 100);
        const enough = branched(model, least);
        expect(enough.proof).toBeUndefined();
        expect(planCost(model, enough.plan!)).toBeLessThanOrEqual(least);
        const fewer = branched(model, least - 1);
        expect(fewer.plan).toBeUndefined();
        if (!fewer.proof)
          return void expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeGreaterThan(100 * (least - 1));
        proofs++;
        expect(excludeSticks(weights, 100, least - 1, fewer.proof)).toBe(true);
      }),
      { numRuns: 300 },
    );
    expect(proofs).toBeGreaterThan(0);
  });

  it("no tree of cases whatever excludes numbers of sticks that do", () => {
    const cases = weightLists.chain((weights) =>
      fc.record({ weights: fc.constant(weights), tree: trees(weights.length) }),
    );
    fc.assert(
      fc.property(cases, ({ weights, tree }) => {
        const request = { pieces: weights.map((length) => ({ length, quantity: 1 })), stocks: [{ length: 100 }] };
        expect(excludeSticks(weights, 100, leastCost(request), tree)).toBe(false);
      }),
      { numRuns: 500 },
    );
  });

  it("does what is asked where that many bins are enough, with every piece in one", () => {
    const model = modelOf([60, 55, 50, 45, 40, 30, 20], 100);
    const { plan } = branched(model, 3);
    expect(binCounts(model, plan!)).toEqual([3]);
    const placed = model.weights.map((_, item) =>
      plan!.reduce((sum, { fill, count }) => sum + count * (fill.copies[fill.items.indexOf(item)] ?? 0), 0),
    );
    expect(placed).toEqual(model.demands);
  });
});

test("the classic example that needs a stick more than its linear program rounded up is planned and proven", () => {
  const plan = planCuts(FIELDHOUSE);
  expect(leastCost(FIELDHOUSE)).toBe(3);
  expect(plan).toMatchObject({ cost: 3, bound: 3, proven: true });
});

describe("a plan that no prices prove", () => {
  const pieces = [35, 31, 31, 29, 28, 24, 23, 23, 22, 22, 17, 15, 14].map((length) => ({ length, quantity: 1 }));
  const request: CutRequest = { pieces, stocks: [{ length: 79 }] };
  const plan = planCuts(request);
  const { branches } = plan.certificate;
  const changed = (other: Branch | undefined): CutPlan => ({
    ...plan,
    certificate: { ...plan.certificate, branches: other },
  });

  it("is proven by cases, as trying everything proves it", () => {
    expect(leastCost(request)).toBe(5);
    expect(plan).toMatchObject({ cost: 5, bound: 5, proven: true });
    expect(branches).toBeDefined();
    expect(verifyPlan(request, plan)).toEqual([]);
  });

  it("is not accepted without its cases, with other prices, with a case left open or for a stick more", () => {
    const open: Branch = { prices: pieces.map(() => 0) };
    const cases = { pieces: [0, 1], together: branches!, apart: branches! };
    expect(verifyPlan(request, changed(cases))).toEqual([]);
    const negative: Branch = { prices: pieces.map((_, k) => (k === 0 ? -1 : 1)) };
    for (const wrong of [
      ...[undefined, open, negative, { prices: [1] }],
      ...[
        { ...cases, together: open },
        { ...cases, apart: open },
        { ...cases, pieces: [0, 0] },
        { ...cases, pieces: [0, 13] },
      ],
    ]) {
      expect(verifyPlan(request, changed(wrong))).not.toEqual([]);
    }
    expect(verifyPlan(request, { ...plan, bound: 6, cost: 6 })).not.toEqual([]);
  });

  it("is not accepted where a dearer stick holds more", () => {
    const stocks = [
      { length: 79, cost: 10 },
      { length: 158, cost: 19 },
    ];
    const best = planCuts({ pieces, stocks });
    expect(verifyPlan({ pieces, stocks }, best)).toEqual([]);
    const wrong = { ...best, certificate: { ...best.certificate, branches } };
    expect(verifyPlan({ pieces, stocks }, wrong)).not.toEqual([]);
  });
});

describe("a bound that the case search raises", () => {
  const pieces = [35, 31, 31, 29, 28, 24, 23, 23, 22, 22, 17, 15, 14].map((length) => ({ length, quantity: 1 }));
  afterEach(() => jest.restoreAllMocks());
  /** Lets the case search come to this instead of looking. A length of its own each time: plans are kept. */
  const planWith = (proof: Branch | undefined, seed: number): CutPlan => {
    jest.spyOn(Branching.prototype, "run").mockImplementation(function* () {
      yield;
      return { plan: undefined, proof };
    });
    return planCuts({ pieces, stocks: [{ length: 79 }], seed }, { steps: 2e7 });
  };

  it.each<[string, Branch]>([
    ["on prices that prove nothing", { prices: pieces.map(() => 0) }],
    ["on the lengths, which prove one stick less", { prices: pieces.map(({ length }) => length) }],
    [
      "on a case that is not looked into",
      { pieces: [0, 1], together: { prices: pieces.map(() => 0) }, apart: { prices: [] } },
    ],
  ])("%s is not shown", (_, proof) => {
    const seed = 100 + JSON.stringify(proof).length;
    expect(() => planWith(proof, seed)).toThrow("The cutting plan failed its own check");
  });

  it("is not raised where the search comes to nothing", () => {
    const plan = planWith(undefined, 99);
    expect(plan).toMatchObject({ cost: 5, bound: 4, proven: false });
    expect(plan.certificate.branches).toBeUndefined();
  });

  it("is what is said, however early the search is stopped: proven by its cases, or not proven", () => {
    const told = { proven: 0, open: 0 };
    const whole = planCuts({ pieces, stocks: [{ length: 79 }], seed: 199 }).steps;
    for (let seed = 200; seed < 230; seed++) {
      const request = { pieces, stocks: [{ length: 79 }], seed };
      const plan = planCuts(request, { steps: Math.ceil((whole * (seed - 199)) / 20) });
      expect(verifyPlan(request, plan)).toEqual([]);
      expect(plan.proven).toBe(plan.certificate.branches !== undefined);
      expect(plan.bound).toBe(plan.proven ? 5 : 4);
      told[plan.proven ? "proven" : "open"]++;
    }
    expect(Math.min(told.proven, told.open)).toBeGreaterThan(3);
  });
});
