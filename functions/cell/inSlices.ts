import { planAhead } from "../../src/cutting";
import { answer } from "./answer";

/** How long a calculation may keep others waiting [ms]. */
const SLICE = 25;

/** What Excel gives a function that can be canceled. */
interface Invocation extends Pick<CustomFunctions.CancelableInvocation, "onCanceled"> {
  /** Set by an Excel with CustomFunctionsRuntime 1.5 while a part of a formula is only looked at; nowhere else. */
  readonly isInValuePreview?: unknown;
}

/** Shown while a part of a formula is looked at in the formula bar: a plan may take seconds there. */
const PREVIEW = "worked out once it is entered";

/**
 * Answers like `answer`, for a function whose cutting plans may take a while. Where it is called with an invocation, as
 * Excel does, its plans are made in slices, so that schedules, checks and counts go on meanwhile, and a newer edit that
 * cancels the call ends it; the answer is a promise then. Called without one it is answered at once.
 *
 * @param body gives the same whenever it is done
 */
export function answerInSlices<A extends unknown[], T>(
  args: readonly [...A],
  invocation: Invocation | undefined,
  body: (...args: A) => T,
): T {
  const work = () => answer(args, body);
  if (!invocation) return work();
  if (invocation.isInValuePreview) return [[PREVIEW]] as T;
  // Excel takes a promise in the place of a value.
  return sliced(planAhead(work), invocation) as T;
}

async function sliced<T>(steps: Generator<void, T>, invocation: Invocation): Promise<T> {
  let canceled = false;
  invocation.onCanceled = () => {
    canceled = true;
  };
  for (;;) {
    await pause();
    if (canceled) throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "Canceled by a newer edit.");
    const until = Date.now() + SLICE;
    do {
      const step = steps.next();
      if (step.done) return step.value;
    } while (Date.now() < until);
  }
}

/** Lets whatever waits go on. */
const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
