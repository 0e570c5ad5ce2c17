import { InputError, quoteValue } from "../../units/errors";

/** Something wrong with one step of a route, or with what it comes to. */
export class RouteError extends InputError {
  /**
   * @param step its number, counted from 1
   * @param words what is wrong, without the step's number
   * @param message the same for a reader who does not see the step beside it
   * @param meant spellings of the step that can be read, the likelier first
   */
  constructor(
    readonly step: number,
    readonly words: string,
    message = `step ${step}: ${words}`,
    readonly meant: readonly string[] = [],
  ) {
    super(message);
  }
}

/** What is wrong with the words of a step, in the one form all route messages share: what was read, what was expected. */
export const stepError = (step: number, got: string, expected: string): RouteError =>
  new RouteError(step, `got ${quoteValue(got)}; expected ${expected.replace(/\.$/, "")}.`);

/** What is wrong with a step that is likely to mean something else. */
export function meantError(step: number, got: string, meant: readonly string[]): RouteError {
  const words = `got ${quoteValue(got)}; did you mean ${meant.map((text) => `"${text}"`).join(" or ")}?`;
  return new RouteError(step, words, undefined, meant);
}
