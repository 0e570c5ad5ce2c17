import fc from "fast-check";
import type { CutRequest } from "../../src/cutting/model/request";
import { planCuts } from "../../src/cutting/solve";
import { leastCost } from "./bruteForce";
import { middlingRequest, piecesCut, piecesWanted, smallRequest } from "./requests";

const STEPS = { steps: 3e7 };

describe("laws of a cutting plan", () => {
  it("cuts every piece exactly once", () => {
    fc.assert(
      fc.property(middlingRequest, (request) => {
        expect(piecesCut(planCuts(request, STEPS))).toEqual(piecesWanted(request));
      }),
      { numRuns: 60 },
    );
  });

  it("never overfills a stick, saw cuts included", () => {
    fc.assert(
      fc.property(middlingRequest, (request) => {
        const plan = planCuts(request, STEPS);
        for (const { stock, cuts, remnant } of plan.patterns) {
          const pieces = cuts.flatMap((cut) => new Array<number>(cut.count).fill(cut.length));
          // Cut by cut: what is left of the stick after each piece.
          let left = plan.stocks[stock]!.length;
          for (const piece of pieces) {
            expect(left).toBeGreaterThanOrEqual(piece);
            left = Math.max(0, left - piece - request.kerf!);
          }
          expect(left).toBe(remnant);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("never uses an offcut twice", () => {
    fc.assert(
      fc.property(middlingRequest, (request) => {
        const plan = planCuts(request, STEPS);
        const onHand = new Map<number, number>();
        for (const { length, quantity } of request.stocks) {
          if (quantity !== undefined) onHand.set(length, (onHand.get(length) ?? 0) + quantity);
        }
        for (const { stock, count } of plan.patterns) {
          const { length, quantity } = plan.stocks[stock]!;
          if (quantity === Infinity) continue;
          onHand.set(length, onHand.get(length)! - count);
          expect(onHand.get(length)).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("costs at least its bound, and the bound itself when proven", () => {
    fc.assert(
      fc.property(middlingRequest, (request) => {
        const plan = planCuts(request, STEPS);
        expect(plan.cost).toBeGreaterThanOrEqual(plan.bound);
        expect(plan.proven).toBe(plan.cost === plan.bound);
      }),
      { numRuns: 60 },
    );
  });

  it("does not change when rows change places", () => {
    const permuted = middlingRequest.chain((request) =>
      fc.record({
        request: fc.constant(request),
        other: fc.record({
          pieces: fc.shuffledSubarray([...request.pieces], { minLength: request.pieces.length }),
          stocks: fc.shuffledSubarray([...request.stocks], { minLength: request.stocks.length }),
        }),
      }),
    );
    fc.assert(
      fc.property(permuted, ({ request, other }) => {
        expect(planCuts({ ...request, ...other }, STEPS)).toEqual(planCuts(request, STEPS));
      }),
      { numRuns: 40 },
    );
  });

  it("never needs more sticks when there is more stock", () => {
    fc.assert(
      fc.property(middlingRequest, fc.integer({ min: 90, max: 1900 }), (request, length) => {
        const before = planCuts(request, STEPS);
        const after = planCuts({ ...request, stocks: [...request.stocks, { length, quantity: 1 }] }, STEPS);
        fc.pre(before.proven && after.proven);
        expect(after.cost).toBeLessThanOrEqual(before.cost);
      }),
      { numRuns: 60 },
    );
  });

  it("finds the least cost of tiny requests, as trying everything does, and never proves more", () => {
    fc.assert(
      fc.property(smallRequest(8), (request) => {
        const plan = planCuts(request, STEPS);
        const least = leastCost(request);
        expect(plan.bound).toBeLessThanOrEqual(least);
        expect(plan.cost).toBe(least);
      }),
      { numRuns: 150 },
    );
  });

  it("finds the least cost of two priced lengths, as trying everything does, and never proves more", () => {
    const priced = fc
      .tuple(smallRequest(7), fc.integer({ min: 3, max: 9 }), fc.integer({ min: 5, max: 19 }))
      .map(([request, short, long]): CutRequest => {
        const stick = request.stocks[0]!.length;
        const bought = [
          { length: stick, cost: short },
          { length: 2 * stick + 1, cost: long },
        ];
        return { ...request, stocks: [...bought, ...request.stocks.slice(1)] };
      });
    fc.assert(
      fc.property(priced, (request) => {
        const plan = planCuts(request, STEPS);
        const least = leastCost(request);
        expect(plan.bound).toBeLessThanOrEqual(least);
        expect(plan.cost).toBe(least);
      }),
      { numRuns: 100 },
    );
  });

  it("leaves pieces without a stick only when the stock on hand does not hold them all", () => {
    const onHand = fc.tuple(smallRequest(7), fc.integer({ min: 1, max: 4 })).map(([request, quantity]): CutRequest => {
      const [stick, ...offcuts] = request.stocks;
      return { ...request, stocks: [{ ...stick!, quantity }, ...offcuts] };
    });
    fc.assert(
      fc.property(onHand, (request) => {
        const plan = planCuts(request, STEPS);
        expect(plan.missing.length === 0).toBe(leastCost(request) < Infinity);
        const placed = piecesCut(plan);
        for (const { length, count } of plan.missing) placed.set(length, (placed.get(length) ?? 0) + count);
        expect(placed).toEqual(piecesWanted(request));
      }),
      { numRuns: 100 },
    );
  });
});
