/** The engine looks for a stop, and lets others have their turn, when this much has gone by [ms]. */
const turn = 30;

/**
 * The engine looks up after every so many formulas, few enough or not: one of ours may take a second, a thousand others
 * no time at all. It asks for the number before each formula, so this answers by the clock: after this one, or not yet.
 */
export function yieldInTime(now: () => number = () => performance.now()): number {
  let last = now();
  const interval = {
    valueOf() {
      if (now() - last < turn) return Infinity;
      last = now();
      return 1;
    },
  };
  // Only ever used as `count % interval`.
  return interval as unknown as number;
}
