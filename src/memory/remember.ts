/** What some work came to: its answer, or the error it ended in. */
type Outcome<T> = { readonly answer: T } | { readonly error: unknown };

/**
 * The same work on the same arguments is done once: its answer, or its error, is kept as long as the objects among them
 * are. An object is the same when it is that very object, so neither it nor the answer may be changed afterwards.
 *
 * @param work its first argument is an object; others that are none are few: an edition, a word
 */
export function remember<First extends object, Rest extends unknown[], T>(
  work: (first: First, ...rest: Rest) => T,
): (first: First, ...rest: Rest) => T {
  const root = new Node<T>();
  return (first, ...rest) => {
    let node = root.at(first);
    for (const next of rest) node = node.at(next);
    const outcome = (node.outcome ??= outcomeOf(() => work(first, ...rest)));
    if ("error" in outcome) throw outcome.error;
    return outcome.answer;
  };
}

function outcomeOf<T>(work: () => T): Outcome<T> {
  try {
    return { answer: work() };
  } catch (error) {
    return { error };
  }
}

/** Arguments branch from node to node, objects held weakly. */
class Node<T> {
  outcome?: Outcome<T>;
  private objects?: WeakMap<object, Node<T>>;
  private others?: Map<unknown, Node<T>>;

  at(key: unknown): Node<T> {
    const isObject = typeof key === "object" && key !== null;
    const branches = isObject ? (this.objects ??= new WeakMap()) : (this.others ??= new Map<unknown, Node<T>>());
    const found = (branches as Map<unknown, Node<T>>).get(key);
    if (found) return found;
    const node = new Node<T>();
    (branches as Map<unknown, Node<T>>).set(key, node);
    return node;
  }
}
