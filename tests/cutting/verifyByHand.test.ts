/** Plans and proofs written by hand, so that the checker is judged without the solver. */
import type { CutPlan } from "../../src/cutting/checking/plan";
import type { CutRequest } from "../../src/cutting/model/request";
import { verifyPlan } from "../../src/cutting/checking/verify";

/** Prices that prove the cost, and nothing about the longest rest. */
const proof = (prices: number[][]) => ({ pairs: [], prices, rest: { pairs: [], prices: [] } });
const one = (length: number) => ({ length, count: 1 });
const bought = (length: number, cost = 1) => ({ length, cost, quantity: Infinity });
const onHand = (length: number, quantity: number, cost = 0) => ({ length, cost, quantity });
const changed = (plan: CutPlan, change: (copy: CutPlan) => void): CutPlan => {
  const copy = structuredClone(plan);
  change(copy);
  return copy;
};

/**
 * A cut of 2. 51 + 31 take 84 with the cut between them of a stick of 100; the other 51 has an offcut of 60, and
 * 31 + 21 take 54 of the other offcut.
 */
const request: CutRequest = {
  pieces: [
    { length: 31, quantity: 1 },
    { length: 51, quantity: 2 },
    { length: 31, quantity: 1 },
    { length: 21, quantity: 1 },
    { length: 99, quantity: 0 },
  ],
  stocks: [
    { length: 60, quantity: 1 },
    { length: 100, cost: 7 },
    { length: 60, quantity: 1 },
    { length: 80, quantity: 0 },
  ],
  ...{ kerf: 2, minimumOffcut: 14 },
};
const plan: CutPlan = {
  stocks: [bought(100, 7), onHand(60, 2)],
  patterns: [
    { stock: 0, count: 1, cuts: [one(51), one(31)], remnant: 14 },
    { stock: 1, count: 1, cuts: [one(51)], remnant: 7 },
    { stock: 1, count: 1, cuts: [one(31), one(21)], remnant: 4 },
  ],
  ...{ used: [1, 2], sticks: 1, onHand: 2, missing: [], missingSticks: 0, missingPatterns: [] },
  ...{ cost: 7, bound: 7, proven: true, longestRemnant: 14, longestProven: false, remnants: [14] },
  // 2 x 51 + 2 x 31 + 21 = 185 of 100 + 2 x 60; 14 are kept.
  ...{ stockLength: 220, pieceLength: 185, waste: 21, wasteShare: 21 / 220 },
  // A stick holds two of the four longer pieces, an offcut one: four, less the two of the offcuts, take one stick.
  certificate: proof([[1, 1, 0]]),
  ...{ stopped: "proven", steps: 0 },
};

describe("what is counted", () => {
  it("accepts what is right, whatever order rows and stocks stand in", () => {
    expect(verifyPlan(request, plan)).toEqual([]);
    const split = changed(plan, (p) => {
      p.stocks = [onHand(60, 1), bought(100, 7), onHand(60, 1)];
      p.patterns.forEach((pattern, k) => (pattern.stock = [1, 0, 2][k]!));
      p.used = [1, 1, 1];
    });
    expect(verifyPlan(request, split)).toEqual([]);
  });

  it.each<[string, string[], (copy: CutPlan) => void]>([
    ["a stick at another cost", ["the plan's stocks are not the request's"], (p) => void (p.stocks[0]!.cost = 6)],
    ["an offcut fewer", ["the plan's stocks are not the request's"], (p) => void (p.stocks[1]!.quantity = 1)],
    [
      "an offcut to be bought",
      ["the plan's stocks are not the request's"],
      (p) => void (p.stocks[1]!.quantity = Infinity),
    ],
    ["a stick more", ["the plan's stocks are not the request's"], (p) => void p.stocks.push(onHand(80, 1))],
    [
      "a stock there is not",
      [
        "pattern 3 is not in whole sticks and pieces",
        "stock 2 states a wrong number of sticks",
        "length 31 is cut -1 times too often",
        "length 21 is cut -1 times too often",
      ],
      (p) => void (p.patterns[2]!.stock = 2),
    ],
    [
      "no sticks of a pattern",
      [
        "pattern 2 is not in whole sticks and pieces",
        "stock 2 states a wrong number of sticks",
        "length 51 is cut -1 times too often",
      ],
      (p) => void (p.patterns[1]!.count = 0),
    ],
    [
      "half a piece",
      [
        "pattern 2 is not in whole sticks and pieces",
        "stock 2 states a wrong number of sticks",
        "length 51 is cut -1 times too often",
      ],
      (p) => void (p.patterns[1]!.cuts[0]!.count = 0.5),
    ],
    [
      "no piece of a length",
      [
        "pattern 3 is not in whole sticks and pieces",
        "stock 2 states a wrong number of sticks",
        "length 31 is cut -1 times too often",
        "length 21 is cut -1 times too often",
      ],
      (p) => void (p.patterns[2]!.cuts[1]!.count = 0),
    ],
    ["the wrong number of sticks", ["stock 1 states a wrong number of sticks"], (p) => void (p.used[0] = 2)],
    [
      "an offcut too many",
      ["stock 2 is used 3 times; there are 2", "length 21 is cut 1 times too often"],
      (p) => {
        p.patterns.push({ stock: 1, count: 1, cuts: [one(21)], remnant: 37 });
        p.used[1] = 3;
      },
    ],
    ["a remnant that is the last cut", ["pattern 1 states a wrong remnant"], (p) => void (p.patterns[0]!.remnant = 16)],
    ["a wrong price", ["cost is stated as 6, should be 7"], (p) => void (p.cost = p.bound = 6)],
    ["a stick to buy more", ["sticks is stated as 3, should be 1"], (p) => void (p.sticks = 3)],
    ["an offcut less", ["onHand is stated as 1, should be 2"], (p) => void (p.onHand = 1)],
    [
      "another length of all sticks",
      [
        "stockLength is stated as 219, should be 220",
        "waste is stated as 21, should be 20",
        "wasteShare is stated as 0.09545454545454546, should be 0.0958904109589041",
      ],
      (p) => void (p.stockLength = 219),
    ],
    [
      "another length of all pieces",
      ["pieceLength is stated as 180, should be 185"],
      (p) => void (p.pieceLength = 180),
    ],
    [
      "a longer rest than there is",
      ["longestRemnant is stated as 15, should be 14"],
      (p) => void (p.longestRemnant = 15),
    ],
    ["rests that are not kept", ["the remnants do not follow from the patterns"], (p) => void (p.remnants = [14, 7])],
    ["no rests", ["the remnants do not follow from the patterns"], (p) => void (p.remnants = [])],
    [
      "more waste",
      ["waste is stated as 22, should be 21", "wasteShare is stated as 0.09545454545454546, should be 0.1"],
      (p) => void (p.waste = 22),
    ],
    ["proven, and dearer than the bound", ["proven is stated as 1, should be 0"], (p) => void (p.bound = 6)],
  ])("rejects %s", (_, problems, change) => {
    const found = verifyPlan(request, changed(plan, change));
    expect(found.slice(0, problems.length)).toEqual(problems);
  });

  it("sticks on hand are not those to be bought, even at the same price", () => {
    const stocks = [
      { length: 60, cost: 9 },
      { length: 60, cost: 9, quantity: 2 },
    ];
    const pieces = [{ length: 40, quantity: 1 }];
    const priced: CutPlan = {
      ...plan,
      stocks: [bought(60, 9), onHand(60, 2, 9)],
      patterns: [{ stock: 1, count: 1, cuts: [one(40)], remnant: 20 }],
      ...{ used: [0, 1], sticks: 0, onHand: 1, cost: 9, bound: 9, longestRemnant: 20, remnants: [20] },
      ...{ stockLength: 60, pieceLength: 40, waste: 0, wasteShare: 0, certificate: proof([[1]]) },
    };
    expect(verifyPlan({ pieces, stocks }, priced)).toEqual([]);
    for (const others of [[onHand(60, 3, 9)], [], [bought(60, 9)]]) {
      const wrong = { ...priced, stocks: [bought(60, 9), ...others] };
      expect(verifyPlan({ pieces, stocks }, wrong)[0]).toBe("the plan's stocks are not the request's");
    }
  });

  it("a plan that is not proven need not say so", () => {
    expect(
      verifyPlan(
        request,
        changed(plan, (p) => void (p.proven = false)),
      ),
    ).toEqual([]);
    const low = (p: CutPlan) => ((p.proven = false), (p.bound = 6), undefined);
    expect(verifyPlan(request, changed(plan, low))).toEqual([]);
  });

  it("rests are kept longest first, from the shortest offcut on, but not nothing", () => {
    const any = { ...request, minimumOffcut: 0 };
    const all = (remnants: number[]) =>
      changed(plan, (p) => {
        p.remnants = remnants;
        // Of 220, 185 are pieces and 25 are kept.
        p.waste = 10;
        p.wasteShare = 10 / 220;
      });
    expect(verifyPlan(any, all([14, 7, 4]))).toEqual([]);
    expect(verifyPlan(any, all([4, 7, 14]))).toEqual(["the remnants do not follow from the patterns"]);
    // Two pieces of 49 and a cut fill 100: nothing is left, and nothing is no rest.
    const full: CutRequest = { pieces: [{ length: 49, quantity: 2 }], stocks: [{ length: 100 }], kerf: 2 };
    const filled: CutPlan = {
      ...plan,
      ...{ stocks: [bought(100)], patterns: [{ stock: 0, count: 1, cuts: [{ length: 49, count: 2 }], remnant: 0 }] },
      ...{ used: [1], sticks: 1, onHand: 0, cost: 1, bound: 1, longestRemnant: 0, remnants: [] },
      ...{ stockLength: 100, pieceLength: 98, waste: 2, wasteShare: 0.02, certificate: proof([[1]]) },
    };
    expect(verifyPlan(full, filled)).toEqual([]);
    expect(verifyPlan(full, { ...filled, remnants: [0] })).toEqual(["the remnants do not follow from the patterns"]);
    // One step shorter, and the pieces are longer than their stick.
    expect(verifyPlan({ ...full, stocks: [{ length: 99 }] }, { ...filled, stocks: [bought(99)] })).toEqual([
      "pattern 1 is 1 steps longer than its stick",
    ]);
  });

  it("nothing to cut costs nothing", () => {
    const empty: CutPlan = {
      ...plan,
      ...{ patterns: [], used: [0, 0], sticks: 0, onHand: 0, cost: 0, bound: 0, longestRemnant: 0, remnants: [] },
      ...{ stockLength: 0, pieceLength: 0, waste: 0, wasteShare: 0, certificate: proof([]) },
    };
    expect(verifyPlan({ ...request, pieces: [] }, empty)).toEqual([]);
  });
});

/** Two sticks of 100 on hand for 80, 80 and 30: the 30 has none. Each pair of them is too long for one stick. */
const short: CutRequest = {
  pieces: [
    { length: 80, quantity: 2 },
    { length: 30, quantity: 1 },
  ],
  stocks: [{ length: 100, quantity: 2 }],
};
const lacking: CutPlan = {
  ...plan,
  stocks: [onHand(100, 2)],
  patterns: [{ stock: 0, count: 2, cuts: [one(80)], remnant: 20 }],
  ...{ used: [2], sticks: 0, onHand: 2, cost: 0, bound: 0, longestRemnant: 20, remnants: [20, 20] },
  ...{ missing: [one(30)], missingSticks: 1, missingPatterns: [{ count: 1, cuts: [one(30)] }] },
  ...{ stockLength: 200, pieceLength: 160, waste: 0, wasteShare: 0, certificate: proof([[1, 1]]) },
};

describe("what has no stick", () => {
  it("accepts what cannot be placed", () => {
    expect(verifyPlan(short, lacking)).toEqual([]);
  });

  it.each<[string, string, (copy: CutPlan) => void]>([
    [
      "a piece without a stick that is told of in no pattern",
      "the missing patterns do not hold what is missing",
      (p) => void (p.missingPatterns = []),
    ],
    ["no stick for it", "missingSticks is stated as 0, should be 1", (p) => void (p.missingSticks = 0)],
    [
      "more in the patterns than is missing",
      "the missing patterns do not hold what is missing",
      (p) => void (p.missingPatterns[0]!.cuts = [{ length: 30, count: 2 }]),
    ],
    [
      "half a stick",
      "missing pattern 1 does not fit the longest stick in whole pieces",
      (p) => void (p.missingPatterns[0]!.count = 0.5),
    ],
    [
      "pieces longer than the longest stick",
      "missing pattern 1 does not fit the longest stick in whole pieces",
      (p) => void (p.missingPatterns[0]!.cuts = [one(101)]),
    ],
    ["a piece missing that is cut", "length 80 is cut 1 times too often", (p) => void p.missing.push(one(80))],
    ["less than nothing missing", "length 30 is cut -2 times too often", (p) => void (p.missing[0]!.count = -1)],
    [
      "a proof that says nothing",
      "the certificate does not prove the bound 0",
      (p) => void (p.certificate.prices = [[0, 0]]),
    ],
    [
      "a bound above the cost",
      "the certificate does not prove the bound 1",
      (p) => ((p.bound = 1), void (p.proven = false)),
    ],
  ])("rejects %s", (_, problem, change) => {
    expect(verifyPlan(short, changed(lacking, change))).toContain(problem);
  });

  it("rejects leaving out what there are sticks for, even at no cost", () => {
    // Nothing is cut, so nothing is spent; every piece is said to be missing.
    const idle = changed(lacking, (p) => {
      p.patterns = [];
      Object.assign(p, { used: [0], onHand: 0, longestRemnant: 0, remnants: [], stockLength: 0, pieceLength: 0 });
      p.missing = [{ length: 80, count: 2 }, one(30)];
      p.missingPatterns = [
        { count: 2, cuts: [one(80)] },
        { count: 1, cuts: [one(30)] },
      ];
      p.missingSticks = 3;
    });
    expect(verifyPlan(short, idle)).toEqual(["the certificate does not prove the bound 0"]);
    const silent = changed(idle, (p) => ((p.missingSticks = 0), void (p.missingPatterns = [])));
    expect(verifyPlan(short, silent)).toEqual(["the missing patterns do not hold what is missing"]);
  });

  it("a missing piece counts with its cut, on the longest of the sticks", () => {
    const pieces = [{ length: 42, quantity: 3 }];
    const withLongest = (length: number) => {
      const stocks = [
        { length: 50, quantity: 1 },
        { length, quantity: 1 },
      ];
      const none = changed(lacking, (p) => {
        Object.assign(p, { patterns: [], used: [0, 0], onHand: 0, missingSticks: 2 });
        p.stocks = [onHand(50, 1), onHand(length, 1)];
        p.missing = [{ length: 42, count: 3 }];
        p.missingPatterns = [
          { count: 1, cuts: [{ length: 42, count: 2 }] },
          { count: 1, cuts: [one(42)] },
        ];
      });
      return verifyPlan({ pieces, stocks, kerf: 3 }, none);
    };
    // 2 x 42 and a cut of 3 take 87.
    const tooLong = "missing pattern 1 does not fit the longest stick in whole pieces";
    expect(withLongest(86)).toEqual([tooLong]);
    expect(withLongest(87)).not.toContain(tooLong);
  });
});
