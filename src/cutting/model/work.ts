/** Why a plan stopped being improved. */
export type StopReason = "proven" | "work limit" | "time limit" | "canceled";

/** How much effort a plan may take. */
export interface WorkLimits {
  /** Elementary steps of the solver [about 2 ns each]. The ordinary limit: it makes the answer the same on every machine. */
  steps?: number;
  /** Outer guard [ms], read from `now`. A plan it cuts short says so. */
  milliseconds?: number;
  /** The clock [ms], for example `() => performance.now()`. Without it `milliseconds` is ignored. */
  now?: () => number;
  /** Asked between steps; true ends the search with the best plan so far. */
  canceled?: () => boolean;
}

/** About 0.4 s on an ordinary machine: what a worksheet function may take. */
export const DEFAULT_STEPS = 2e8;

/** Counts the solver's elementary steps and says when to stop. */
export class Work {
  stopped: StopReason | undefined;
  private readonly limit: number;
  private readonly deadline: number;
  private ceiling = Infinity;

  /** @param spent steps that were taken before */
  constructor(
    private readonly limits: WorkLimits = {},
    public spent = 0,
  ) {
    this.limit = limits.steps ?? DEFAULT_STEPS;
    this.deadline = limits.now ? limits.now() + (limits.milliseconds ?? Infinity) : Infinity;
  }

  add(steps: number): void {
    this.spent += steps;
  }

  /** Runs `body` with at most `steps` more steps; `over()` is true inside once they are spent. */
  *within<T>(steps: number, body: Generator<void, T>): Generator<void, T> {
    const outer = this.ceiling;
    this.ceiling = Math.min(outer, this.spent + steps);
    try {
      return yield* body;
    } finally {
      this.ceiling = outer;
    }
  }

  /** True when the search has to end: everything (see `stopped`), or only what runs inside `within`. */
  over(): boolean {
    if (this.stopped) return true;
    if (this.spent >= this.limit) this.stopped = "work limit";
    else if (this.limits.canceled?.()) this.stopped = "canceled";
    else if (this.limits.now && this.limits.now() >= this.deadline) this.stopped = "time limit";
    return this.stopped !== undefined || this.spent >= this.ceiling;
  }

  /** True unless clock or caller stopped it: only then would the same steps lead to the same again. */
  get repeatable(): boolean {
    return this.stopped === undefined || this.stopped === "work limit";
  }

  /** How far what was found depends on the limit of steps. */
  get outcome(): { limit: number; spent: number; complete: boolean } {
    return { limit: this.limit, spent: this.spent, complete: this.stopped === undefined };
  }

  /** Share of the ordinary limit used, 0 to 1. */
  get share(): number {
    return Math.min(1, this.spent / this.limit);
  }
}
