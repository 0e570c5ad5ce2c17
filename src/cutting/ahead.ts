import { remember } from "../memory/remember";

/** A search that is put off. */
type Search = Generator<unknown, unknown>;

/** What is put off while work looks ahead; undefined at any other time. */
let putOff: Search[] | undefined;

/** True while work looks ahead: a plan that is not known yet is put off. */
export const isAhead = (): boolean => putOff !== undefined;

/** True once something was put off: what is worked out from then on may stand on makeshift plans, and must not be kept. */
export const isPutOff = (): boolean => putOff !== undefined && putOff.length > 0;

/** Work that stands on cutting plans, done once; what may stand on makeshift plans is not kept. */
export const rememberPlanned = <First extends object, Rest extends unknown[], T>(
  work: (first: First, ...rest: Rest) => T,
): ((first: First, ...rest: Rest) => T) => remember(work, { keeps: () => !isPutOff() });

/** Puts a search off until the work that asks for it has been gone through. */
export const putOffSearch = (search: Search): void => void putOff?.push(search);

/** How often work is gone through to hear what it wants: plans may stand on other plans. */
const MOST_ROUNDS = 3;

/**
 * Does work that needs cutting plans with its plans made first, in small steps: whoever runs it may let others work
 * between two of them, or leave off. The work is gone through with makeshift plans, to hear which are wanted; it has
 * to be the same whenever it is done.
 */
export function* planAhead<T>(work: () => T): Generator<void, T> {
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { searches, answer } = lookAhead(work);
    if (searches.length === 0) return answer();
    for (const search of searches) {
      while (!search.next().done) yield;
      yield;
    }
  }
  return work();
}

/** Goes through work once; its answer holds where nothing had to be put off. */
function lookAhead<T>(work: () => T): { searches: Search[]; answer: () => T } {
  const searches: Search[] = [];
  putOff = searches;
  try {
    const value = work();
    return { searches, answer: () => value };
  } catch (error) {
    // What fails on makeshift plans is heard when it is done for good.
    const fail = (): never => {
      throw error;
    };
    return { searches, answer: fail };
  } finally {
    putOff = undefined;
  }
}
