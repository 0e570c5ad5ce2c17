/** What numbers of sticks can satisfy, against trying every number of each kind. */
import fc from "fast-check";
import { canSatisfy, mostWorth, worthByWeight, type Claim, type Kind } from "../../src/cutting/checking/verifyCounts";

const kinds: fc.Arbitrary<Kind[]> = fc.array(
  fc.record({
    room: fc.constant(1),
    cost: fc.integer({ min: 0, max: 9 }),
    limit: fc.oneof(fc.integer({ min: 0, max: 6 }), fc.constant(Infinity)),
  }),
  { minLength: 1, maxLength: 4 },
);

/** Every number of each kind for at most `budget`; `free` sticks at no cost at most. An endless one serves as often as is needed. */
function byTrying(all: readonly Kind[], claims: readonly Claim[], budget: number, free: number): boolean {
  const enough = Math.max(0, ...claims.map(({ need }) => need));
  // Free sticks may serve each claim by the best choice for it: that is what the check allows.
  const freeWorth = ({ worths }: Claim): number => {
    const each = all.flatMap(({ cost, limit }, k) =>
      cost === 0 ? new Array<number>(Math.min(limit, enough)).fill(worths[k]!) : [],
    );
    each.sort((a, b) => b - a);
    return each.slice(0, Math.min(free, each.length)).reduce((sum, worth) => sum + worth, 0);
  };
  const priced = all.map((_, k) => k).filter((k) => all[k]!.cost > 0);
  const visit = (depth: number, money: number, needs: readonly number[]): boolean => {
    if (needs.every((need) => need <= 0)) return true;
    const k = priced[depth];
    if (k === undefined) return false;
    const { cost, limit } = all[k]!;
    for (let count = 0; count <= limit && count * cost <= money; count++) {
      const left = needs.map((need, c) => need - count * claims[c]!.worths[k]!);
      if (visit(depth + 1, money - count * cost, left)) return true;
    }
    return false;
  };
  return budget >= 0 && visit(0, budget, claims.map((claim) => claim.need - freeWorth(claim))); // prettier-ignore
}

test("numbers of sticks that might satisfy every claim are found where there are some, and only there", () => {
  const asked = kinds.chain((all) =>
    fc.record({
      all: fc.constant(all),
      claims: fc.array(
        fc.record({
          worths: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: all.length, maxLength: all.length }),
          need: fc.integer({ min: -5, max: 60 }),
        }),
        { maxLength: 3 },
      ),
      budget: fc.integer({ min: -1, max: 60 }),
      free: fc.oneof(fc.integer({ min: 0, max: 8 }), fc.constant(Infinity)),
    }),
  );
  let yes = 0;
  fc.assert(
    fc.property(asked, ({ all, claims, budget, free }) => {
      const right = byTrying(all, claims, budget, free);
      if (right) yes++;
      expect(canSatisfy(all, claims, budget, free)).toBe(right);
    }),
    { numRuns: 2000 },
  );
  expect(yes).toBeGreaterThan(200);
  expect(yes).toBeLessThan(1800);
});

test("weight alone bounds what pieces in a room are worth, and is exact where the dearest fill it", () => {
  const wanted = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 4 }), fc.integer({ min: 0, max: 50 })), {
      minLength: 1,
      maxLength: 5,
    })
    .map((list) => ({
      of: {
        lengths: list.map(([length]) => length),
        weights: list.map(([length]) => length),
        demands: list.map(([, n]) => n),
      },
      prices: list.map(([, , price]) => price),
    }));
  fc.assert(
    fc.property(wanted, fc.integer({ min: 0, max: 100 }), ({ of, prices }, room) => {
      expect(worthByWeight(of, prices, room)).toBeGreaterThanOrEqual(mostWorth(of, prices, room)[room]!);
    }),
    { numRuns: 500 },
  );
  expect(worthByWeight({ lengths: [7], weights: [7], demands: [3] }, [5], 21)).toBe(15);
});
