/** A packing turned back into lengths, added up by hand. Sticks of 100 and offcuts of 60; a cut of 2. */
import type { Canonical } from "../../src/cutting/model/kinds";
import type { FillCount } from "../../src/cutting/model/model";
import type { Packing } from "../../src/cutting/model/packing";
import type { RestProof } from "../../src/cutting/rests/longestRest";
import { toPlan } from "../../src/cutting/checking/toPlan";

const request: Canonical = {
  ...{ lengths: [51, 31, 21], demands: [9, 9, 9], kerf: 2, minimumOffcut: 14 },
  kinds: [
    { length: 100, cost: 7, quantity: Infinity },
    { length: 60, cost: 1, quantity: 4 },
  ],
};
const bins = [
  { capacity: 102, cost: 7, limit: Infinity },
  { capacity: 62, cost: 1, limit: 4 },
];
const model = { weights: Int32Array.of(53, 33, 23), demands: Int32Array.of(9, 9, 9), bins };
const fill = (bin: number, items: number[], copies: number[], count = 1): FillCount => ({
  fill: { bin, items, copies },
  count,
});
const planOf = (
  plan: FillCount[],
  change: Partial<Packing> = {},
  { of = request, kindOf = [0, 1], bins: others = bins } = {},
  rest?: RestProof,
) =>
  toPlan(
    of,
    { model: { ...model, bins: others }, kindOf },
    { plan, cost: 0, bound: 0, pairs: [], cuts: [], ...change },
    { stopped: "work limit", steps: 5, rest },
  );
const words = ({
  patterns,
}: {
  patterns: { stock: number; count: number; cuts: { length: number; count: number }[] }[];
}) =>
  patterns.map(
    ({ stock, count, cuts }) => `${count} of ${stock}: ${cuts.map((cut) => `${cut.count}x${cut.length}`).join()}`,
  );

describe("toPlan", () => {
  it("adds up: two sticks and an offcut", () => {
    // 100 - (21 + 51 + 2 x 2) = 24 twice; 60 - 33 = 27; 24 + 24 + 27 = 75 are kept.
    const plan = planOf([fill(0, [2, 0], [1, 1], 2), fill(1, [1], [1])], { cost: 15, bound: 14 });
    expect(plan).toEqual({
      stocks: request.kinds,
      patterns: [
        {
          ...{ stock: 0, count: 2, remnant: 24 },
          cuts: [
            { length: 51, count: 1 },
            { length: 21, count: 1 },
          ],
        },
        { stock: 1, count: 1, cuts: [{ length: 31, count: 1 }], remnant: 27 },
      ],
      ...{
        used: [2, 1],
        sticks: 2,
        onHand: 1,
        missing: [],
        missingSticks: 0,
        missingPatterns: [],
        cost: 15,
        bound: 14,
        proven: false,
      },
      ...{ longestRemnant: 27, longestProven: false, remnants: [27, 24, 24], stockLength: 260 },
      // 2 x (51 + 21) + 31 = 175; 260 - 175 - 75 = 10, five cuts of 2.
      ...{ pieceLength: 175, waste: 10, wasteShare: 10 / 260 },
      ...{ certificate: { pairs: [], prices: [], rest: { pairs: [], prices: [] } }, stopped: "work limit", steps: 5 },
    });
    expect(plan.stocks[1]).not.toBe(request.kinds[1]);
  });

  it("puts sticks cut alike together, whatever the order of their pieces, but not those from other stock", () => {
    const alike = [fill(0, [0, 2], [1, 1]), fill(1, [2], [1]), fill(0, [2, 0], [1, 1]), fill(0, [2], [1])];
    expect(words(planOf(alike))).toEqual(["2 of 0: 1x51,1x21", "1 of 0: 1x21", "1 of 1: 1x21"]);
  });

  it("has the most used first, then the stock's order, then the least left over, then the longest pieces", () => {
    const fills = [
      fill(1, [1], [1]), // 60 - 33 = 27 left
      fill(1, [2], [2]), // 60 - 46 = 14 left
      fill(0, [2], [4]), // 100 - 92 = 8 left
      fill(0, [1, 2], [1, 2]), // 100 - 33 - 46 = 21 left
      fill(0, [1], [3]), // 100 - 99 = 1 left
      fill(0, [0], [1], 3),
    ];
    expect(words(planOf(fills))).toEqual([
      ...["3 of 0: 1x51", "1 of 0: 3x31", "1 of 0: 4x21", "1 of 0: 1x31,2x21", "1 of 1: 2x21", "1 of 1: 1x31"],
    ]);
    // Without a cut, 50 + 20 and 30 + 2 x 20 leave 30 each; so do 50 + 2 x 10, and 3 x 20 + 10.
    const of = { ...request, kerf: 0, lengths: [50, 30, 20, 10] };
    const even = [
      ...[fill(0, [2, 3], [3, 1]), fill(0, [1, 2], [1, 2]), fill(0, [0, 3], [1, 2]), fill(0, [0, 2], [1, 1])],
      ...[fill(0, [1, 3], [1, 4]), fill(0, [1, 3], [2, 1])],
    ];
    const sorted = [
      ...["1 of 0: 1x50,1x20", "1 of 0: 1x50,2x10", "1 of 0: 2x30,1x10", "1 of 0: 1x30,2x20", "1 of 0: 1x30,4x10"],
      "1 of 0: 3x20,1x10",
    ];
    expect(words(planOf(even, {}, { of }))).toEqual(sorted);
    expect(words(planOf(even.reverse(), {}, { of }))).toEqual(sorted);
  });

  it("keeps a rest from the shortest offcut on; what the last cut takes is no rest", () => {
    // 100 - 86 = 14 is kept; 100 - 99 = 1 is not; 3 x 31 + 2 x 2 = 97 and the rest of 3 less a cut.
    const three = [fill(0, [0, 1], [1, 1]), fill(0, [1], [3])];
    expect(planOf(three)).toMatchObject({ remnants: [14], longestRemnant: 14, waste: 200 - 82 - 93 - 14 });
    const any = { of: { ...request, minimumOffcut: 0 } };
    expect(planOf(three, {}, any)).toMatchObject({ remnants: [14, 1] });
    // 2 x 49 and a cut fill the stick; the second cut is beyond its end.
    const full = { of: { ...request, minimumOffcut: 0, lengths: [49, 31, 21] } };
    expect(planOf([fill(0, [0], [2])], {}, full)).toMatchObject({ remnants: [], longestRemnant: 0, waste: 2 });
  });

  it("names what has no stick, longest first, and takes its price out of cost and bound", () => {
    const missing = { kindOf: [-1, 0], bins: [{ capacity: 102, cost: 1000, limit: Infinity }, ...bins] };
    const fills = [fill(0, [2], [4], 2), fill(0, [1, 0], [1, 1]), fill(1, [0], [1]), fill(0, [0], [1])];
    expect(planOf(fills, { cost: 4007, bound: 4007 }, missing)).toMatchObject({
      ...{ missingSticks: 4, cost: 7, bound: 7, proven: true, used: [1, 0], sticks: 1, onHand: 0, stockLength: 100 },
      missing: [
        { length: 51, count: 2 },
        { length: 31, count: 1 },
        { length: 21, count: 8 },
      ],
      missingPatterns: [
        { count: 2, cuts: [{ length: 21, count: 4 }] },
        {
          count: 1,
          cuts: [
            { length: 51, count: 1 },
            { length: 31, count: 1 },
          ],
        },
        { count: 1, cuts: [{ length: 51, count: 1 }] },
      ],
    });
    // Fewer sticks may be missing than are: the bound is not below nothing.
    expect(planOf(fills, { cost: 4007, bound: 3007 }, missing)).toMatchObject({ cost: 7, bound: 0, proven: false });
  });

  it("hands the proof on: pairs in lengths, two of one length, or a piece alone", () => {
    const pairs = [fill(0, [0, 2], [1, 1], 3), fill(0, [1], [2]), fill(0, [0], [1], 2)];
    const cuts = [{ prices: Float64Array.of(3, 2, 1), worths: [6, 3], demand: 54 }];
    const rest: RestProof = { pairs: pairs.slice(0, 1), prices: [Float64Array.of(1, 1, 0), Float64Array.of(0, 2, 1)] };
    expect(planOf([], {}, {}, rest)).toMatchObject({
      longestProven: true,
      certificate: {
        rest: {
          pairs: [{ lengths: [51, 21], count: 3 }],
          prices: [
            [1, 1, 0],
            [0, 2, 1],
          ],
        },
      },
    });
    expect(planOf([], { pairs, cuts }).certificate).toEqual({
      rest: { pairs: [], prices: [] },
      pairs: [
        { lengths: [51, 21], count: 3 },
        { lengths: [31, 31], count: 1 },
        { lengths: [51, 0], count: 2 },
      ],
      prices: [[3, 2, 1]],
    });
  });

  it("is empty where nothing is cut", () => {
    expect(planOf([])).toMatchObject({
      patterns: [],
      used: [0, 0],
      stockLength: 0,
      waste: 0,
      wasteShare: 0,
      proven: true,
    });
  });
});
