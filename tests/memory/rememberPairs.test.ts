import fc from "fast-check";
import { rememberPairs } from "../../src/memory/rememberPairs";

interface Item {
  readonly value: number;
}
const everyTwo = (items: readonly unknown[]) =>
  items.flatMap((_, first) => items.slice(first + 1).map((_, more) => [first, first + 1 + more] as const));
const pairsBy = (compare: typeof near, most: number) =>
  rememberPairs<Item, number>({ compare, candidates: everyTwo, most });

/** Values that differ by less than 3 are a pair. */
const near = (one: Item, other: Item) => (Math.abs(one.value - other.value) < 3 ? one.value - other.value : undefined);

test("after any edits the pairs are those of a list seen for the first time", () => {
  const pool = Array.from({ length: 12 }, (_, value): Item => ({ value }));
  const lists = fc.array(fc.shuffledSubarray(pool), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(lists, fc.boolean(), (edits, sorted) => {
      const remembered = pairsBy(near, 20);
      for (const edit of edits) {
        const items = sorted ? [...edit].sort((a, b) => a.value - b.value) : edit;
        expect(remembered(items)).toEqual(pairsBy(near, 20)(items));
      }
    }),
    { numRuns: 300, seed: 5 },
  );
});

test("after one changed item it alone is compared, with every other", () => {
  const compare = jest.fn(near);
  const remembered = pairsBy(compare, 1000);
  const items = Array.from({ length: 50 }, (_, value): Item => ({ value }));
  remembered(items);
  expect(compare).toHaveBeenCalledTimes((50 * 49) / 2);
  compare.mockClear();
  remembered(items);
  expect(compare).not.toHaveBeenCalled();
  remembered(items.map((item, index) => (index === 20 ? { value: 7 } : item)));
  expect(compare).toHaveBeenCalledTimes(49);
});

test("where there are too many, the first ones of the list are told, and that there are more", () => {
  const items = [4, 5, 6, 20, 21].map((value): Item => ({ value }));
  const { pairs, isAll } = pairsBy(near, 2)(items);
  expect([pairs.map(({ one, other }) => [one.value, other.value]), isAll]).toEqual([
    [
      [4, 5],
      [4, 6],
    ],
    false,
  ]);
  expect(pairsBy(near, 4)(items).isAll).toBe(true);
});
