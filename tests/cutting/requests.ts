import fc from "fast-check";
import type { CutPlan } from "../../src/cutting/checking/plan";
import type { CutPiece, CutRequest, CutStock } from "../../src/cutting/model/request";

/** Small requests: few pieces, sometimes kerf, a stick that holds every piece, sometimes offcuts. */
export const smallRequest = (mostPieces: number): fc.Arbitrary<CutRequest> =>
  fc
    .record({
      stick: fc.integer({ min: 40, max: 90 }),
      kerf: fc.integer({ min: 0, max: 3 }),
      shares: fc.array(fc.double({ min: 0.05, max: 0.95, noNaN: true }), { minLength: 1, maxLength: mostPieces }),
      offcuts: fc.array(fc.integer({ min: 5, max: 80 }), { maxLength: 3 }),
    })
    .map(({ stick, kerf, shares, offcuts }) => ({
      pieces: shares.map((share): CutPiece => ({ length: Math.ceil(share * (stick - 5)), quantity: 1 })),
      stocks: [{ length: stick }, ...offcuts.map((length): CutStock => ({ length, quantity: 1 }))],
      kerf,
    }));

/** Middling requests: up to some sixty pieces of a dozen lengths. */
export const middlingRequest: fc.Arbitrary<CutRequest> = fc
  .record({
    pieces: fc.array(
      fc.record({ length: fc.integer({ min: 90, max: 1900 }), quantity: fc.integer({ min: 0, max: 9 }) }),
      { minLength: 1, maxLength: 12 },
    ),
    offcuts: fc.array(
      fc.record({ length: fc.integer({ min: 90, max: 1700 }), quantity: fc.integer({ min: 1, max: 2 }) }),
      {
        maxLength: 4,
      },
    ),
    kerf: fc.integer({ min: 0, max: 2 }),
    prices: fc.constantFrom(undefined, [100, 195] as const, [3, 7] as const),
    minimumOffcut: fc.constantFrom(0, 200),
  })
  .map(({ pieces, offcuts, kerf, prices, minimumOffcut }) => ({
    pieces,
    stocks: [
      ...(prices
        ? [
            { length: 1920, cost: prices[0] },
            { length: 3840, cost: prices[1] },
          ]
        : [{ length: 1920 }]),
      ...offcuts,
    ],
    kerf,
    minimumOffcut,
  }));

/** How often each length is cut in the plan, missing pieces not counted. */
export function piecesCut(plan: CutPlan): Map<number, number> {
  const made = new Map<number, number>();
  for (const { count, cuts } of plan.patterns) {
    for (const cut of cuts) made.set(cut.length, (made.get(cut.length) ?? 0) + count * cut.count);
  }
  return made;
}

/** How often each length is wanted. */
export function piecesWanted(request: CutRequest): Map<number, number> {
  const wanted = new Map<number, number>();
  for (const { length, quantity } of request.pieces) {
    if (quantity > 0) wanted.set(length, (wanted.get(length) ?? 0) + quantity);
  }
  return wanted;
}
