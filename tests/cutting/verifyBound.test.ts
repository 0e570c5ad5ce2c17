/** What a certificate proves and what it does not, without the solver: by hand, and against trying everything. */
import fc from "fast-check";
import type { Certificate, CutPlan } from "../../src/cutting/checking/plan";
import type { CutPiece, CutRequest } from "../../src/cutting/model/request";
import { planCuts } from "../../src/cutting/solve";
import { checkBound } from "../../src/cutting/checking/verifyBound";
import { leastCost } from "./bruteForce";
import { smallRequest } from "./requests";

type Stocks = CutPlan["stocks"];
const stick = (length: number, cost = 1, quantity = Infinity) => ({ length, cost, quantity });
const pieces = (...lengths: number[]): CutPiece[] => lengths.map((length) => ({ length, quantity: 1 }));
const NOTHING: Certificate = { pairs: [], prices: [], rest: { pairs: [], prices: [] } };

/** What is wrong with the proof of a bound. */
function wrong(
  request: Omit<CutRequest, "stocks">,
  stocks: Stocks,
  certificate: Partial<Certificate>,
  bound: number,
  missingSticks = 0,
): string[] {
  const plan = { stocks, bound, missingSticks, certificate: { ...NOTHING, ...certificate } };
  return checkBound({ ...request, stocks: [] }, plan as CutPlan);
}
const unproved = (bound: number) => [`the certificate does not prove the bound ${bound}`];
const UNSOUND = ["the certificate does not price every length in whole numbers"];
const NO_PAIRS = ["the certificate takes out pairs that need not be in a best plan"];

describe("price lists", () => {
  it("the weights themselves: 5 x 43 and no less than 3 sticks of 100 with a cut of 2", () => {
    // A stick has room for 102, a piece weighs 43: two to a stick; three sticks, not four.
    const request = { pieces: [{ length: 41, quantity: 5 }], kerf: 2 };
    expect(wrong(request, [stick(100)], { prices: [[43]] }, 3)).toEqual([]);
    expect(wrong(request, [stick(100)], { prices: [[43]] }, 4)).toEqual(unproved(4));
    // A stick of 127 has room for 129, three pieces.
    expect(wrong(request, [stick(127)], { prices: [[43]] }, 3)).toEqual(unproved(3));
    expect(wrong(request, [stick(126)], { prices: [[43]] }, 3)).toEqual([]);
  });

  it("nothing is proved by nothing, and a bound of nothing needs no proof", () => {
    expect(wrong({ pieces: pieces(40) }, [stick(100)], {}, 1)).toEqual(unproved(1));
    expect(wrong({ pieces: pieces(40) }, [stick(100)], {}, 0)).toEqual([]);
    expect(wrong({ pieces: [] }, [stick(100)], {}, 0)).toEqual([]);
  });

  it.each<[string, number[][]]>([
    ["a price too few", [[1]]],
    ["a price too many", [[1, 1, 1]]],
    ["half a price", [[1, 0.5]]],
    ["a price below nothing", [[1, -1]]],
    ["a price too large to add up exactly", [[2 ** 53, 1]]],
    ["prices whose sum is too large to be exact", [[2 ** 53 - 1, 1]]],
    ["a bad list beside a good one", [[1, 1], [1]]],
  ])("%s is no proof", (_, prices) => {
    expect(wrong({ pieces: pieces(60, 30, 30) }, [stick(100)], { prices }, 1)).toEqual(UNSOUND);
  });

  it("prices are by length, longest first, equal lengths together; what nobody wants has none", () => {
    const request = { pieces: [...pieces(30, 60, 30), { length: 99, quantity: 0 }, ...pieces(60)] };
    // Only 60 counts: two of them, one to a stick.
    expect(wrong(request, [stick(100)], { prices: [[1, 0]] }, 2)).toEqual([]);
    // Only 30 counts: both go on one stick.
    expect(wrong(request, [stick(100)], { prices: [[0, 1]] }, 1)).toEqual([]);
    expect(wrong(request, [stick(100)], { prices: [[0, 1]] }, 2)).toEqual(unproved(2));
  });

  it("a stick holds no more of a length than there are", () => {
    // Four 20s and two 60s: 60 + 20 + 20 at 3 + 1 + 1 = 5, so 10 take two sticks; 5 x 20 there are not.
    expect(wrong({ pieces: pieces(60, 60, 20, 20, 20, 20) }, [stick(100)], { prices: [[3, 1]] }, 2)).toEqual([]);
    expect(wrong({ pieces: pieces(20) }, [stick(100)], { prices: [[1]] }, 1)).toEqual([]);
    expect(wrong({ pieces: pieces(20, 20, 20, 20, 20, 20) }, [stick(100)], { prices: [[1]] }, 2)).toEqual([]);
    expect(wrong({ pieces: pieces(20, 20, 20, 20, 20, 20, 20) }, [stick(140)], { prices: [[1]] }, 2)).toEqual(
      unproved(2),
    );
  });

  it("several lists together prove more than each: two kinds of stick", () => {
    // The short stick of 60 holds one 50, the long one of 100 two of 50 or one of 70 alone.
    const stocks = [stick(100, 5), stick(60, 3)];
    const request = { pieces: pieces(70, 50, 50) };
    // 70 needs a long stick (5); the 50s two short ones or a long one: 10 in all.
    expect(
      leastCost({
        ...request,
        stocks: [
          { length: 100, cost: 5 },
          { length: 60, cost: 3 },
        ],
      }),
    ).toBe(10);
    expect(wrong(request, stocks, { prices: [[1, 0]] }, 10)).toEqual(unproved(10));
    expect(wrong(request, stocks, { prices: [[1, 0]] }, 5)).toEqual([]);
    expect(wrong(request, stocks, { prices: [[2, 1]] }, 10)).toEqual([]);
    expect(wrong(request, stocks, { prices: [[2, 1]] }, 11)).toEqual(unproved(11));
    expect(
      wrong(
        request,
        stocks,
        {
          prices: [
            [1, 0],
            [0, 1],
          ],
        },
        6,
      ),
    ).toEqual(unproved(6));
  });

  it("large prices prove no more than small ones: a stick whose worth is just what is asked for is enough", () => {
    for (const price of [1, 1e3, 1e9]) {
      expect(wrong({ pieces: pieces(50, 50) }, [stick(100)], { prices: [[price]] }, 1)).toEqual([]);
      expect(wrong({ pieces: pieces(50, 50) }, [stick(100)], { prices: [[price]] }, 2)).toEqual(unproved(2));
    }
  });

  it("what is on hand serves first, at its cost and no more often than it is there", () => {
    const request = { pieces: pieces(50, 50, 50, 50) };
    // Two offcuts hold one each; the other two take one stick.
    expect(wrong(request, [stick(100, 1), stick(50, 0, 2)], { prices: [[1]] }, 1)).toEqual([]);
    expect(wrong(request, [stick(100, 1), stick(50, 0, 2)], { prices: [[1]] }, 2)).toEqual(unproved(2));
    expect(wrong(request, [stick(100, 1), stick(50, 0, 4)], { prices: [[1]] }, 1)).toEqual(unproved(1));
    // At 2 each against 5: two offcuts and a stick, 9; were there four, 8.
    expect(wrong(request, [stick(100, 5), stick(50, 2, 2)], { prices: [[1]] }, 9)).toEqual([]);
    expect(wrong(request, [stick(100, 5), stick(50, 2, 2)], { prices: [[1]] }, 10)).toEqual(unproved(10));
    expect(wrong(request, [stick(100, 5), stick(50, 2, 4)], { prices: [[1]] }, 9)).toEqual(unproved(9));
  });

  it("an endless stick that costs nothing and holds nothing of worth serves for nothing", () => {
    expect(wrong({ pieces: pieces(50) }, [stick(100, 1), stick(40, 0)], { prices: [[1]] }, 1)).toEqual([]);
    expect(wrong({ pieces: pieces(50) }, [stick(100, 1), stick(60, 0)], { prices: [[1]] }, 1)).toEqual(unproved(1));
  });

  it("a missing stick counts more than all others together", () => {
    // 80 + 80 + 30 with two sticks on hand, dearest 3, three pieces: a missing one counts 10.
    const request = { pieces: pieces(80, 80, 30) };
    expect(wrong(request, [stick(100, 3, 2)], { prices: [[1, 1]] }, 6, 1)).toEqual([]);
    expect(wrong(request, [stick(100, 3, 2)], { prices: [[1, 1]] }, 7, 1)).toEqual(unproved(7));
    expect(wrong(request, [stick(100, 3, 2)], { prices: [[1, 1]] }, 0, 2)).toEqual(unproved(0));
    expect(wrong(request, [stick(100, 3, 3)], { prices: [[1, 1]] }, 0, 1)).toEqual(unproved(0));
    // It is as long as the longest, so that one holds the 80. Were it a stick of 60, no 80 would ever fit.
    expect(wrong({ pieces: pieces(80) }, [stick(60, 1, 1), stick(100, 1, 0)], { prices: [[1]] }, 0, 1)).toEqual([]);
    const longer = [stick(60, 1, 1), stick(100, 1, 0)];
    expect(wrong({ pieces: pieces(80) }, longer, { prices: [[1]] }, 0, 2)).toEqual(unproved(0));
  });
});

describe("pairs", () => {
  const pair = (one: number, other: number, count = 1): Certificate["pairs"][number] => ({
    lengths: [one, other],
    count,
  });
  const hundred = [stick(100)];

  it("two that fill a stick share one in some best plan", () => {
    const request = { pieces: pieces(70, 30, 30, 20, 10) };
    expect(wrong(request, hundred, { pairs: [pair(70, 30)] }, 1)).toEqual([]);
    expect(wrong(request, hundred, { pairs: [pair(70, 30)] }, 2)).toEqual(unproved(2));
    // The rest, 30 + 20 + 10, takes another stick.
    expect(wrong(request, hundred, { pairs: [pair(70, 30)], prices: [[0, 1, 1, 1]] }, 2)).toEqual([]);
    expect(wrong(request, hundred, { pairs: [pair(70, 20)] }, 1)).toEqual(NO_PAIRS);
  });

  it("a piece and the longest beside which no two others fit", () => {
    expect(wrong({ pieces: pieces(65, 33, 20, 16) }, hundred, { pairs: [pair(65, 33)] }, 1)).toEqual([]);
    // 19 and 16 fill the 35 beside 65.
    expect(wrong({ pieces: pieces(65, 33, 19, 16) }, hundred, { pairs: [pair(65, 33)] }, 1)).toEqual(NO_PAIRS);
    expect(wrong({ pieces: pieces(65, 33, 16, 16) }, hundred, { pairs: [pair(65, 33)] }, 1)).toEqual(NO_PAIRS);
    // Of 16 there is one only; the 33 itself is the other.
    expect(wrong({ pieces: pieces(65, 33, 16) }, hundred, { pairs: [pair(65, 33)] }, 1)).toEqual([]);
    expect(wrong({ pieces: pieces(65, 33) }, hundred, { pairs: [pair(65, 33)] }, 1)).toEqual([]);
  });

  it("a piece alone, where nothing fits beside it", () => {
    expect(wrong({ pieces: pieces(80, 30) }, hundred, { pairs: [pair(80, 0), pair(30, 0)] }, 2)).toEqual([]);
    expect(wrong({ pieces: pieces(80, 20) }, hundred, { pairs: [pair(80, 0)] }, 1)).toEqual(NO_PAIRS);
    expect(wrong({ pieces: pieces(80, 20) }, hundred, { pairs: [pair(80, 20)] }, 1)).toEqual([]);
  });

  it("two of one length, and as often as there are", () => {
    const request = { pieces: [{ length: 50, quantity: 5 }] };
    const two = pair(50, 50, 2);
    expect(wrong(request, hundred, { pairs: [two, pair(50, 0)] }, 3)).toEqual([]);
    expect(wrong(request, hundred, { pairs: [two, pair(50, 0)] }, 4)).toEqual(unproved(4));
    expect(wrong(request, hundred, { pairs: [pair(50, 50, 3)] }, 3)).toEqual(NO_PAIRS);
    expect(wrong(request, hundred, { pairs: [two, pair(50, 0, 2)] }, 3)).toEqual(NO_PAIRS);
    expect(wrong(request, hundred, { pairs: [pair(50, 0)] }, 1)).toEqual(NO_PAIRS);
  });

  it.each([
    ["none of them", pair(50, 50, 0)],
    ["half of one", pair(50, 50, 0.5)],
    ["a piece there is not", pair(51, 49)],
    ["a partner there is not", pair(50, 49)],
    ["a lone piece there is not", pair(51, 0)],
  ])("%s is no pair", (_, bad) => {
    expect(wrong({ pieces: pieces(50, 50) }, hundred, { pairs: [bad] }, 1)).toEqual(NO_PAIRS);
  });

  it("a partner must be there even where none fits", () => {
    expect(wrong({ pieces: pieces(80) }, hundred, { pairs: [pair(80, 49)] }, 1)).toEqual(NO_PAIRS);
  });

  it("two of the longest are none where two others fit beside one", () => {
    expect(wrong({ pieces: pieces(40, 40, 30, 25) }, hundred, { pairs: [pair(40, 40)] }, 1)).toEqual(NO_PAIRS);
    expect(wrong({ pieces: pieces(40, 40, 30, 31) }, hundred, { pairs: [pair(40, 40)] }, 1)).toEqual([]);
  });

  it("there are none where every stick may run out", () => {
    expect(wrong({ pieces: pieces(70, 30) }, [stick(100, 1, 1)], { pairs: [pair(70, 30)] }, 1)).toEqual(NO_PAIRS);
  });

  it("where all weights are multiples of one number, so is what a stick holds", () => {
    // 48, 30 and 12 into 83: multiples of 6, of which 78 fit; 48 + 30 fill them, though 12 + 12 fit beside 48.
    expect(wrong({ pieces: pieces(48, 30, 12, 12) }, [stick(83)], { pairs: [pair(48, 30)] }, 1)).toEqual([]);
    expect(wrong({ pieces: pieces(48, 30, 12, 12) }, [stick(84)], { pairs: [pair(48, 30)] }, 1)).toEqual(NO_PAIRS);
  });

  it("cost what their sticks cost, where one kind of stick is as good as any other", () => {
    const request = { pieces: pieces(70, 30) };
    const pairs = [pair(70, 30)];
    expect(wrong(request, [stick(100, 7)], { pairs }, 7)).toEqual([]);
    expect(wrong(request, [stick(100, 7)], { pairs }, 8)).toEqual(unproved(8));
    expect(wrong(request, [stick(100, 7), stick(90, 8, 1), stick(100, 7, 1)], { pairs }, 7)).toEqual([]);
    expect(wrong(request, [stick(100, 7), stick(90, 6, 1)], { pairs }, 7)).toEqual(NO_PAIRS);
    expect(wrong(request, [stick(100, 7), stick(110, 8, 1)], { pairs }, 7)).toEqual(NO_PAIRS);
    expect(wrong(request, [stick(100, 7), stick(90, 0, 1)], {}, 0)).toEqual([]);
  });

  it("are about what the pairs before them have left", () => {
    // Beside 60 the longest is 40, then 30; taken the other way round they are no pairs.
    const request = { pieces: pieces(60, 60, 40, 35) };
    expect(wrong(request, hundred, { pairs: [pair(60, 40), pair(60, 35)] }, 2)).toEqual([]);
    expect(wrong(request, hundred, { pairs: [pair(60, 35), pair(60, 40)] }, 2)).toEqual(NO_PAIRS);
  });
});

describe("against trying everything", () => {
  const withProof = smallRequest(6).chain((request) => {
    const lengths = [...new Set(request.pieces.map(({ length }) => length))].sort((a, b) => b - a);
    const price = fc.integer({ min: 0, max: 4 });
    return fc.record({
      request: fc.constant(request),
      lengths: fc.constant(lengths),
      prices: fc.array(fc.array(price, { minLength: lengths.length, maxLength: lengths.length }), { maxLength: 3 }),
      pairs: fc.array(fc.tuple(fc.constantFrom(...lengths), fc.constantFrom(0, ...lengths)), { maxLength: 2 }),
      costs: fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 0, max: 5 })),
    });
  });

  it("no certificate proves more than the least cost", () => {
    fc.assert(
      fc.property(withProof, ({ request, prices, pairs, costs: [cost, other] }) => {
        const stocks = request.stocks.map((stock) => ({ ...stock, cost: stock.quantity === undefined ? cost : other }));
        const kinds = stocks.map(({ length, quantity = Infinity, cost }) => stick(length, cost, quantity));
        const least = leastCost({ ...request, stocks });
        const claims = [[], pairs.slice(0, 1), pairs].map((some) => some.map((lengths) => ({ lengths, count: 1 })));
        for (const some of claims) expect(wrong(request, kinds, { prices, pairs: some }, least + 1)).not.toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  it("the weights prove what length alone asks for, and the solver's own proofs the least", () => {
    fc.assert(
      fc.property(smallRequest(6), (request) => {
        const { kerf = 0, stocks } = request;
        const plan = planCuts(request, { steps: 1e6 });
        expect(checkBound(request, plan)).toEqual([]);
        expect(plan.bound).toBe(leastCost(request));
        const lengths = [...new Set(request.pieces.map(({ length }) => length))].sort((a, b) => b - a);
        const weights = lengths.map((length) => length + kerf);
        const room = stocks[0]!.length + kerf;
        const all = request.pieces.reduce((sum, { length }) => sum + length + kerf, 0);
        const kinds = [stick(stocks[0]!.length)];
        expect(wrong(request, kinds, { prices: [weights] }, Math.ceil(all / room))).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});
