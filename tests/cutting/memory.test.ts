import { Memory } from "../../src/cutting/memory";
import { seededRandom } from "../../src/cutting/model/random";
import type { CutRequest } from "../../src/cutting/model/request";
import { leastCost, planCuts, planCutsInSteps } from "../../src/cutting/solve";

/** Forty pieces of all lengths and a seed of its own, so that no other test has asked for it. */
function request(seed: number): CutRequest {
  const random = seededRandom(seed);
  const pieces = Array.from({ length: 40 }, () => ({ length: 100 + Math.floor(random() * 1500), quantity: 1 }));
  return { pieces, stocks: [{ length: 1920 }], kerf: 1 };
}
/** The same in a module that remembers nothing yet. */
const afresh = (asked: CutRequest, steps: number): unknown => {
  let plan: unknown;
  jest.isolateModules(() => {
    plan = jest.requireActual<{ planCuts: typeof planCuts }>("../../src/cutting/solve").planCuts(asked, { steps });
  });
  return plan;
};

describe("what is kept", () => {
  const found = (value: string, more: { limit?: number; spent?: number; complete?: boolean; size?: number } = {}) => ({
    ...{ value, limit: 100, spent: 60, complete: true, size: 1 },
    ...more,
  });

  it("a search that was never stopped answers for every limit that would not have stopped it", () => {
    const memory = new Memory<string>(10);
    memory.keep("a", found("whole"));
    for (const limit of [61, 100, 101, 1e9]) expect(memory.find("a", limit)?.value).toBe("whole");
    for (const limit of [0, 59, 60]) expect(memory.find("a", limit)).toBeUndefined();
    expect(memory.find("b", 100)).toBeUndefined();
    // The last stage may take more than there was left, unasked.
    memory.keep("c", found("over", { spent: 130 }));
    expect([99, 100, 120, 130].map((limit) => memory.find("c", limit)?.value)).toEqual([
      undefined,
      "over",
      "over",
      "over",
    ]);
  });

  it("one that was stopped answers for its own limit only", () => {
    const memory = new Memory<string>(10);
    memory.keep("a", found("stopped", { complete: false, spent: 100 }));
    memory.keep("a", found("further", { complete: false, limit: 200, spent: 201 }));
    expect([99, 100, 101, 200, 201].map((limit) => memory.find("a", limit)?.value)).toEqual([
      ...[undefined, "stopped", undefined, "further", undefined],
    ]);
  });

  it("is no more than there is room for; what was asked for longest ago goes first", () => {
    const memory = new Memory<string>(10);
    for (const key of ["a", "b", "c"]) memory.keep(key, found(key, { size: 3 }));
    memory.find("a", 100);
    memory.keep("d", found("d", { size: 4 }));
    expect(["a", "b", "c", "d"].filter((key) => memory.find(key, 100))).toEqual(["a", "c", "d"]);
    memory.keep("e", found("e", { size: 11 }));
    memory.keep("d", found("d again", { size: 4 }));
    expect(["a", "c", "d", "e"].map((key) => memory.find(key, 100)?.value)).toEqual(["a", "c", "d again", undefined]);
  });
});

describe("plans asked for again", () => {
  it("are the same object, whatever the order of rows, with any larger limit, in steps or not", () => {
    const asked = request(1);
    const plan = planCuts(asked);
    const reordered = { ...asked, pieces: [...asked.pieces].reverse() };
    expect(planCuts(reordered)).toBe(plan);
    expect(planCuts(asked, { steps: 3e8 })).toBe(plan);
    const step = planCutsInSteps(asked, { steps: 1e9 }).next();
    expect(step).toEqual({ done: true, value: plan });
    expect(planCuts(asked, { steps: plan.steps + 1 })).toBe(plan);
  });

  it.each<[string, Partial<CutRequest>]>([
    ["one piece more", { pieces: [...request(2).pieces, { length: 500, quantity: 1 }] }],
    ["a longer stick", { stocks: [{ length: 1921 }] }],
    ["a price", { stocks: [{ length: 1920, cost: 7 }] }],
    ["a number on hand", { stocks: [{ length: 1920, quantity: 99 }] }],
    ["a wider saw cut", { kerf: 2 }],
    ["a shorter offcut that is kept", { minimumOffcut: 7 }],
    ["another seed", { seed: 2 }],
  ])("but not with %s", (_, change) => {
    expect(planCuts({ ...request(2), ...change })).not.toBe(planCuts(request(2)));
  });

  it("are what a program that remembers nothing answers, in whatever order they were asked for", () => {
    for (const seed of [3, 4]) {
      const asked = request(seed);
      for (const steps of seed === 3 ? [1e8, 2e5, 1e8, 1e4, 2e5] : [1e4, 2e5, 1e8, 2e5, 1e4]) {
        leastCost(asked, { steps });
        expect(planCuts(asked, { steps })).toEqual(afresh(asked, steps));
      }
    }
  });

  it("are not kept when the clock or the caller stopped them", () => {
    const asked = request(5);
    let time = 0;
    expect(planCuts(asked, { milliseconds: 2, now: () => time++ }).stopped).toBe("time limit");
    expect(planCuts(asked).stopped).toBe("proven");
  });

  it("cannot be changed", () => {
    const plan = planCuts(request(6));
    expect(() => (plan.patterns[0]!.cuts[0]!.count = 9)).toThrow(TypeError);
    expect(() => plan.remnants.push(9)).toThrow(TypeError);
  });

  it("need not be searched again where the least cost alone was asked for before", () => {
    const asked = request(7);
    const { cost, bound } = leastCost(asked);
    const doing = [...planCutsInSteps(asked)].map((step) => step.doing);
    expect(doing).not.toContain("fewest sticks");
    expect(planCuts(asked)).toMatchObject({ cost, bound });
  });
});
