import { readStep } from "../../src/route/text/readStep";
import { RouteError } from "../../src/route/text/routeError";

/** The steps of a route as their writer worded them; the same partings as the route reader's. */
export const splitRoute = (route: string): string[] =>
  route
    .split(/[,;\r\n]/)
    .map((step) => step.trim())
    .filter((step) => step !== "");

/** Route text of a list of steps; empty ones are left out. */
export const joinRoute = (steps: readonly string[]): string =>
  steps
    .map((step) => step.trim())
    .filter((step) => step !== "")
    .join(", ");

/** What is wrong with one step's words, and spellings of it that can be read. */
export interface StepProblem {
  /** Without the step's number: the step stands beside it. */
  words: string;
  meant: readonly string[];
}

/** Undefined when the step reads. */
export function stepProblem(step: string, number: number): StepProblem | undefined {
  if (step.trim() === "") return undefined;
  try {
    readStep(step, number);
    return undefined;
  } catch (error) {
    if (!(error instanceof RouteError)) throw error;
    return error;
  }
}

/** The list with one step moved up or down; the same list when it cannot move. */
export function moveStep(steps: readonly string[], index: number, by: -1 | 1): string[] {
  const to = index + by;
  const moved = [...steps];
  const [step] = moved.splice(index, 1);
  if (step === undefined || to < 0 || to > moved.length) return [...steps];
  moved.splice(to, 0, step);
  return moved;
}
