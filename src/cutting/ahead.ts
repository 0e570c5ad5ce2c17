import { remember } from "../memory/remember";

/** A search that is put off. */
type Search = Generator<unknown, unknown>;

/** What is put off while work looks ahead; undefined at any other time. */
let putOff: Search[] | undefined;

/** True while planning ahead: what is worked out now stands on makeshift plans, and must not be kept. */
export const isAhead = (): boolean => putOff !== undefined;

/** Work that stands on cutting plans, done once; what it comes to while planning ahead is not kept. */
export const rememberPlanned = <First extends object, Rest extends unknown[], T>(
  work: (first: First, ...rest: Rest) => T,
): ((first: First, ...rest: Rest) => T) => remember(work, { keeps: () => !isAhead() });

/** Puts a search off until the work that asks for it has been gone through. */
export const putOffSearch = (search: Search): void => void putOff?.push(search);

/**
 * Does work that needs cutting plans with its plans made first, in small steps: whoever runs it may let others work
 * between two of them, or leave off. The work is gone through once with makeshift plans, to hear which are wanted; it has
 * to be the same whenever it is done.
 */
export function* planAhead<T>(work: () => T): Generator<void, T> {
  const searches = wantedBy(work);
  for (const search of searches) {
    while (!search.next().done) yield;
    yield;
  }
  return work();
}

function wantedBy(work: () => unknown): Search[] {
  const searches: Search[] = [];
  putOff = searches;
  try {
    work();
  } catch {
    // It fails in the same way when it is done for good, and is heard then.
  } finally {
    putOff = undefined;
  }
  return searches;
}
