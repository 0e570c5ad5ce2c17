/** First pause before a reading that failed is tried again, and the longest [ms]. */
const PAUSES = { first: 500, longest: 15_000 };

/** The pause after so many failures: twice as long each time [ms]. */
export const backOff = (failures: number): number => Math.min(PAUSES.longest, PAUSES.first * 2 ** (failures - 1));

/**
 * Reads, and tries again with longer and longer pauses until it succeeds.
 * @returns the way to give up; nothing is told after that
 */
export function untilRead<T>(read: () => Promise<T>, got: (value: T, failures: number) => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isWanted = true;
  const attempt = (failures: number) =>
    void read().then(
      (value) => isWanted && got(value, failures),
      () => isWanted && (timer = setTimeout(() => attempt(failures + 1), backOff(failures + 1))),
    );
  attempt(0);
  return () => {
    isWanted = false;
    clearTimeout(timer);
  };
}
