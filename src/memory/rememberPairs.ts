/** What was found of two items, the one that stands first in the list first. */
export interface Pair<Item, T> {
  readonly one: Item;
  readonly other: Item;
  readonly found: T;
}

/** Pairs in the order of the list, and whether they are all there are. */
export interface Pairs<Item, T> {
  readonly pairs: readonly Pair<Item, T>[];
  readonly isAll: boolean;
}

/**
 * Compares every two items of a list and keeps what was found: when most of them are asked for again, only the new ones
 * are compared, each with all. An item is the same when it is that very object.
 *
 * @param compare what is found of two items; undefined for nothing
 * @param most pairs that are told: where there are more, the first ones in the order of the list
 */
export function rememberPairs<Item extends object, T>(
  compare: (one: Item, other: Item) => T | undefined,
  most: number,
): (items: readonly Item[]) => Pairs<Item, T> {
  let known = { items: [] as readonly Item[], pairs: [] as readonly Pair<Item, T>[] };
  return (items) => {
    const place = new Map(items.map((item, index) => [item, index]));
    const before = new Set(known.items);
    // What changed places is compared anew: which of two stands first is part of what is told.
    const isKept = inOrder(known.items.map((item) => place.get(item)).filter((each) => each !== undefined));
    const isNew = (item: Item) => !isKept || !before.has(item);
    const pairs = isKept ? known.pairs.filter(({ one, other }) => place.has(one) && place.has(other)) : [];
    for (const [at, item] of items.entries()) {
      if (!isNew(item)) continue;
      for (let next = 0; next < items.length && pairs.length <= most; next++) {
        const against = items[next]!;
        if (next === at || (next < at && isNew(against))) continue;
        const [one, other] = next < at ? [against, item] : [item, against];
        const found = compare(one, other);
        if (found !== undefined) pairs.push({ one, other, found });
      }
    }
    if (pairs.length > most) {
      known = { items: [], pairs: [] };
      return { pairs: firstPairs(items, compare, most), isAll: false };
    }
    pairs.sort((a, b) => place.get(a.one)! - place.get(b.one)! || place.get(a.other)! - place.get(b.other)!);
    known = { items: [...items], pairs };
    return { pairs, isAll: true };
  };
}

const inOrder = (places: readonly number[]): boolean => places.every((each, at) => at === 0 || each > places[at - 1]!);

function firstPairs<Item, T>(
  items: readonly Item[],
  compare: (one: Item, other: Item) => T | undefined,
  most: number,
): Pair<Item, T>[] {
  const pairs: Pair<Item, T>[] = [];
  for (const [at, one] of items.entries()) {
    for (let next = at + 1; next < items.length; next++) {
      const other = items[next]!;
      const found = compare(one, other);
      if (found !== undefined && pairs.push({ one, other, found }) === most) return pairs;
    }
  }
  return pairs;
}
