/** A request put in order and in the solver's terms, by hand. */
import { canonical } from "../../src/cutting/model/kinds";
import type { CutRequest, CutStock } from "../../src/cutting/model/request";
import { toModel } from "../../src/cutting/model/toModel";

const kind = (length: number, cost: number, quantity = Infinity) => ({ length, cost, quantity });
const translate = (request: CutRequest) => {
  const { model, kindOf } = toModel(canonical(request));
  return { weights: [...model.weights], demands: [...model.demands], bins: model.bins, kindOf };
};
const bin = (capacity: number, cost: number, limit = Infinity) => ({ capacity, cost, limit });
const TWO = [{ length: 40, quantity: 2 }];

describe("a request in order", () => {
  it("adds equal lengths up, longest first, and leaves out what nobody wants", () => {
    const pieces = [
      { length: 20, quantity: 1 },
      { length: 40, quantity: 2 },
      { length: 30, quantity: 0 },
      { length: 20, quantity: 3 },
    ];
    expect(canonical({ pieces, stocks: [{ length: 50 }] })).toEqual({
      ...{ lengths: [40, 20], demands: [2, 4], kinds: [kind(50, 1)], kerf: 0, minimumOffcut: 0 },
    });
    expect(canonical({ pieces, stocks: [{ length: 50 }], kerf: 1, minimumOffcut: 3 })).toMatchObject({
      ...{ kerf: 1, minimumOffcut: 3 },
    });
  });

  it("has sticks longest first, then cheapest, those to be bought before those on hand", () => {
    const stocks: CutStock[] = [
      { length: 60, quantity: 1 },
      { length: 60, quantity: 2, cost: 9 },
      { length: 60, cost: 9 },
      { length: 60, cost: 4 },
      { length: 60, quantity: 3 },
      { length: 60, quantity: 1 },
      { length: 90, quantity: 0 },
      { length: 80, cost: 20 },
    ];
    const kinds = [kind(80, 20), kind(60, 0, 5), kind(60, 4), kind(60, 9)];
    expect(canonical({ pieces: TWO, stocks }).kinds).toStrictEqual([...kinds, kind(60, 9, 2)]);
    expect(canonical({ pieces: TWO, stocks: stocks.reverse() }).kinds).toStrictEqual([...kinds, kind(60, 9, 2)]);
  });

  it("puts sticks to be bought together, too, and counts each of them 1 unless it has a price", () => {
    expect(canonical({ pieces: TWO, stocks: [{ length: 60 }, { length: 60 }] }).kinds).toEqual([kind(60, 1)]);
  });

  it.each<[string, Partial<CutRequest>]>([
    [
      "stock 3 must have a price when others have one, or none may have; got an empty price.",
      { stocks: [{ length: 50, quantity: 1 }, { length: 60, cost: 9 }, { length: 70 }] },
    ],
    ["stocks must have at least one stick; every quantity is 0.", { stocks: [{ length: 60, quantity: 0 }] }],
    ["minimum offcut must be a whole number from 0 to 10000000; got -1.", { minimumOffcut: -1 }],
    [
      "quantity of piece 2 must be a whole number from 0 to 10000000; got 0.5.",
      { pieces: [...TWO, { length: 9, quantity: 0.5 }] },
    ],
    [
      "length of piece 1 must be a whole number from 1 to 10000000; got 10000001.",
      { pieces: [{ length: 10_000_001, quantity: 1 }] },
    ],
    [
      "length of stock 2 must be a whole number from 1 to 10000000; got 0.",
      { stocks: [{ length: 60 }, { length: 0 }] },
    ],
    [
      "quantity of stock 1 must be a whole number from 0 to 10000000; got -1.",
      { stocks: [{ length: 60, quantity: -1 }] },
    ],
    [
      "cost of stock 1 must be a whole number from 0 to 10000000; got -1.",
      { stocks: [{ length: 60, quantity: 1, cost: -1 }] },
    ],
    ['piece length must be at most the longest stick, 2-7/16"; got 2-1/2".', { stocks: [{ length: 39 }] }],
    ["piece length must be at most the longest stick, 3.9 mm; got 4 mm.", { grid: "0.1 mm", stocks: [{ length: 39 }] }],
  ])("%s", (message, change) => {
    expect(() => canonical({ pieces: TWO, stocks: [{ length: 60 }], ...change })).toThrow(message);
  });

  it("takes the most that it may take", () => {
    const pieces = [{ length: 10_000_000, quantity: 100_000 }];
    const stocks = [{ length: 10_000_000, quantity: 10_000_000, cost: 0 }];
    expect(canonical({ pieces, stocks }).kinds).toEqual([kind(10_000_000, 0, 10_000_000)]);
    expect(canonical({ pieces: TWO, stocks: [{ length: 40 }] }).lengths).toEqual([40]);
    expect(
      canonical({ pieces: [{ length: 10_000_000, quantity: 0 }], stocks: [{ length: 1, cost: 1 }] }).lengths,
    ).toEqual([]);
  });
});

describe("in the solver's terms", () => {
  it("a piece weighs its length and a cut; a stick holds a cut more than its length", () => {
    const pieces = [...TWO, { length: 20, quantity: 3 }];
    expect(translate({ pieces, stocks: [{ length: 120 }], kerf: 3 })).toEqual({
      ...{ weights: [43, 23], demands: [2, 3], bins: [bin(123, 1)], kindOf: [0] },
    });
  });

  it("counts in the largest step all weights are multiples of: 48 and 30 into 84 are 8 and 5 into 14", () => {
    const pieces = [46, 28].map((length) => ({ length, quantity: 1 }));
    expect(translate({ pieces, stocks: [{ length: 83 }], kerf: 2 })).toMatchObject({
      weights: [8, 5],
      bins: [bin(14, 1)],
    });
  });

  it("asks for nothing where there are no pieces", () => {
    expect(translate({ pieces: [], stocks: [{ length: 60 }] })).toEqual({
      ...{ weights: [], demands: [], bins: [bin(60, 1)], kindOf: [0] },
    });
  });

  it.each<[string, CutStock[], number[]]>([
    ["the shorter of two at one price", [{ length: 60 }, { length: 50 }], [60]],
    [
      "the dearer of two as long",
      [
        { length: 60, cost: 9 },
        { length: 60, cost: 8 },
      ],
      [60],
    ],
    [
      "the shorter and dearer",
      [
        { length: 60, cost: 8 },
        { length: 50, cost: 9 },
      ],
      [60],
    ],
    [
      "what is on hand at the price of a new one",
      [
        { length: 60, cost: 8 },
        { length: 60, cost: 8, quantity: 1 },
      ],
      [60],
    ],
    [
      "nothing where the shorter is cheaper",
      [
        { length: 60, cost: 9 },
        { length: 50, cost: 8 },
      ],
      [60, 50],
    ],
    ["nothing where the longer is an offcut", [{ length: 50 }, { length: 60, cost: 9, quantity: 1 }], [50, 60]],
    ["nothing where the offcut costs nothing", [{ length: 60 }, { length: 60, quantity: 1 }], [60, 60]],
    [
      "no offcut for a better one, for there may be too few",
      [{ length: 60 }, { length: 50, quantity: 1 }, { length: 45, quantity: 1 }],
      [60, 50, 45],
    ],
  ])("leaves out %s; the kind that never ends is first", (_, stocks, left) => {
    expect(translate({ pieces: TWO, stocks }).bins.map(({ capacity }) => capacity * 40)).toEqual(
      left.map((length) => Math.floor(length / 40) * 40),
    );
    const { kinds } = canonical({ pieces: TWO, stocks });
    expect(translate({ pieces: TWO, stocks }).kindOf.map((k) => kinds[k]!.length)).toEqual(left);
  });

  it("takes of no kind more than there are pieces", () => {
    const stocks = [{ length: 60 }, { length: 50, quantity: 9 }, { length: 45, quantity: 1 }];
    expect(translate({ pieces: TWO, stocks }).bins.map(({ limit }) => limit)).toEqual([Infinity, 2, 1]);
  });

  it("where a piece fits what is on hand only, has a stick for what cannot be placed: dearer than all together", () => {
    const pieces = [
      { length: 70, quantity: 2 },
      { length: 40, quantity: 1 },
    ];
    const stocks = [
      { length: 60, cost: 5 },
      { length: 80, quantity: 1, cost: 7 },
    ];
    // Weights of 70 and 40 are 7 and 4 tens. Three pieces at 7 at most: 22 is more than any plan.
    expect(translate({ pieces, stocks })).toEqual({
      ...{ weights: [7, 4], demands: [2, 1], kindOf: [-1, 0, 1] },
      bins: [bin(8, 22), bin(8, 7, 1), bin(6, 5, 3)],
    });
  });

  it("where all stock may run out, has a stick for what cannot be placed, as long as the longest", () => {
    expect(
      translate({
        pieces: TWO,
        stocks: [
          { length: 80, quantity: 1 },
          { length: 120, quantity: 1 },
        ],
      }),
    ).toEqual({
      ...{ weights: [1], demands: [2], bins: [bin(3, 1), bin(3, 0, 1), bin(2, 0, 1)], kindOf: [-1, 0, 1] },
    });
  });

  it("a piece as long as the stick that never ends fits it, and so does its cut", () => {
    expect(translate({ pieces: [{ length: 60, quantity: 1 }], stocks: [{ length: 60 }], kerf: 3 })).toEqual({
      ...{ weights: [1], demands: [1], bins: [bin(1, 1)], kindOf: [0] },
    });
    const stocks = [{ length: 60 }, { length: 61, quantity: 1 }];
    expect(translate({ pieces: [{ length: 60, quantity: 1 }], stocks }).kindOf).toEqual([1, 0]);
    expect(translate({ pieces: [{ length: 61, quantity: 1 }], stocks }).kindOf).toEqual([-1, 0, 1]);
  });
});
