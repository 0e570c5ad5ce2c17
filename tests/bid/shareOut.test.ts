import fc from "fast-check";
import { shareOut } from "../../src/bid/shareOut";

// By hand.
test.each([
  [100, [1, 1, 1], [34, 33, 33]],
  [101, [1, 2], [34, 67]],
  [5, [0, 3], [0, 5]],
  [-100, [1, 2], [-33, -67]],
  [7, [0, 0], [7, 0]],
])("%p by %p is %p", (cents, weights, parts) => expect(shareOut(cents, weights)).toEqual(parts));

test("the parts add up to the whole, and none is a cent or more from its share", () => {
  const weights = fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(fc.integer({ min: -1e9, max: 1e9 }), weights, (cents, shares) => {
      const parts = shareOut(cents, shares);
      expect(parts.reduce((sum, part) => sum + part, 0)).toBe(cents);
      const sum = shares.reduce((total, share) => total + share, 0);
      if (sum > 1e-6)
        parts.forEach((part, at) => expect(Math.abs(part - (cents * shares[at]!) / sum)).toBeLessThan(1.001));
    }),
  );
});
