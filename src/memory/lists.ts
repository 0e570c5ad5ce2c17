/** Lists that are kept of those that begin with one element. */
const KEPT = 12;

const known = new WeakMap<object, (readonly object[])[]>();

/**
 * The same elements in the same order give the same list, so that whatever is remembered of the list still holds. Lists
 * are kept as long as their first element is, the newest few of each; none may be changed afterwards.
 */
export function sameList<T extends object>(list: readonly T[]): readonly T[] {
  const first = list[0];
  if (!first) return NOTHING;
  const kept = known.get(first) as (readonly T[])[] | undefined;
  const found = kept?.find((each) => areSame(each, list));
  if (found) return found;
  if (!kept) known.set(first, [list]);
  else {
    kept.unshift(list);
    if (kept.length > KEPT) kept.pop();
  }
  return list;
}

const NOTHING: readonly never[] = [];

/** The parts of a list by a key, in the order of their first elements; the same elements give the same part. */
export function sameParts<T extends object>(list: readonly T[], keyOf: (each: T) => string): (readonly T[])[] {
  const parts = new Map<string, T[]>();
  for (const each of list) {
    const key = keyOf(each);
    const part = parts.get(key);
    if (part) part.push(each);
    else parts.set(key, [each]);
  }
  return [...parts.values()].map(sameList);
}

/** True for lists of the very same elements. */
export function areSame(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false;
  for (let place = 0; place < a.length; place++) if (a[place] !== b[place]) return false;
  return true;
}
