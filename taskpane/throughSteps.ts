/** Least time between two reports [ms]. */
const PAUSE = 100;

/** Goes through work in steps to its end, and reports how far it is, not more often than a person sees. */
export function throughSteps<Step, Result>(steps: Iterator<Step, Result>, report: (step: Step) => void): Result {
  let told = 0;
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    if (performance.now() - told < PAUSE) continue;
    told = performance.now();
    report(step.value);
  }
}
