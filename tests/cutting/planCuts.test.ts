import { planCuts, planCutsInSteps } from "../../src/cutting/solve";
import { seededRandom } from "../../src/cutting/model/random";

const once = (lengths: readonly number[]) => lengths.map((length) => ({ length, quantity: 1 }));

/** `sticks` sticks of 1,000 cut into three without waste: the optimum is `sticks` by construction. */
function triplets(sticks: number, seed: number): number[] {
  const random = seededRandom(seed);
  const between = (low: number, high: number): number => low + Math.floor(random() * (high - low + 1));
  return Array.from({ length: sticks }, () => {
    const first = between(380, 490);
    const second = between(251, Math.floor((1000 - first) / 2) - 1);
    return [first, second, 1000 - first - second];
  }).flat();
}

describe("planCuts", () => {
  it("puts pieces that fit exactly onto one stick: no kerf behind the last piece", () => {
    // By hand: 3 × 39 + 2 cuts of 1 = 119; with a stick of 119 nothing is left, with 118 it does not fit.
    const request = { pieces: [{ length: 39, quantity: 3 }], kerf: 1 };
    expect(planCuts({ ...request, stocks: [{ length: 119 }] })).toMatchObject({ sticks: 1, waste: 2, remnants: [] });
    expect(planCuts({ ...request, stocks: [{ length: 118 }] })).toMatchObject({ sticks: 2, proven: true });
  });

  it.each([
    [20, 5],
    [40, 6],
    [83, 7],
  ])("finds and proves the plan without waste for %i sticks cut in three (seed %i)", (sticks, seed) => {
    const plan = planCuts({ pieces: once(triplets(sticks, seed)), stocks: [{ length: 1000 }] }, { steps: 3e9 });
    expect(plan).toMatchObject({ sticks, bound: sticks, proven: true, waste: 0 });
  });

  it("uses an offcut when that saves a stick, and leaves it alone when it does not", () => {
    const pieces = [{ length: 70, quantity: 3 }];
    const saves = planCuts({ pieces, stocks: [{ length: 100 }, { length: 71, quantity: 1 }] });
    expect(saves).toMatchObject({ sticks: 2, onHand: 1, proven: true });
    const useless = planCuts({ pieces, stocks: [{ length: 145 }, { length: 71, quantity: 2 }] });
    // By hand: 145 holds two; one stick and one offcut are enough, the second offcut stays whole.
    expect(useless).toMatchObject({ sticks: 1, onHand: 1, proven: true });
  });

  it("takes the cheaper mix of two lengths", () => {
    // By hand: 3 pieces of 60 need 180; a 120 holds two, a 60 one. 195 + 100 < 3 × 100 = 300 < 2 × 195.
    const stocks = [
      { length: 60, cost: 100 },
      { length: 120, cost: 195 },
    ];
    const plan = planCuts({ pieces: [{ length: 60, quantity: 3 }], stocks });
    expect(plan).toMatchObject({ cost: 295, bound: 295, proven: true, sticks: 2 });
  });

  it("moves a piece to the cheaper length that holds it, even without any search", () => {
    // The long stick costs less for its length, so it is opened first; by hand: the short one costs 100 instead of 195.
    const stocks = [
      { length: 60, cost: 100 },
      { length: 120, cost: 195 },
    ];
    expect(planCuts({ pieces: [{ length: 50, quantity: 1 }], stocks }, { steps: 0 }).cost).toBe(100);
  });

  it("accepts its own pairs where all lengths are multiples and the stick is not", () => {
    // With the kerf: 48, 30, 12, 12 into 83, all multiples of 6, so that 48 + 30 fill a stick (78) as far as can be.
    const pieces = [
      { length: 47, quantity: 1 },
      { length: 29, quantity: 1 },
      { length: 11, quantity: 2 },
    ];
    const plan = planCuts({ pieces, stocks: [{ length: 82 }], kerf: 1 });
    expect(plan).toMatchObject({ sticks: 2, proven: true });
  });

  it("tells which pieces lack a stick when all stock is limited", () => {
    const plan = planCuts({
      pieces: [
        { length: 80, quantity: 2 },
        { length: 30, quantity: 1 },
      ],
      stocks: [{ length: 100, quantity: 2 }],
    });
    expect(plan).toMatchObject({ missing: [{ length: 30, count: 1 }], missingSticks: 1, onHand: 2, proven: true });
  });

  it("leaves the longest remnant on one stick", () => {
    // By hand: 60+40, 60+40, 20 on three sticks of 100 leaves 80; no plan has fewer sticks (220 > 200) or more than 80 left.
    const pieces = [
      { length: 60, quantity: 2 },
      { length: 40, quantity: 2 },
      { length: 20, quantity: 1 },
    ];
    const plan = planCuts({ pieces, stocks: [{ length: 100 }] });
    expect(plan).toMatchObject({ sticks: 3, longestRemnant: 80, longestProven: true });
  });

  it.each([11, 12, 13])("leaves the whole waste on one stick where all others can be full (seed %i)", (seed) => {
    // By construction: 40 full sticks of 1,900 cut in five, and 700 more. So 41 sticks, and no remnant is longer than 1,200.
    const random = seededRandom(seed);
    const stick = (): number[] => {
      const cuts = Array.from({ length: 4 }, () => 150 + Math.floor(random() * 250));
      return [...cuts, 1900 - cuts.reduce((sum, cut) => sum + cut, 0)];
    };
    const pieces = once([...Array.from({ length: 40 }, stick).flat(), 300, 400]);
    const plan = planCuts({ pieces, stocks: [{ length: 1900 }] });
    expect(plan).toMatchObject({ sticks: 41, proven: true, longestRemnant: 1200, longestProven: true });
  });

  it("counts remnants shorter than the minimum offcut as waste", () => {
    const request = { pieces: [{ length: 70, quantity: 1 }], stocks: [{ length: 100 }] };
    expect(planCuts({ ...request, minimumOffcut: 30 })).toMatchObject({ remnants: [30], waste: 0, wasteShare: 0 });
    expect(planCuts({ ...request, minimumOffcut: 31 })).toMatchObject({ remnants: [], waste: 30, wasteShare: 0.3 });
  });

  it("answers nothing for no pieces", () => {
    expect(planCuts({ pieces: [], stocks: [{ length: 100 }] })).toMatchObject({
      sticks: 0,
      patterns: [],
      proven: true,
    });
  });

  it("is honest when its steps run out, and never worse than first-fit decreasing", () => {
    const pieces = once(triplets(40, 6));
    const plan = planCuts({ pieces, stocks: [{ length: 1000 }] }, { steps: 1 });
    expect(plan.stopped).toBe("work limit");
    expect(plan.proven).toBe(false);
    expect(plan.bound).toBe(40);
    expect(plan.sticks).toBeGreaterThan(40);
    expect(plan.sticks).toBeLessThanOrEqual(
      firstFitDecreasing(
        pieces.map((piece) => piece.length),
        1000,
      ),
    );
  });

  it("stops when canceled or when the clock says so", () => {
    const request = { pieces: once(triplets(40, 8)), stocks: [{ length: 1000 }] };
    expect(planCuts(request, { canceled: () => true }).stopped).toBe("canceled");
    let time = 0;
    expect(planCuts(request, { milliseconds: 5, now: () => time++ }).stopped).toBe("time limit");
  });

  it("reports progress whose bound never falls and whose cost never rises", () => {
    const steps = planCutsInSteps({ pieces: once(triplets(40, 9)), stocks: [{ length: 1000 }] }, { steps: 3e9 });
    let last = { cost: Infinity, bound: 0 };
    let reports = 0;
    for (let step = steps.next(); !step.done; step = steps.next()) {
      expect(step.value.cost).toBeLessThanOrEqual(last.cost);
      expect(step.value.bound).toBeGreaterThanOrEqual(last.bound);
      last = step.value;
      reports++;
    }
    expect(reports).toBeGreaterThan(10);
  });
});

/** Written out here once more, as the text-book has it. */
function firstFitDecreasing(lengths: readonly number[], stick: number): number {
  const rooms: number[] = [];
  for (const length of [...lengths].sort((a, b) => b - a)) {
    const at = rooms.findIndex((room) => room >= length);
    if (at < 0) rooms.push(stick - length);
    else rooms[at]! -= length;
  }
  return rooms.length;
}

test("more offcuts on hand than there are pieces: only so many count for the proof", () => {
  // A whole stick must be bought; by room alone three offcuts of half a stick would hold both pieces.
  const plan = planCuts({
    pieces: [1920, 960].map((length) => ({ length, quantity: 1 })),
    stocks: [{ length: 1920 }, { length: 960, quantity: 3 }],
    kerf: 1,
  });
  expect(plan).toMatchObject({ sticks: 1, onHand: 1, bound: 1, proven: true });
});
