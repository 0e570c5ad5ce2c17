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

/** How two items of a list are compared. */
export interface Comparing<Item, T> {
  /** What is found of two items; undefined for nothing. */
  compare(one: Item, other: Item): T | undefined;
  /** Every two items of which something may be found, by their places in the list, the lower first; each pair once. */
  candidates(items: readonly Item[]): Iterable<readonly [number, number]>;
  /** Most pairs that are told: where there are more, the first so many of the candidates. */
  readonly most: number;
}

/** Up to so many new items are compared with every other, without looking for candidates. */
const FEW = 8;

/**
 * Compares every two items of a list and keeps what was found: when most of them are asked for again, only the new ones
 * are compared, each with all. An item is the same when it is that very object.
 */
export function rememberPairs<Item extends object, T>({
  compare,
  candidates,
  most,
}: Comparing<Item, T>): (items: readonly Item[]) => Pairs<Item, T> {
  const nothing = { items: [] as readonly Item[], pairs: [] as readonly Pair<Item, T>[] };
  let known = nothing;
  return (items) => {
    const place = new Map(items.map((item, index) => [item, index]));
    // What changed places is compared anew: which of two stands first is part of what is told.
    const isKept = inOrder(known.items.map((item) => place.get(item)).filter((each) => each !== undefined));
    const last = isKept ? known : nothing;
    const before = new Set(last.items);
    const fresh = items.flatMap((item, index) => (before.has(item) ? [] : [index]));
    const isFew = fresh.length <= FEW;
    const kept = isFew ? last.pairs.filter(({ one, other }) => place.has(one) && place.has(other)) : [];
    const added = find(isFew ? withEach(fresh, items.length) : candidates(items), most - kept.length);
    // Which of too many are told must not depend on what was asked before.
    const all = added ? [...kept, ...added] : undefined;
    known = all ? { items: [...items], pairs: inListOrder(all) } : nothing;
    return all ? { pairs: known.pairs, isAll: true } : { pairs: inListOrder(firstOf(candidates(items))), isAll: false };

    /** What is found of some pairs; undefined where that is more than `limit`. */
    function find(places: Iterable<readonly [number, number]>, limit: number): Pair<Item, T>[] | undefined {
      const pairs: Pair<Item, T>[] = [];
      for (const pair of found(places)) if (pairs.push(pair) > limit) return undefined;
      return pairs;
    }

    function firstOf(places: Iterable<readonly [number, number]>): Pair<Item, T>[] {
      const pairs: Pair<Item, T>[] = [];
      for (const pair of found(places)) if (pairs.push(pair) === most) break;
      return pairs;
    }

    function* found(places: Iterable<readonly [number, number]>): Generator<Pair<Item, T>> {
      for (const [first, second] of places) {
        const [one, other] = [items[first]!, items[second]!];
        const answer = compare(one, other);
        if (answer !== undefined) yield { one, other, found: answer };
      }
    }

    function inListOrder(pairs: readonly Pair<Item, T>[]): Pair<Item, T>[] {
      const at = (item: Item) => place.get(item)!;
      return [...pairs].sort((a, b) => at(a.one) - at(b.one) || at(a.other) - at(b.other));
    }
  };
}

const inOrder = (places: readonly number[]): boolean => places.every((each, at) => at === 0 || each > places[at - 1]!);

/** Each of some places with every other place of a list, the lower first. */
function* withEach(some: readonly number[], count: number): Generator<readonly [number, number]> {
  const known = new Set(some);
  for (const at of some) {
    for (let next = 0; next < count; next++) {
      if (next === at || (next < at && known.has(next))) continue;
      yield next < at ? [next, at] : [at, next];
    }
  }
}
