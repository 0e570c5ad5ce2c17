import { areSame } from "./lists";

/** What some work came to with its other arguments: its answer, or the error it ended in. */
interface Outcome<T> {
  readonly rest: readonly unknown[];
  readonly answer?: T;
  readonly failed: boolean;
  readonly error?: unknown;
}

/** How much is remembered. */
interface Remembering {
  /** Outcomes that are kept of one first argument: a job has others with other shoes, rules, groups and stock. */
  readonly most?: number;
  /** False while what comes out must not be kept; what is kept already still holds. */
  readonly keeps?: () => boolean;
}

const KEPT = 12;

/**
 * The same work on the same arguments is done once: its answer, or its error, is kept as long as its first argument is;
 * of one first argument the newest are kept. An object is the same when it is that very object, so neither it nor the
 * answer may be changed afterwards. Every argument counts: `list.map((each) => once(each))`, never `list.map(once)`, which hands
 * on the place and the list, too.
 *
 * @param work its first argument is an object; the others may be anything
 */
export function remember<First extends object, Rest extends unknown[], T>(
  work: (first: First, ...rest: Rest) => T,
  { most = KEPT, keeps = () => true }: Remembering = {},
): (first: First, ...rest: Rest) => T {
  const known = new WeakMap<First, Outcome<T>[]>();
  return (first, ...rest) => {
    const found = find(known.get(first) ?? [], rest);
    if (found) return settled(found);
    const outcome = outcomeOf(rest, () => work(first, ...rest));
    if (keeps()) {
      const kept = known.get(first);
      if (kept) kept.unshift(outcome);
      else known.set(first, [outcome]);
      if (kept && kept.length > most) kept.pop();
    }
    return settled(outcome);
  };
}

/** The outcome with these arguments, made the newest. */
function find<T>(kept: Outcome<T>[], rest: readonly unknown[]): Outcome<T> | undefined {
  for (let place = 0; place < kept.length; place++) {
    const outcome = kept[place]!;
    if (!areSame(outcome.rest, rest)) continue;
    if (place > 0) kept.unshift(...kept.splice(place, 1));
    return outcome;
  }
  return undefined;
}

function outcomeOf<T>(rest: readonly unknown[], work: () => T): Outcome<T> {
  try {
    return { rest, answer: work(), failed: false };
  } catch (error) {
    return { rest, failed: true, error };
  }
}

function settled<T>({ answer, failed, error }: Outcome<T>): T {
  if (failed) throw error;
  return answer as T;
}
