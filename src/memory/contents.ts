/** Values that are kept. */
const KEPT = 1000;

/**
 * A keeper of plain values (what JSON tells apart): the same content gives the same object, so that whatever is
 * remembered of the object still holds. The newest are kept; none may be changed afterwards.
 */
export function sameContent<T extends object>(): (value: T) => T {
  const known = new Map<string, T>();
  return (value) => {
    const key = JSON.stringify(value);
    const same = known.get(key) ?? value;
    known.delete(key);
    known.set(key, same);
    if (known.size > KEPT) known.delete(known.keys().next().value as string);
    return same;
  };
}
