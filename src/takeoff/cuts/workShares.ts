/**
 * Work parted among tasks that come one after the other: each may take an equal share of what is left, and leaves what
 * it does not need to the next ones. Counted in the solver's steps, so that the answer is the same on every machine.
 */
export class WorkShares {
  constructor(
    private left: number,
    private tasks: number,
  ) {}

  /** Does the next task. @param task takes the steps it may use and says how many it used */
  next<T extends { readonly steps: number }>(task: (steps: number) => T): T {
    const result = task(Math.floor(this.left / Math.max(1, this.tasks)));
    this.left = Math.max(0, this.left - result.steps);
    this.tasks -= 1;
    return result;
  }
}
